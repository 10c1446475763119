/** Yardsticks: other published rules for the slopes of a monotone cubic. The engine draws by none of them. */
export type SlopeRule = (widths: readonly number[], secants: readonly number[]) => number[]

/**
 * Three-point slopes, then limited to a circle of radius 3 in units of the secant.
 * Source: Fritsch & Carlson, SIAM J Numer Anal 1980;17(2):238-246 (the limiter from memory).
 */
export const limitedThreePointSlopes: SlopeRule = (h, d) => {
  if (d.length === 1) return [d[0]!, d[0]!]
  const inner = d.slice(1).map((right, i) => (h[i + 1]! * d[i]! + h[i]! * right) / (h[i]! + h[i + 1]!))
  return limited(d, [boundedEnd(h[0]!, h[1]!, d[0]!, d[1]!), ...inner, boundedEnd(h.at(-1)!, h.at(-2)!, d.at(-1)!, d.at(-2)!)])
}

/** Plain mean of the two secants, one-sided ends, limited the same way: the form most chart libraries draw. */
export const limitedMeanSlopes: SlopeRule = (_, d) => limited(d, [d[0]!, ...d.slice(1).map((right, i) => (d[i]! + right) / 2), d.at(-1)!])

const threePointEnd = (h0: number, h1: number, d0: number, d1: number): number => ((2 * h0 + h1) * d0 - h0 * d1) / (h0 + h1)

function boundedEnd(h0: number, h1: number, d0: number, d1: number): number {
  const slope = threePointEnd(h0, h1, d0, d1)
  if (slope * d0 <= 0) return 0
  return d0 * d1 <= 0 && Math.abs(slope) > 3 * Math.abs(d0) ? 3 * d0 : slope
}

function limited(secants: readonly number[], raw: readonly number[]): number[] {
  const slopes = [...raw]
  secants.forEach((secant, i) => {
    if (secant === 0) {
      slopes[i] = 0
      slopes[i + 1] = 0
      return
    }
    const a = slopes[i]! / secant
    const b = slopes[i + 1]! / secant
    const size = Math.hypot(a, b)
    if (a < 0) slopes[i] = 0
    if (b < 0) slopes[i + 1] = 0
    if (a >= 0 && b >= 0 && size > 3) {
      slopes[i] = (3 * a * secant) / size
      slopes[i + 1] = (3 * b * secant) / size
    }
  })
  return slopes
}
