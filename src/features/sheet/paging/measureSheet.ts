import { fontSizeFor } from '#units/capHeight.ts'
import type { Detail, Measured } from './fitSheet.ts'
import { columnWidth, type Layout, type Millimetres, type Paper, PX_PER_MM, printArea } from './paper.ts'

/** Kept free in every column: heights are laid out in sixty-fourths of a pixel, and a printer may round them otherwise than a screen. */
const SAFETY: Millimetres = 0.4

/**
 * Sets the size of everything on a sheet: type, column, page, and which details show.
 * The same properties drive the measured copy, the preview and the print.
 */
export function sheetStyle(paper: Paper, layout: Layout, cap: Millimetres): Record<`--${string}`, string> {
  const { width, height } = printArea(paper, layout)
  return {
    '--sheet-type': `${fontSizeFor(cap)}mm`,
    '--sheet-column': `${columnWidth(paper, layout)}mm`,
    '--sheet-width': `${width}mm`,
    '--sheet-height': `${height}mm`,
  }
}

/**
 * Heights of a sheet as the browser lays it out.
 *
 * @param host holds one header, one footer, every band in one column and perhaps a column head,
 *   marked by data-part, with rows marked data-part="row"; each band once whole and once as the mere
 *   head it has where it goes on, told apart by data-measured
 */
export function measureSheet(host: HTMLElement, paper: Paper, layout: Layout, detail: Detail, cap: Millimetres): Measured {
  for (const [name, value] of Object.entries(sheetStyle(paper, layout, cap))) host.style.setProperty(name, value)
  host.dataset.detail = detail
  host.dataset.words = layout.words
  const height = (element: Element) => element.getBoundingClientRect().height / PX_PER_MM
  const part = (name: string) => {
    const element = host.querySelector(`[data-part="${name}"]`)
    return element ? height(element) : 0
  }
  const goingOn = host.querySelectorAll('[data-measured="again"] [data-part="band"]')
  const bands = [...host.querySelectorAll('[data-measured="whole"] [data-part="band"]')].map((band, index) => {
    const rows = [...band.querySelectorAll('[data-part="row"]')].map(height)
    return { head: height(band) - rows.reduce((sum, row) => sum + row, 0), again: height(goingOn[index]!), rows }
  })
  const column = printArea(paper, layout).height - part('header') - part('columnHead') - part('footer') - SAFETY
  return { column, gap: part('gap'), bands }
}
