/** The middle of some values, the lower of the two middle ones for an even number; 0 for none. */
export function median(values: ArrayLike<number>): number {
  const sorted = Float64Array.from(values).sort()
  return sorted[(sorted.length - 1) >> 1] ?? 0
}
