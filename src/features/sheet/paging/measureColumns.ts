/** Widths of columns of numbers as the style sheet reads them: "--sheet-ride": "2.74em". */
export type ColumnStyle = Record<`--sheet-${string}`, string>

/**
 * Makes every column of numbers as wide as its widest entry, its head included, and no wider:
 * measured in the font that is printed, in em, so that it holds at every size of type.
 *
 * @param host holds the whole sheet; cells of one column share the name in data-column
 * @returns the widths, which the host has from then on
 */
export function measureColumns(host: HTMLElement): ColumnStyle {
  const cells = [...host.querySelectorAll<HTMLElement>('[data-column]')]
  for (const name of new Set(cells.map(nameOf))) host.style.setProperty(name, 'max-content')
  const widths = new Map<ReturnType<typeof nameOf>, number>()
  for (const cell of cells) {
    const em = cell.getBoundingClientRect().width / Number.parseFloat(getComputedStyle(cell).fontSize)
    widths.set(nameOf(cell), Math.max(em, widths.get(nameOf(cell)) ?? 0))
  }
  const style = Object.fromEntries([...widths].map(([name, em]) => [name, `${(Math.ceil(em * 1000 + 1) / 1000).toFixed(3)}em`]))
  for (const [name, width] of Object.entries(style)) host.style.setProperty(name, width)
  return style
}

const nameOf = (cell: HTMLElement): `--sheet-${string}` => `--sheet-${cell.dataset.column}`
