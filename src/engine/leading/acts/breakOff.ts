import { asPlaying } from '#engine/leading/items.ts'
import { momentAt } from '#engine/leading/ledTimes.ts'
import { say } from '#words/said.ts'
import { type Acted, nothing, type Standing } from './act.ts'

/** The class ends here, for an alarm or an injury: the song that plays ends now, and what was to come is left out. */
export function breakOff(standing: Standing): Acted {
  const { plan, led, times, at } = standing
  const moment = momentAt(plan, led, times, at)
  if (moment.kind === 'after') return nothing(standing, say('led.classOver'))
  const sections = led.sections.slice(0, moment.section)
  if (moment.kind !== 'leadIn') {
    const section = led.sections[moment.section]!
    const end = Math.min(section.end, moment.place)
    sections.push({ ...asPlaying({ ...section, end }), changed: true, called: undefined })
  }
  return { led: { ...led, sections, clearUp: 0 }, said: say('led.classEnds') }
}
