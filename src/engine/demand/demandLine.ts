import type { CurvePoint, RiderReport } from '#engine/report.ts'
import { quadraticAt } from './quadratic.ts'

/** What the ride asks of a rider as a line, a step where blocks meet; a gap, and another run after it, where nothing is known. */
export function demandLine({ demand }: Pick<RiderReport, 'demand'>): CurvePoint[][] {
  const runs: CurvePoint[][] = []
  let end = Number.NaN
  for (const piece of demand.flatMap((asked) => asked?.pieces ?? [])) {
    if (piece.from !== end) runs.push([])
    const run = runs.at(-1)!
    // A curved stretch is at most a cadence ramp on one brake: its middle is all that a chord would miss.
    for (const at of [piece.from, (piece.from + piece.to) / 2, piece.to]) {
      run.push({ at, value: quadraticAt(piece.effort, at - piece.from) })
    }
    end = piece.to
  }
  return runs
}
