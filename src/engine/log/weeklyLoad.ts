/** A week of daily loads, read together. */
export interface WeeklyLoad {
  total: number
  /** Mean ÷ standard deviation of the days; null where all days are alike. */
  monotony: number | null
  /** Total × monotony. */
  strain: number | null
}

/**
 * How alike the days of a week are, and what that makes of its load.
 * Source: Foster C, Med Sci Sports Exerc 1998;30(7):1164-1168: monotony is daily mean ÷ standard deviation, strain load ×
 * monotony. Which standard deviation is not said there; ours is the sample one (n − 1).
 *
 * @param daily loads of at least two days, days off as 0
 */
export function weeklyLoad(daily: readonly number[]): WeeklyLoad {
  const total = daily.reduce((sum, load) => sum + load, 0)
  const mean = total / daily.length
  const variance = daily.reduce((sum, load) => sum + (load - mean) ** 2, 0) / (daily.length - 1)
  if (!(variance > 0)) return { total, monotony: null, strain: null }
  const monotony = mean / Math.sqrt(variance)
  return { total, monotony, strain: total * monotony }
}
