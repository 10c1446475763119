import type { CurvePoint, StrainCurve } from '#engine/report.ts'

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

/**
 * A curve of exponential pieces, each drawn with as many chords as its width in pixels earns
 * (one every eight pixels, two at least), so the picture costs the same at every zoom.
 */
export function strainPath(curve: StrainCurve, projection: Projection): string {
  const points: CurvePoint[] = []
  for (const piece of curve.pieces) {
    const width = projection.x(piece.to) - projection.x(piece.from)
    const chords = Math.max(2, Math.min(48, Math.ceil(width / 8)))
    for (let i = points.length === 0 ? 0 : 1; i <= chords; i++) {
      const at = piece.from + ((piece.to - piece.from) * i) / chords
      points.push({ at, value: strainAt(piece, at) })
    }
  }
  return linePath([points], projection)
}

/**
 * One piece in closed form: first-order relaxation towards a straight target a + b·t has the solution
 * a + b·(t − τ) plus a decaying difference; a level target is the case b = 0.
 */
export function strainAt(piece: StrainCurve['pieces'][number], at: number): number {
  const t = at - piece.from
  const slope = piece.to === piece.from ? 0 : (piece.targetTo - piece.targetFrom) / (piece.to - piece.from)
  const lag = piece.targetFrom - slope * piece.tau
  return lag + slope * t + (piece.start - lag) * Math.exp(-t / piece.tau)
}
