import type { Seconds } from '#units/units.ts'
import { PHRASE_EIGHTS, type Segment } from './phrases.ts'

/** How riders are brought to the last effort of the class (common practice): a rest, a set-up, and what eases it out. */
const REST: Seconds = 62
const SET_UP: Seconds = 18
const EASE: Seconds = 15
/** The effort is no shorter where the music leads to it. */
const LEAST: Seconds = 30
/** A longer rest than this is ridden as the song's own quiet stretch at first. */
const LONGEST_REST: Seconds = 90

/** The finish of a class: what is ridden before its rest, the rest, and the set-up, the effort and what eases it out. */
interface FinishForm {
  opening: number
  rest: number
  segments: Segment[]
}

/**
 * A finish in whole phrases: one effort from where the song is loud last, as long as the level takes, with a proper rest and a
 * set-up that rises before it. Null where the song is too short for them.
 *
 * @param most seconds of the effort
 */
export function finishForm(segments: readonly Segment[], eightSeconds: Seconds, most: Seconds): FinishForm | null {
  const up = (length: Seconds) => Math.ceil(length / eightSeconds / PHRASE_EIGHTS - 1e-9) * PHRASE_EIGHTS
  const down = (length: Seconds) => Math.floor(length / eightSeconds / PHRASE_EIGHTS + 1e-9) * PHRASE_EIGHTS
  // Rest and set-up are whole phrases together.
  const rest = Math.ceil(REST / eightSeconds - 1e-9)
  const [setUp, ease] = [up(REST + SET_UP) - rest, up(EASE)]
  const all = sum(segments)
  const starts = segments.map((_, at) => sum(segments.slice(0, at)))
  const earliest = rest + setUp
  const longest = Math.max(PHRASE_EIGHTS, down(most))
  // The last loud stretch from which on there is room for it, where it begins: one the music builds to before others, even for less of it.
  const roomFor = (length: number, built: boolean) =>
    segments.findLastIndex(
      (segment, at) =>
        segment.up && starts[at]! >= earliest && starts[at]! + length + ease <= all && (!built || (segments[at - 1]?.build ?? 0) > 0),
    )
  const least = Math.min(longest, up(LEAST))
  const last = [roomFor(longest, true), roomFor(least, true), roomFor(longest, false)].find((at) => at >= 0) ?? -1
  const loud = last < 0 ? Math.max(earliest, all - ease - longest) : starts[last]!
  const room = Math.min(longest, all - ease - loud)
  if (room < PHRASE_EIGHTS) return null
  const build = segments[last - 1]?.build ?? 0
  // Where the music builds to less than the effort lasts, it begins before that and rises with the build.
  const early = build > 0 ? Math.max(0, Math.floor(Math.min(longest - room, loud - earliest) / PHRASE_EIGHTS) * PHRASE_EIGHTS) : 0
  const from = loud - early
  const rising = Math.min(build, early)
  const lead = Math.min(from - rest, Math.max(setUp, build - early))
  const before = from - lead
  const opening = before * eightSeconds > LONGEST_REST ? before - rest : 0
  return {
    opening,
    rest: before - opening,
    segments: [
      { eights: lead, up: false, build: build > early ? Math.min(build - early, lead) : lead },
      { eights: room + early, up: true, ...(rising > 0 && { rise: { eights: rising, last: room } }) },
      { eights: all - loud - room, up: false },
    ],
  }
}

const sum = (segments: readonly Segment[]): number => segments.reduce((all, { eights }) => all + eights, 0)
