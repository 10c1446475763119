/** One line of a bench's report. Times in milliseconds. */
export interface Row {
  what: string
  median: number
  p95: number
  /** What the p95 should stay within. */
  aim?: number
  note?: string
}

/** Median and 95th percentile of a run of times: the values at those ranks, without interpolation. */
export function spread(times: readonly number[]): Pick<Row, 'median' | 'p95'> {
  const sorted = [...times].sort((a, b) => a - b)
  const at = (share: number) => sorted[Math.ceil(share * sorted.length) - 1] ?? Number.NaN
  return { median: at(0.5), p95: at(0.95) }
}
