import type { CurvePoint } from '#engine/report.ts'
import type { Stretch } from '#units/units.ts'

/** Maps a point of the curve to the picture. */
export interface Projection {
  x: (seconds: number) => number
  y: (value: number) => number
}

const r = (value: number): string => String(Math.round(value * 100) / 100)

/** The line through runs of breakpoints; each run begins anew. */
export function linePath(runs: readonly (readonly CurvePoint[])[], { x, y }: Projection): string {
  let path = ''
  for (const run of runs) {
    run.forEach((point, i) => {
      path += `${i === 0 ? 'M' : 'L'}${r(x(point.at))} ${r(y(point.value))}`
    })
  }
  return path
}

/** The area between runs of breakpoints and zero. */
export function areaPath(runs: readonly (readonly CurvePoint[])[], { x, y }: Projection): string {
  const ground = r(y(0))
  let path = ''
  for (const run of runs) {
    const first = run[0]
    const last = run.at(-1)
    if (!first || !last) continue
    path += `M${r(x(first.at))} ${ground}`
    for (const point of run) path += `L${r(x(point.at))} ${r(y(point.value))}`
    path += `L${r(x(last.at))} ${ground}Z`
  }
  return path
}

/** The area between the lower and the upper end of a band, run by run. */
export function bandPath(low: readonly (readonly CurvePoint[])[], high: readonly (readonly CurvePoint[])[], { x, y }: Projection): string {
  let path = ''
  high.forEach((run, i) => {
    const way = [...run, ...(low[i] ?? []).toReversed()]
    way.forEach((point, n) => {
      path += `${n === 0 ? 'M' : 'L'}${r(x(point.at))} ${r(y(point.value))}`
    })
    if (way.length > 0) path += 'Z'
  })
  return path
}

/**
 * A curve given by its pieces and its value at a moment, each piece drawn with as many chords as its
 * width in pixels earns (one every twelve pixels, two at least), so the picture costs the same at every zoom.
 * Pieces that do not meet begin a new run.
 */
export function smoothRuns<Piece extends Stretch>(
  pieces: readonly Piece[],
  valueAt: (piece: Piece, at: number) => number,
  { x }: Projection,
): CurvePoint[][] {
  const runs: CurvePoint[][] = []
  let end = Number.NaN
  for (const piece of pieces) {
    if (piece.from !== end) runs.push([])
    const run = runs.at(-1)!
    const chords = Math.max(2, Math.min(48, Math.ceil((x(piece.to) - x(piece.from)) / 12)))
    for (let i = run.length === 0 ? 0 : 1; i <= chords; i++) {
      const at = piece.from + ((piece.to - piece.from) * i) / chords
      run.push({ at, value: valueAt(piece, at) })
    }
    end = piece.to
  }
  return runs
}
