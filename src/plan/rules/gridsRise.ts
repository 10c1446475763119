import { LIMITS } from '#plan/document/schema.ts'
import type { Wrong } from '#plan/document/wrong.ts'
import { type BeatGrid, tempoOf } from '#plan/model.ts'
import { faultOfOdd } from '#plan/songs/oddBeats.ts'
import type { Fault, Path, Rule } from './rule.ts'

/** What adding a first beat's second to an anchor may cost the tempo in its last bits. */
const ROUNDING = 1e-6

const ODD = { notWhole: 'oddNotWhole', none: 'oddNone', notRising: 'oddNotRising', noRoom: 'oddNoRoom' } as const

/** The odd places of a beat grid rise and have room; its anchors rise in counts and seconds, at a tempo music has. */
export const gridsRise: Rule = (ride) =>
  ride.sections.flatMap((section, s) => {
    const grid = section.song?.grid
    return grid ? faultsOf(grid, ['sections', s, 'song', 'grid']) : []
  })

function faultsOf({ anchors, beatsPerBar, odd }: BeatGrid, path: Path): Fault[] {
  // Without odd places in order there is no telling which beat an anchor is.
  const misplaced = odd && faultOfOdd(odd)
  if (misplaced) return [{ path: [...path, 'odd', misplaced.index], wrong: { problem: ODD[misplaced.fault] } }]
  const { low, high } = LIMITS.tempo
  return anchors.slice(1).flatMap((anchor, i) => {
    const before = anchors[i]!
    const at = [...path, 'anchors', i + 1]
    if (anchor[0] <= before[0] || anchor[1] <= before[1]) return [{ path: at, wrong: { problem: 'notRising' } }]
    const bpm = tempoOf({ anchors: [before, anchor], beatsPerBar, ...(odd && { odd }) })
    return bpm >= low - ROUNDING && bpm <= high + ROUNDING ? [] : [{ path: at, wrong: tempoWrong(low, high, bpm) }]
  })
}

const tempoWrong = (low: number, high: number, bpm: number): Wrong =>
  Number.isFinite(bpm) ? { problem: 'tempo', low, high, bpm } : { problem: 'tempoEndless', low, high }
