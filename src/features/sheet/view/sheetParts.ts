import type { ReactNode } from 'react'

/** What stands on the pages; each part marked by data-part, as it is measured. */
export interface SheetParts {
  /** Another name, another look: data-sheet of everything on it. */
  kind: string
  header: (page: number, pages: number) => ReactNode
  columnHead?: ReactNode
  bands: readonly SheetBand[]
  footer?: ReactNode
}

export interface SheetBand {
  id: string
  /** All of it, or its rows from (inclusive) to (exclusive); where names are short of room, those of the rows given. */
  view: (from?: number, to?: number, named?: ReadonlySet<number>) => ReactNode
}
