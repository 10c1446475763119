import type { MeaningOf } from '#engine/cues/claims/claim.ts'
import type { PlayedBlock } from '#engine/played.ts'
import type { Seconds } from '#units/units.ts'
import type { Spoken } from './spoken.ts'
import { rest } from './stretches.ts'
import { anyFits, type Verdict } from './verdict.ts'

/** The moves words may be about: the block's own, else the next one that comes. */
function movers({ view, played, moment }: Spoken): PlayedBlock[] {
  if (played.block.move && moment !== 'preview') return [played]
  const all = [played, ...rest(view, played)].filter(({ block }) => block.move)
  return moment === 'preview' ? all : []
}

/** "on fours", "eight up, eight down". */
export function judgeMoveCounts({ value, unit }: MeaningOf<'moveCounts'>, spoken: Spoken): Verdict {
  if (unit === 'seconds')
    return anyFits(
      movers(spoken).flatMap(secondsOfMove),
      (real) => Math.abs(real - value) <= real / 5,
      (real) => ({ low: Math.round(real) }),
    )
  return anyFits(
    movers(spoken).map(({ block }) => block.move!.counts),
    (counts) => counts === value,
    (counts) => ({ low: counts }),
  )
}

/** "four of each": both sides of a move, each as long as its counts. */
export function judgeEach({ value }: MeaningOf<'each'>, spoken: Spoken): Verdict {
  const times = movers(spoken).flatMap((played) => timesIn(played, 2))
  return anyFits(
    times.filter(Number.isInteger),
    (real) => real === value,
    (real) => ({ low: real }),
  )
}

/** "sixteen leans": the whole figure, or up and down as one. */
export function judgeRepeats({ value }: MeaningOf<'repeats'>, spoken: Spoken): Verdict {
  const times = movers(spoken).flatMap((played) => {
    const [figure, pair] = [timesIn(played, 1), timesIn(played, 2)]
    return played.block.terrain === 'jumps' ? [...pair, ...figure] : [...figure, ...pair]
  })
  return anyFits(
    times,
    (real) => real === value,
    (real) => ({ low: real }),
  )
}

/** How long one part of a block's move lasts. */
const secondsOfMove = ({ block, countFrom, countTo, from, to }: PlayedBlock): Seconds[] =>
  countFrom === undefined || countTo === undefined ? [] : [(block.move!.counts * (to - from)) / (countTo - countFrom)]

const timesIn = ({ block, countFrom, countTo }: PlayedBlock, period: number): number[] =>
  countFrom === undefined || countTo === undefined ? [] : [(countTo - countFrom) / (period * block.move!.counts)]
