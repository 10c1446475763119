import type { BandHeights, Page, Piece, Space } from './packBands.ts'

/** Heights are the same where they differ by less than a printer could show. */
const SAME = 0.01

/**
 * Which rows have room for the block's name: all those whose words take no line more with it, and
 * then, from the top, as many others as the column they stand in has lines left for. Rows by number,
 * one set a band.
 */
export function namesWithRoom(
  pages: readonly Page[],
  bands: readonly BandHeights[],
  { height, gap }: Pick<Space, 'height' | 'gap'>,
): ReadonlySet<number>[] {
  const names = bands.map(() => new Set<number>())
  const growth = (band: number, row: number) => (bands[band]!.named?.[row] ?? 0) - bands[band]!.rows[row]!
  for (const column of pages.flat()) {
    const rows = column.flatMap(({ band, from, to }) => Array.from({ length: to - from }, (_, i) => ({ band, row: from + i })))
    let left = height - heightOf(column, bands, gap)
    for (const free of [true, false])
      for (const { band, row } of rows) {
        const more = growth(band, row)
        if (more < SAME !== free || more > left) continue
        names[band]!.add(row)
        left -= more
      }
  }
  return names
}

function heightOf(column: readonly Piece[], bands: readonly BandHeights[], gap: number): number {
  const pieces = column.map(({ band, from, to }) => {
    const { head, again = head, rows } = bands[band]!
    return rows.slice(from, to).reduce((sum, row) => sum + row, from === 0 ? head : again)
  })
  return pieces.reduce((sum, piece) => sum + piece, gap * (column.length - 1))
}
