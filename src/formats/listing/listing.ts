/** A ride as lines of words and numbers, for readers that know no layout. */
export interface Listing {
  title: string
  /** One short phrase each. */
  facts: string[]
  /** What the columns of a row are. */
  head: readonly string[]
  /** Columns of numbers, by index. */
  numbers: ReadonlySet<number>
  sections: ListingSection[]
  /** Below everything. */
  notes: string[]
}

interface ListingSection {
  title: string
  facts: string[]
  rows: string[][]
}
