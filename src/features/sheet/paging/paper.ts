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
export const MARGIN: Millimetres = 8
export const GUTTER: Millimetres = 5

/** How the columns lie on the paper, and whether words stay in a column of their own or run on under the numbers. */
export interface Layout {
  orientation: 'portrait' | 'landscape'
  columns: number
  words: 'column' | 'hang'
  /** How quickly a change is found again, against one line each on an upright page: as a factor of type size (our judgement). */
  ease: number
}

export const LAYOUTS: readonly Layout[] = [
  { orientation: 'portrait', columns: 1, words: 'column', ease: 1 },
  { orientation: 'landscape', columns: 2, words: 'column', ease: 0.95 },
  { orientation: 'portrait', columns: 2, words: 'hang', ease: 0.9 },
  { orientation: 'landscape', columns: 3, words: 'hang', ease: 0.85 },
  { orientation: 'portrait', columns: 3, words: 'hang', ease: 0.8 },
]

/** Size of the whole page. */
export function pageSize(paper: Paper, { orientation }: Layout): { width: Millimetres; height: Millimetres } {
  const { short, long } = SIZES[paper]
  return orientation === 'portrait' ? { width: short, height: long } : { width: long, height: short }
}

/** Size of what is printed on: the page without its margins. */
export function printArea(paper: Paper, layout: Layout): { width: Millimetres; height: Millimetres } {
  const { width, height } = pageSize(paper, layout)
  return { width: width - 2 * MARGIN, height: height - 2 * MARGIN }
}

/** Width of one column. */
export function columnWidth(paper: Paper, layout: Layout): Millimetres {
  return (printArea(paper, layout).width - (layout.columns - 1) * GUTTER) / layout.columns
}
