import type { Choices, Difference, Origin, Side } from './difference.ts'

type Open<D> = D extends unknown ? Omit<D, 'chosen'> : never

/** Decides differences one by one and writes them down. */
export interface Decisions {
  /** Whether there is a common base; without one nothing of theirs is taken unless it is chosen. */
  based: boolean
  /**
   * The side whose answer stands: the one chosen, else the one that made the difference
   * alone; in a conflict `fallback`, mine unless given.
   */
  decide: (difference: Open<Difference>, fallback?: Side) => Side
  /** Writes down what both did alike. */
  note: (difference: Open<Difference>) => void
  all: readonly Difference[]
}

export function newDecisions(choices: Choices, based: boolean): Decisions {
  const all: Difference[] = []
  return {
    based,
    all,
    decide: (difference, fallback = 'mine') => {
      const chosen = (Object.hasOwn(choices, difference.id) && choices[difference.id]) || usual(difference.by, fallback, based)
      all.push({ ...difference, chosen })
      return chosen
    },
    note: (difference) => void all.push({ ...difference, chosen: 'mine' }),
  }
}

function usual(by: Origin, fallback: Side, based: boolean): Side {
  if (!based || by === 'both') return 'mine'
  return by === 'conflict' ? fallback : by
}
