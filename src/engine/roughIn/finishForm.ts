import type { Seconds } from '#units/units.ts'
import { PHRASE_EIGHTS, type Segment } from './phrases.ts'

/** How riders are brought to the last effort of the class (common practice): a rest, a set-up, and what eases it out. */
const REST: Seconds = 62
const SET_UP: Seconds = 25
const EASE: Seconds = 20
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
  // The last loud stretch from which on there is room for it: where it begins, and its own build before it.
  const longest = Math.max(PHRASE_EIGHTS, down(most))
  const last = segments.findLastIndex((segment, at) => segment.up && starts[at]! >= earliest && starts[at]! + longest + ease <= all)
  const from = last < 0 ? Math.max(earliest, all - ease - longest) : starts[last]!
  const effort = Math.min(longest, all - ease - from)
  if (effort < PHRASE_EIGHTS) return null
  const build = segments[last - 1]?.build ?? 0
  const lead = Math.min(from - rest, Math.max(setUp, build))
  const before = from - lead
  const opening = before * eightSeconds > LONGEST_REST ? before - rest : 0
  return {
    opening,
    rest: before - opening,
    segments: [
      { eights: lead, up: false, build: build > 0 ? Math.min(build, lead) : lead },
      { eights: effort, up: true },
      { eights: all - from - effort, up: false },
    ],
  }
}

const sum = (segments: readonly Segment[]): number => segments.reduce((all, { eights }) => all + eights, 0)
