import type { Span } from '#engine/played.ts'
import type { Seconds } from '#units/units.ts'
import { cueDueAt } from './cueDueAt.ts'
import { beatIn, eightOfSong, inBlock, nextFrom } from './inBlock.ts'
import type { LeadState } from './leadState.ts'
import { heldSeconds, type LedClass } from './ledClass.ts'
import { measureClock } from './ledTimes.ts'

/**
 * The state of a class, already worked out, at a time on its clock after its last act; cheap enough for every frame.
 * Exact: a block begins at its own first moment and never before.
 */
export function stateOf(led: LedClass, at: Seconds): LeadState {
  const { report, late, ride } = led
  const here = heldMoment(led, at)
  const total = report.overall.total + heldSeconds(led, at)
  const shared = {
    at,
    total,
    spare: ride.slotMinutes * 60 - late - total,
    ...(led.led.hold && { held: at - led.led.hold.at }),
  }
  const span = report.spans.find(({ to }) => here < to)
  if (!span) return { ...shared, phase: 'finished', secondsLeft: 0, songLeft: 0, behind: total + late - led.plan.report.overall.total }
  const section = report.sections.findIndex(({ sectionId }) => sectionId === span.sectionId)
  return {
    ...shared,
    phase: span.kind,
    ...(section >= 0 && { section }),
    secondsLeft: span.to - here,
    ...(span.block !== undefined && inBlock(led, span.block, here)),
    ...(span.kind === 'openTail' && inTail(led, section, here)),
    ...nextFrom(led, span, section, here),
    ...cueDueAt(report.cues.lines, here),
    songLeft: songLeft(led, section, here, at),
    behind: at + late - plannedTime(led, span, section, here),
  }
}

/** While something is held: the moment that is shown, which comes again and again or stands still. */
function heldMoment({ led, plan, report }: LedClass, at: Seconds): Seconds {
  const { hold } = led
  if (!hold) return at
  if (hold.eight === undefined || hold.moment.kind !== 'item') return hold.at
  const section = led.sections[hold.moment.section]!
  const clock = measureClock(plan, section, report.sections[hold.moment.section]!.one)
  const gone = clock.placeAt(at) - hold.eight
  return clock.at(hold.eight + Math.max(0, gone - Math.max(0, Math.floor(gone / section.eight)) * section.eight))
}

/** Music whose blocks are over: its eights until it ends. */
function inTail(
  { plan, led, report }: LedClass,
  index: number,
  here: Seconds,
): Pick<LeadState, 'eights' | 'beat' | 'music' | 'countsLeft'> {
  const section = led.sections[index]!
  if (!section.counted) return {}
  const { placeAt, beatOf } = measureClock(plan, section, report.sections[index]!.one)
  const place = placeAt(here)
  const left = Math.max(1, Math.ceil((section.end - place) / section.eight))
  return {
    eights: { left, of: left },
    beat: beatIn(Math.floor(place / section.eight) * section.eight, place, section.eight, beatOf),
    music: eightOfSong(section, place),
    countsLeft: Math.ceil(beatOf(section.end) - beatOf(place)),
  }
}

/** What is left of the music; in a lead-in all of it. A hold does not stop it. */
function songLeft({ led, report }: LedClass, index: number, here: Seconds, at: Seconds): Seconds {
  const section = report.sections[index]
  if (!section) return 0
  return Math.max(0, section.to - Math.max(section.one, led.sections[index]!.music ? at : here))
}

/** Where on the planned ride clock this moment is. */
function plannedTime({ led, plan, report, blocks }: LedClass, span: Span, index: number, here: Seconds): Seconds {
  const planned = plan.report.sections[led.sections[index]?.planned ?? -1]
  if (span.kind === 'block') {
    const { from, to } = plan.report.blocks[blocks[span.block!]!.planned]!
    return Math.min(to, from + here - report.blocks[span.block!]!.from)
  }
  if (span.kind === 'leadIn' && planned) return Math.max(planned.from, planned.one - (span.to - here))
  if (span.kind === 'openTail' && planned) return planned.to - (span.to - here)
  return span.kind === 'clearUp' ? plan.report.overall.total - (span.to - here) : here
}
