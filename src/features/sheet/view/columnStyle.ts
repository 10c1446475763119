import type { ColumnWidths } from '#features/sheet/contents/contents.ts'

/** Widths of the columns of numbers as the style sheet reads them. */
export const columnStyle = (widths: ColumnWidths): Record<`--${string}`, string> =>
  Object.fromEntries(Object.entries(widths).map(([column, em]) => [`--sheet-${column}`, `${em.toFixed(3)}em`]))
