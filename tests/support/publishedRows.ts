import { describe, expect, it } from 'vitest'

/** One published figure, as kept in the rows.json beside its test. */
export interface PublishedRow {
  id: string
  quantity: string
  inputs: Record<string, unknown>
  expected: unknown
  unit: string
  tolerance: number
  /** compute: must come out; constant: what the code holds; negative: must not come out; context: a fact to show, not to test. */
  use: string
  source: string
  /** How the figure was checked; "from memory" where it was not. */
  checked: string
  note?: string
}

/** The computation behind each row: the longest key the row's id starts with is taken. */
export type Computations = Record<string, (inputs: never, row: PublishedRow) => unknown>

/**
 * One test a row, its source in the title. A row nobody computes fails, so that none is
 * passed over in silence; rows of use "context" are facts without a computation.
 *
 * @param product what a user gets: `computeRide`, or the very function that it or the page calls
 * @param yardsticks functions of tests/support/reference that only tests have; their tests say so in their names
 */
export function checkRows(topic: string, rows: readonly PublishedRow[], product: Computations, yardsticks: Computations = {}): void {
  const computations = { ...product, ...yardsticks }
  const keys = Object.keys(computations).sort((a, b) => b.length - a.length)
  describe(topic, () => {
    for (const row of rows.filter(({ use }) => use !== 'context')) {
      const label = row.checked === 'from memory' ? `${row.source}; from memory` : row.source
      const key = keys.find((candidate) => row.id.startsWith(candidate))
      const isYardstick = key !== undefined && key in yardsticks
      it(`${row.id}: ${row.quantity} (${label})${isYardstick ? ', a yardstick against its source only' : ''}`, () => {
        if (key === undefined) throw new Error(`Nothing computes ${row.id}.`)
        const value = computations[key]!(row.inputs as never, row)
        if (row.use === 'negative') expect(isNear(value, row.expected, row.tolerance)).toBe(false)
        else expectNear(value, row.expected, row.tolerance)
      })
    }
    it('has rows, and every computation is used', () => {
      const tested = rows.filter(({ use }) => use !== 'context').map(({ id }) => keys.find((key) => id.startsWith(key)))
      expect([...new Set(tested)].sort()).toEqual([...keys].sort())
    })
  })
}

function expectNear(value: unknown, expected: unknown, tolerance: number): void {
  if (isNear(value, expected, tolerance)) return
  expect(value).toEqual(expected)
  throw new Error('The values are equal but not near: a value that is no number was compared.')
}

function isNear(value: unknown, expected: unknown, tolerance: number): boolean {
  if (typeof expected === 'number') return typeof value === 'number' && Math.abs(value - expected) <= tolerance + 1e-12 * Math.abs(expected)
  if (Array.isArray(expected)) {
    return Array.isArray(value) && value.length === expected.length && expected.every((one, i) => isNear(value[i], one, tolerance))
  }
  if (expected !== null && typeof expected === 'object') {
    const record = value as Record<string, unknown> | null
    return record !== null && Object.entries(expected).every(([key, one]) => isNear(record[key], one, tolerance))
  }
  return value === expected
}
