/** Spearman's rank correlation of values with their own order; equal values share their mean rank. */
export function rankCorrelation(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b)
  const rank = (value: number) => (sorted.indexOf(value) + sorted.lastIndexOf(value)) / 2
  const middle = (values.length - 1) / 2
  let product = 0
  let ranks = 0
  let order = 0
  for (const [i, value] of values.entries()) {
    product += (i - middle) * (rank(value) - middle)
    order += (i - middle) ** 2
    ranks += (rank(value) - middle) ** 2
  }
  return ranks > 0 ? product / Math.sqrt(ranks * order) : 0
}
