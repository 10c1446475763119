/**
 * The column for every row so that the costs add up to the least, each column used once; null
 * for rows that get none where there are more rows than columns.
 *
 * Shortest augmenting paths with potentials: Kuhn HW, Naval Research Logistics Quarterly
 * 1955;2:83-97, in the form of Jonker R, Volgenant A, Computing 1987;38:325-340 (both from
 * memory). Cost: cubic in the larger side.
 *
 * @param costs rows of equal length, finite
 */
export function assignment(costs: readonly (readonly number[])[]): (number | null)[] {
  const rows = costs.length
  const columns = costs[0]?.length ?? 0
  const size = Math.max(rows, columns)
  // Missing rows and columns cost nothing anywhere, so they take what is left over.
  const cost = (row: number, column: number): number => costs[row]?.[column] ?? 0
  const rowOf = Array<number>(size + 1).fill(-1)
  const rowPrice = Array<number>(size).fill(0)
  const columnPrice = Array<number>(size + 1).fill(0)
  for (let row = 0; row < size; row++) augment(row, size, cost, rowOf, rowPrice, columnPrice)
  const found = Array<number | null>(rows).fill(null)
  for (let column = 0; column < columns; column++) if (rowOf[column]! < rows) found[rowOf[column]!] = column
  return found
}

/** Brings one row in along the cheapest chain of reassignments; the extra last column is where it starts. */
function augment(
  row: number,
  size: number,
  cost: (row: number, column: number) => number,
  rowOf: number[],
  rowPrice: number[],
  columnPrice: number[],
): void {
  const least = Array<number>(size).fill(Number.POSITIVE_INFINITY)
  const from = Array<number>(size).fill(size)
  const seen = Array<boolean>(size + 1).fill(false)
  let column = size
  rowOf[size] = row
  while (rowOf[column]! >= 0) {
    seen[column] = true
    const current = rowOf[column]!
    let step = Number.POSITIVE_INFINITY
    let next = size
    for (let j = 0; j < size; j++) {
      if (seen[j]) continue
      const reduced = cost(current, j) - rowPrice[current]! - columnPrice[j]!
      if (reduced < least[j]!) {
        least[j] = reduced
        from[j] = column
      }
      if (least[j]! < step) {
        step = least[j]!
        next = j
      }
    }
    for (let j = 0; j <= size; j++) {
      if (seen[j]) {
        rowPrice[rowOf[j]!]! += step
        columnPrice[j]! -= step
      } else if (j < size) least[j]! -= step
    }
    column = next
  }
  while (column !== size) {
    const before = from[column]!
    rowOf[column] = rowOf[before]!
    column = before
  }
  rowOf[size] = -1
}
