import type { Millimetres } from './paper.ts'

/** Heights of one band as laid out: its head, its head where it goes on, and each of its rows. */
export interface BandHeights {
  head: Millimetres
  /** As high as the head unless given. */
  again?: Millimetres
  rows: Millimetres[]
  /** Heights of the rows with the names of their blocks, where names are left out. */
  named?: Millimetres[]
}

/** A band in a column, or the part of it that fits: rows from (inclusive) to (exclusive). */
export interface Piece {
  band: number
  from: number
  to: number
}

export type Column = Piece[]
export type Page = Column[]

export interface Space {
  /** Height of a column. */
  height: Millimetres
  /** Columns on a page. */
  columns: number
  /** Between two bands. */
  gap: Millimetres
}

/**
 * Bands in order into columns and pages. A band is never split, unless it is higher than a whole
 * column: then it starts at the top of one and goes on in the next, its head repeated. Taking
 * bands in order and a new column only when one is full uses the fewest columns there can be.
 * A row higher than a column stands in a column of its own.
 */
export function packBands(bands: readonly BandHeights[], { height, columns, gap }: Space): Page[] {
  const filled: Column[] = []
  let used = Number.POSITIVE_INFINITY

  const place = (piece: Piece, size: Millimetres) => {
    const needed = used === 0 ? size : used + gap + size
    if (needed > height) {
      filled.push([])
      used = size
    } else used = needed
    filled.at(-1)!.push(piece)
  }

  bands.forEach(({ head, again = head, rows }, band) => {
    for (const { from, to } of partsOf({ head, again, rows }, height)) {
      place({ band, from, to }, (from === 0 ? head : again) + sum(rows.slice(from, to)))
    }
  })
  return pagesOf(filled, columns)
}

/** The whole band where a column can hold it, else as many rows at a time as a column can. */
function partsOf({ head, again, rows }: Required<Omit<BandHeights, 'named'>>, height: Millimetres): { from: number; to: number }[] {
  const parts: { from: number; to: number }[] = []
  let from = 0
  let used = head
  rows.forEach((row, index) => {
    if (used + row > height && index > from) {
      parts.push({ from, to: index })
      from = index
      used = again
    }
    used += row
  })
  return [...parts, { from, to: rows.length }]
}

const pagesOf = (columns: Column[], perPage: number): Page[] =>
  Array.from({ length: Math.ceil(columns.length / perPage) }, (_, page) => columns.slice(page * perPage, (page + 1) * perPage))

const sum = (sizes: readonly number[]): number => sizes.reduce((total, size) => total + size, 0)
