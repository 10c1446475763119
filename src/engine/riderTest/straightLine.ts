/** A straight line through points by least squares. */
interface StraightLine {
  slope: number
  intercept: number
  /** Standard errors; null with two points, which every line between them fits. */
  slopeError: number | null
  interceptError: number | null
  /** Share of the spread of y that the line explains, 0 to 1. */
  explained: number
}

/** Ordinary least squares; null where the points do not differ in x. */
export function straightLine(points: readonly (readonly [x: number, y: number])[]): StraightLine | null {
  const n = points.length
  const mean = (at: 0 | 1) => points.reduce((sum, point) => sum + point[at], 0) / n
  const [mx, my] = [mean(0), mean(1)]
  const sxx = points.reduce((sum, [x]) => sum + (x - mx) ** 2, 0)
  if (!(sxx > 0)) return null
  const slope = points.reduce((sum, [x, y]) => sum + (x - mx) * (y - my), 0) / sxx
  const intercept = my - slope * mx
  const left = points.reduce((sum, [x, y]) => sum + (y - intercept - slope * x) ** 2, 0)
  const spread = points.reduce((sum, [, y]) => sum + (y - my) ** 2, 0)
  const variance = n > 2 ? left / (n - 2) : null
  return {
    slope,
    intercept,
    slopeError: variance === null ? null : Math.sqrt(variance / sxx),
    interceptError: variance === null ? null : Math.sqrt(variance * (1 / n + mx ** 2 / sxx)),
    explained: spread > 0 ? 1 - left / spread : 1,
  }
}
