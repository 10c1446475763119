import type { Counts } from '#units/units.ts'

/**
 * Boundaries moved onto whole eights by the least total movement, their order kept: the first
 * at least one eight after 0, each at least one eight after the one before, so no block
 * vanishes. Among equally short ways the earliest boundaries win. Exact, by a dynamic
 * programme over boundaries and eights.
 *
 * @param boundaries counts since the section's count one, rising, above 0
 * @param eight counts in an eight: 8, or 6 in three and six
 * @returns counts, one a boundary, whole multiples of `eight`
 */
export function snapToEights(boundaries: readonly Counts[], eight: Counts): Counts[] {
  // Pushing crowded boundaries apart never needs more room than one eight each past the last.
  const places = Math.ceil((boundaries.at(-1) ?? 0) / eight) + boundaries.length
  let costs: number[] = Array(places + 1).fill(0)
  const chosen: number[][] = []
  for (const [index, boundary] of boundaries.entries()) {
    const row: number[] = Array(places + 1).fill(Number.POSITIVE_INFINITY)
    const from: number[] = Array(places + 1).fill(0)
    // The cheapest place so far for the boundary before, among the eights passed.
    let best = index === 0 ? 0 : Number.POSITIVE_INFINITY
    let bestAt = 0
    for (let place = index + 1; place <= places; place++) {
      if (index > 0 && costs[place - 1]! < best) {
        best = costs[place - 1]!
        bestAt = place - 1
      }
      row[place] = best + Math.abs(place * eight - boundary)
      from[place] = bestAt
    }
    costs = row
    chosen.push(from)
  }
  return traceBack(costs, chosen).map((place) => place * eight)
}

function traceBack(costs: readonly number[], chosen: readonly (readonly number[])[]): number[] {
  const places: number[] = Array(chosen.length).fill(0)
  let place = costs.indexOf(Math.min(...costs))
  for (let index = chosen.length - 1; index >= 0; index--) {
    places[index] = place
    place = chosen[index]![place]!
  }
  return places
}
