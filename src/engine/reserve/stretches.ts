import { cutAt, isConstant, type Quadratic, quadraticAt, startingAt } from '#engine/demand/quadratic.ts'
import type { Ridden } from '#engine/demand/ridden.ts'
import type { Seconds, Watts } from '#units/units.ts'

/** A stretch of the ride on one side of critical power: the reserve is drawn on, or comes back. */
export interface ReserveStretch {
  from: Seconds
  to: Seconds
  /** Power less critical power, time counted from `from`. */
  excess: Quadratic
  drains: boolean
  /** Index into the report's blocks. */
  block: number | undefined
}

export type Powered = Pick<Ridden, 'from' | 'to' | 'watts'> & Partial<Pick<Ridden, 'block'>>

/** The ride cut where its power crosses critical power; the same for every recovery. */
export function stretchesOf(ridden: readonly Powered[], criticalPower: Watts): ReserveStretch[] {
  const stretches: ReserveStretch[] = []
  for (const { from, to, watts, block } of ridden) {
    const excess: Quadratic = [watts[0] - criticalPower, watts[1], watts[2]]
    if (isConstant(excess)) {
      stretches.push({ from, to, excess, drains: excess[0] >= 0, block })
      continue
    }
    const cuts = cutAt(excess, [0], to - from)
    for (let i = 1; i < cuts.length; i++) {
      const [begin, end] = [cuts[i - 1]!, cuts[i]!]
      stretches.push({
        from: from + begin,
        to: i === cuts.length - 1 ? to : from + end,
        excess: startingAt(excess, begin),
        drains: quadraticAt(excess, (begin + end) / 2) >= 0,
        block,
      })
    }
  }
  return stretches
}
