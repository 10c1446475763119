/** One line of a bench's report. Times in milliseconds. */
export interface Row {
  what: string
  /** The shortest; on a busy machine the nearest to the truth. */
  best: number
  median: number
  p95: number
  /** What the p95 should stay within. */
  aim?: number
  note?: string
}

/** Shortest, median and 95th percentile of a run of times: the values at those ranks, without interpolation. */
export function spread(times: readonly number[]): Pick<Row, 'best' | 'median' | 'p95'> {
  const sorted = [...times].sort((a, b) => a - b)
  const at = (share: number) => sorted[Math.max(0, Math.ceil(share * sorted.length) - 1)] ?? Number.NaN
  return { best: at(0), median: at(0.5), p95: at(0.95) }
}

/** A line about a size, not a time; smaller is better. */
export interface Size {
  what: string
  size: number
  unit?: string
  /** What the size should stay within. */
  aim?: number
  note?: string
}
