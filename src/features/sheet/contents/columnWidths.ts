import type { ColumnWidths, Row } from './contents.ts'

/** Advance widths of the sheet's font in em, with tabular figures; letters by their mean. */
const ADVANCES: [RegExp, number][] = [
  [/\d/, 0.632],
  [/:/, 0.211],
  [/[+−]/, 0.607],
  [/–/, 0.504],
  [/[½¼¾⅓⅔⅛⅜⅝⅞⅙⅚]/, 0.87],
]
const LETTER = 0.5

/** Width of a short number or word in em; exact for clocks, near enough for the rest. */
const widthOf = (text: string): number =>
  [...text].reduce((sum, character) => sum + (ADVANCES.find(([kind]) => kind.test(character))?.[1] ?? LETTER), 0)

/** Each column of numbers as wide as its widest entry, its head included, so that none is wider than this ride needs. */
export function columnWidths(rows: readonly Row[], heads: { song: string; length: string }): ColumnWidths {
  const widest = (read: (row: Row) => string, head = '') => Math.max(...[head, ...rows.map(read)].map(widthOf))
  return {
    effort: widest((row) => row.level),
    ride: widest((row) => row.rideClock, 'ride'),
    song: widest((row) => row.songClock, heads.song),
    length: widest((row) => row.length, heads.length),
    call: widest((row) => row.call),
  }
}
