import { asPlaying } from '#engine/leading/items.ts'
import { type Measure, sectionOf, withSection } from '#engine/leading/led.ts'
import { measureClock, momentAt } from '#engine/leading/ledTimes.ts'
import { quotedSectionName } from '#plan/names.ts'
import { say, type Text } from '#words/said.ts'
import { type Acted, nothing, type Standing } from './act.ts'

/** The rest of this song is left out: its end is now, and the lead-in of the next begins. In a lead-in it is the song to come. */
export function skipSong(standing: Standing): Acted {
  const { plan, led, times, at } = standing
  const moment = momentAt(plan, led, times, at)
  if (moment.kind === 'after') return nothing(standing, say('led.noSongToSkip'))
  if (moment.kind === 'leadIn') return skipComing(standing, moment.section)
  return leaveSong(standing, moment.section, moment.place)
}

/** The section ends at a place; what follows keeps its lead-in, and no crossfade reaches back. */
export function leaveSong({ plan, led, times, at }: Standing, index: number, place: Measure): Acted {
  const section = led.sections[index]!
  const end = Math.min(section.end, place)
  const later = measureClock(plan, section, times[index]!.one).at(end) > at
  const shorter = withSection(led, index, { ...asPlaying({ ...section, end }), changed: true, called: undefined })
  const next = led.sections[index + 1]
  if (!next) return { led: shorter, said: say('led.songEnds', { song: nameOf(plan, section) }) }
  const { one: _, ...rest } = next
  const sections = shorter.sections.with(index + 1, { ...rest, leadIn: Math.max(0, next.leadIn) })
  return {
    led: { ...shorter, sections },
    said: later ? say('led.onToAfterEight', { song: nameOf(plan, next) }) : say('led.onTo', { block: nameOf(plan, next) }),
  }
}

/** A song that has not begun is left out; the gap goes on until the lead-in of the next has passed from now. */
function skipComing({ plan, led, times, at }: Standing, index: number): Acted {
  const gone = led.sections[index]!
  const next = led.sections[index + 1]
  const before = times[index - 1]?.end ?? plan.ride.briefingSeconds
  const sections = led.sections.toSpliced(index, 1)
  const waited = Math.max(0, at - before)
  if (next) {
    const { one: _, ...rest } = next
    sections[index] = { ...rest, leadIn: waited + Math.max(0, next.leadIn) }
  }
  return { led: { ...led, sections }, said: say('led.songSkipped', { song: nameOf(plan, gone) }) }
}

const nameOf = (plan: Standing['plan'], section: Parameters<typeof sectionOf>[1]): Text =>
  quotedSectionName(plan.ride, sectionOf(plan, section))
