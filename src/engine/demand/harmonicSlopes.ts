/**
 * Slopes for a monotone cubic through points of rising x, from the widths h and the secant slopes d between neighbours: at
 * every point the weighted harmonic mean of the two secants, at the ends a three-point slope kept in bounds. The curve
 * stays between the points it joins.
 * Source: Fritsch & Butland, SIAM J Sci Stat Comput 1984;5(2):300-304.
 */
export function harmonicSlopes(h: readonly number[], d: readonly number[]): number[] {
  if (d.length === 1) return [d[0]!, d[0]!]
  const inner = d.slice(1).map((right, i) => {
    const left = d[i]!
    if (left * right <= 0) return 0
    const w1 = 2 * h[i + 1]! + h[i]!
    const w2 = h[i + 1]! + 2 * h[i]!
    return (w1 + w2) / (w1 / left + w2 / right)
  })
  return [boundedEnd(h[0]!, h[1]!, d[0]!, d[1]!), ...inner, boundedEnd(h.at(-1)!, h.at(-2)!, d.at(-1)!, d.at(-2)!)]
}

const threePointEnd = (h0: number, h1: number, d0: number, d1: number): number => ((2 * h0 + h1) * d0 - h0 * d1) / (h0 + h1)

function boundedEnd(h0: number, h1: number, d0: number, d1: number): number {
  const slope = threePointEnd(h0, h1, d0, d1)
  if (slope * d0 <= 0) return 0
  return d0 * d1 <= 0 && Math.abs(slope) > 3 * Math.abs(d0) ? 3 * d0 : slope
}
