import type { EffortLine } from '#engine/recovery/effortLines.ts'
import type { CurvePoint } from '#engine/report.ts'

/** Intended effort as runs of breakpoints; a gap without blocks starts a new run, a step is two points at one time. */
export function intentCurve(lines: readonly EffortLine[]): CurvePoint[][] {
  const runs: CurvePoint[][] = []
  let run: CurvePoint[] = []
  for (const { from, to, start, end } of lines) {
    const last = run.at(-1)
    if (last?.at !== from) {
      run = []
      runs.push(run)
    }
    if (last?.at !== from || last.value !== start) run.push({ at: from, value: start })
    run.push({ at: to, value: end })
  }
  return runs
}
