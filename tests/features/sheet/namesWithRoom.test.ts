import { expect, test } from 'vitest'
import { namesWithRoom } from '#features/sheet/paging/namesWithRoom.ts'
import { packBands } from '#features/sheet/paging/packBands.ts'

/** A band of rows one line high whose names take so many lines more. */
const band = (...more: number[]) => ({ head: 1, again: 1, rows: more.map(() => 1), named: more.map((lines) => 1 + lines) })
const named = (bands: ReturnType<typeof band>[], height: number, columns = 1) => {
  const pages = packBands(bands, { height, columns, gap: 1 })
  return namesWithRoom(pages, bands, { height, gap: 1 }).map((rows) => [...rows].sort())
}

test('a name that takes no line is always there', () => expect(named([band(0, 1, 0)], 4)).toEqual([[0, 2]]))

test('what a column has left goes to the other names, from the top', () => {
  expect(named([band(1, 1, 1)], 6)).toEqual([[0, 1]])
  expect(named([band(2, 1, 0)], 5)).toEqual([[1, 2]])
})

test('every column has its own lines', () => {
  // Two bands of 3 and one of 2 lines: the first column is full, the second has one line left.
  expect(named([band(1, 1), band(1, 1), band(1)], 7, 2)).toEqual([[], [], [0]])
})

test('a band that goes on counts the head it has there', () => {
  expect(named([band(1, 1, 1, 1)], 4)).toEqual([[3]])
})
