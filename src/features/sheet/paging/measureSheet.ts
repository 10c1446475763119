import { LEAST_CAP, PHONE_SHARE } from '#features/sheet/legibility.ts'
import { fontSizeFor } from '#units/capHeight.ts'
import type { Detail, Measured } from './fitSheet.ts'
import type { BandHeights } from './packBands.ts'
import { columnWidth, type Layout, type Millimetres, type Paper, PX_PER_MM, printArea } from './paper.ts'

/** Kept free in every column: heights are laid out in sixty-fourths of a pixel, and a printer may round them otherwise than a screen. */
const SAFETY: Millimetres = 0.4

/** Room for words beside the numbers that a line of them needs, in em: two or three words. */
const LEAST_WORDS = 8

/** Least capitals of anything on a page, however small it is meant; on a screen, which is shown smaller than it is laid out, by as much larger. */
const leastCap = ({ page }: Layout): Millimetres => (page === 'phone' ? LEAST_CAP / PHONE_SHARE : LEAST_CAP)

/**
 * Sets the size of everything on a sheet: type and the least of it, column, page, and which details show.
 * The same properties drive the measured copy, the preview and the print.
 */
export function sheetStyle(paper: Paper, layout: Layout, cap: Millimetres): Record<`--${string}`, string> {
  const { width, height } = printArea(paper, layout)
  return {
    '--sheet-type': `${fontSizeFor(cap)}mm`,
    '--sheet-least': `${fontSizeFor(leastCap(layout))}mm`,
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
  const part = (name: string) => {
    const element = host.querySelector(`[data-part="${name}"]`)
    return element ? heightOf(element) : 0
  }
  const bands = bandsOf(host)
  const column = printArea(paper, layout).height - part('header') - part('columnHead') - part('footer') - SAFETY
  const measured = { column, gap: part('gap'), squeezed: isSqueezed(host, layout) }
  if (detail !== 'words') return { ...measured, bands }
  host.dataset.named = 'all'
  const named = bandsOf(host)
  delete host.dataset.named
  return { ...measured, bands: bands.map((band, index) => ({ ...band, named: named[index]!.rows })) }
}

const heightOf = (element: Element): Millimetres => element.getBoundingClientRect().height / PX_PER_MM

function bandsOf(host: HTMLElement): BandHeights[] {
  const goingOn = host.querySelectorAll('[data-measured="again"] [data-part="band"]')
  return [...host.querySelectorAll('[data-measured="whole"] [data-part="band"]')].map((band, index) => {
    const rows = [...band.querySelectorAll('[data-part="row"]')].map(heightOf)
    return { head: heightOf(band) - rows.reduce((sum, row) => sum + row, 0), again: heightOf(goingOn[index]!), rows }
  })
}

/** Whether the numbers of any row leave no room for words beside them. */
function isSqueezed(host: HTMLElement, { words }: Layout): boolean {
  if (words === 'below') return false
  return [...host.querySelectorAll<HTMLElement>('[data-measured="whole"] .sheet-words')].some((place) => {
    const em = Number.parseFloat(getComputedStyle(place).fontSize)
    return place.getBoundingClientRect().width < LEAST_WORDS * em
  })
}
