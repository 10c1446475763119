import type { MeaningOf } from '#engine/cues/claims/claim.ts'
import type { Spoken } from './spoken.ts'
import { subjectsOf } from './stretches.ts'
import { anyFits, type Verdict } from './verdict.ts'

/** Efforts are told in whole numbers and planned in halves. */
const EFFORT_SLACK = 0.5

/** "a seven out of ten". */
export function judgeEffort({ low, high, on }: MeaningOf<'effort'>, spoken: Spoken): Verdict {
  return anyFits(
    subjectsOf(spoken, on).map(({ block }) => block.effort),
    ({ from, to }) => high >= Math.min(from, to) - EFFORT_SLACK && low <= Math.max(from, to) + EFFORT_SLACK,
    ({ to }) => ({ low: to, high: to }),
  )
}

/** "legs at ninety": within what riding off the beat is allowed, twice that where it is called a guess. */
export function judgeCadence({ low, high, near, on }: MeaningOf<'cadence'>, spoken: Spoken): Verdict {
  const slack = spoken.view.rules.offBeatRpm * (near ? 2 : 1)
  return anyFits(
    subjectsOf(spoken, on).flatMap(({ cadence }) => (cadence.kind === 'turning' ? [cadence] : [])),
    ({ from, to, least, most }) =>
      [from, to, least, most].some((rpm) => rpm >= low - slack && rpm <= high + slack) || (low >= least && high <= most),
    ({ to }) => ({ low: to, high: to }),
  )
}

/** "128 bpm": as it is written or as it is felt, at half or twice that. */
export function judgeTempo({ value }: MeaningOf<'tempo'>, { view, played }: Spoken): Verdict {
  const { bpm } = view.sections[played.section]!
  return anyFits(
    bpm === undefined ? [] : [bpm],
    (real) => [real, 2 * real, real / 2].some((felt) => Math.abs(felt - value) <= 1),
    (real) => ({ low: real }),
  )
}
