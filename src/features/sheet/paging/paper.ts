/** Lengths in millimetres. */
export type Millimetres = number

export const PAPERS = ['a4', 'letter'] as const
export type Paper = (typeof PAPERS)[number]

/** Upright sizes: ISO 216 and US Letter (8.5 × 11 in). */
const SIZES: Record<Paper, { short: Millimetres; long: Millimetres }> = {
  a4: { short: 210, long: 297 },
  letter: { short: 215.9, long: 279.4 },
}

/** What common printers leave white at the edge, and a little more. */
const MARGIN: Millimetres = 8
const GUTTER: Millimetres = 5

/** A telephone's screen in CSS pixels, without the browser's own bars. */
export const PHONE = { width: 360, height: 600 } as const

/** What a page is: a sheet of the paper, a quarter of one to be cut to a card, or the screen of a telephone. */
export type PageKind = 'sheet' | 'card' | 'phone'

/** How the columns lie on the page, and whether words stand in a column beside the numbers or on lines of their own below them. */
export interface Layout {
  page: PageKind
  orientation: 'portrait' | 'landscape'
  columns: number
  words: 'beside' | 'below'
  /** How quickly a change is found again, against one line each on an upright page: as a factor of type size (our judgement). */
  ease: number
}

export const LAYOUTS: readonly Layout[] = [
  { page: 'sheet', orientation: 'portrait', columns: 1, words: 'beside', ease: 1 },
  { page: 'sheet', orientation: 'landscape', columns: 2, words: 'beside', ease: 0.95 },
  { page: 'sheet', orientation: 'portrait', columns: 2, words: 'beside', ease: 0.9 },
  { page: 'sheet', orientation: 'landscape', columns: 3, words: 'beside', ease: 0.85 },
  { page: 'sheet', orientation: 'portrait', columns: 3, words: 'below', ease: 0.8 },
]

/** CSS pixels in a millimetre, by definition of both. */
export const PX_PER_MM = 96 / 25.4

/** White edge of a page; a card's is cut and a screen has its own. */
export const marginOf = ({ page }: Pick<Layout, 'page'>): Millimetres => ({ sheet: MARGIN, card: 6, phone: 3 })[page]

/** Size of the whole page. */
export function pageSize(
  paper: Paper,
  { page, orientation }: Pick<Layout, 'page' | 'orientation'>,
): { width: Millimetres; height: Millimetres } {
  const { short, long } = SIZES[paper]
  if (page === 'card') return { width: short / 2, height: long / 2 }
  if (page === 'phone') return { width: PHONE.width / PX_PER_MM, height: PHONE.height / PX_PER_MM }
  return orientation === 'portrait' ? { width: short, height: long } : { width: long, height: short }
}

/** Size of what is printed on: the page without its margins. */
export function printArea(paper: Paper, layout: Layout): { width: Millimetres; height: Millimetres } {
  const { width, height } = pageSize(paper, layout)
  const margin = marginOf(layout)
  return { width: width - 2 * margin, height: height - 2 * margin }
}

/** Width of one column. */
export function columnWidth(paper: Paper, layout: Layout): Millimetres {
  return (printArea(paper, layout).width - (layout.columns - 1) * GUTTER) / layout.columns
}
