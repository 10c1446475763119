import { isJump } from '#engine/cadence/moves.ts'
import type { PlayedBlock, Span } from '#engine/played.ts'
import type { Counts, Seconds } from '#units/units.ts'
import type { LeadState } from './leadState.ts'
import type { LedSection, Measure } from './led.ts'
import type { LedClass } from './ledClass.ts'
import { measureClock } from './ledTimes.ts'

/** Where a moment is inside its block. */
export function inBlock(
  led: LedClass,
  block: number,
  here: Seconds,
): Pick<LeadState, 'block' | 'round' | 'eights' | 'beat' | 'music' | 'countsLeft' | 'postureLeft'> {
  const { round } = led.blocks[block]!
  return { block, ...(round && { round }), ...countsAt(led, block, here), postureLeft: postureEnd(led, block) - here }
}

function countsAt(
  { plan, led, report }: LedClass,
  block: number,
  here: Seconds,
): Pick<LeadState, 'eights' | 'beat' | 'music' | 'countsLeft'> {
  const { section: index, countFrom, countTo } = report.blocks[block]!
  const section = led.sections[index]!
  if (!section.counted || countFrom === undefined || countTo === undefined) return {}
  const { eight } = section
  // A block begins at its own moment; a count that rounding puts before it is its first.
  const { placeAt, beatOf } = measureClock(plan, section, report.sections[index]!.one)
  const inSong = placeAt(here)
  const place = Math.max(0, inSong - countFrom)
  const begun = Math.floor(place / eight)
  const of = Math.max(1, Math.ceil((countTo - countFrom) / eight))
  return {
    eights: { left: Math.max(1, of - begun), of },
    beat: beatIn(countFrom + begun * eight, countFrom + place, eight, beatOf),
    music: eightOfSong(section, inSong),
    countsLeft: Math.max(1, Math.ceil(beatOf(countTo) - beatOf(countFrom + place))),
  }
}

/** Where a place is in the eight that starts at another, in beats: an eight with two over is counted to ten, one with two missing to six. */
export function beatIn(start: Measure, place: Measure, eight: Counts, beatOf: (place: Measure) => number): LeadState['beat'] {
  const beat = beatOf(place) - beatOf(start)
  const of = Math.round(beatOf(start + eight) - beatOf(start))
  return { count: Math.floor(beat) + 1, of, passed: beat - Math.floor(beat), unit: eight }
}

/** Which eight of its song a place lies in. */
export function eightOfSong({ eight, end }: LedSection, place: Measure): { eight: number; of: number } {
  return { eight: Math.floor(Math.max(0, place) / eight) + 1, of: Math.max(1, Math.ceil(end / eight)) }
}

/** The end of the blocks from this one on that keep its posture, in its own section. Jumps come down again and again: no one is up for all of them. */
function postureEnd({ report: { blocks } }: LedClass, index: number): Seconds {
  const own = blocks[index]!
  const keeps = (played: PlayedBlock | undefined) =>
    played?.section === own.section && played.block.posture === own.block.posture && isJumps(played) === isJumps(own)
  let end = own.to
  for (let i = index + 1; keeps(blocks[i]); i++) end = blocks[i]!.to
  return end
}

const isJumps = ({ block: { move } }: PlayedBlock): boolean => move !== undefined && isJump(move.name)

/** The block after this span that takes any time, and when it comes. */
export function nextFrom({ report: { blocks, sections } }: LedClass, span: Span, section: number, here: Seconds): Pick<LeadState, 'next'> {
  const after = span.block !== undefined ? span.block + 1 : (sections[section]?.blocks[span.kind === 'leadIn' ? 'from' : 'to'] ?? 0)
  if (span.kind === 'clearUp') return {}
  for (let i = after; i < blocks.length; i++) {
    const { from, to } = blocks[i]!
    if (to > from) return { next: { block: i, in: from - here } }
  }
  return {}
}
