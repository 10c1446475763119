import { readFile } from 'node:fs/promises'
import { createRequire } from 'node:module'
import { printToPdf } from './support/printToPdf.ts'
import { readPdf, smallestCapital, textOf } from './support/readPdf.ts'
import { expect, test } from './support/test.ts'

const FONT = createRequire(import.meta.url).resolve(
  '@fontsource-variable/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-wght-normal.woff2',
)
/** Capital height the font states of itself, in its 1000 units an em (OS/2 table, sCapHeight). */
const CAPITAL_SHARE = 0.668

test.describe('measuring a printed page', () => {
  test.beforeEach(async ({ page }) => {
    const font = (await readFile(FONT)).toString('base64')
    await page.setContent(`<style>
      @font-face { font-family: Own; font-weight: 200 800; src: url(data:font/woff2;base64,${font}) }
      @page { size: A4; margin: 10mm }
      * { margin: 0; font-family: Own }
    </style>
    <p style="font-size: 5mm">HEAVY HILL</p>
    <p style="font-size: 4mm; font-weight: 700; break-after: page">quiet words</p>
    <p style="font-size: 6mm">Xylem</p>`)
  })

  test('finds the pages, their size and their words', async ({ page }) => {
    const pages = await readPdf(await printToPdf(page))
    expect(pages.map(textOf)).toEqual(['HEAVY HILL quiet words', 'Xylem'])
    for (const { width, height } of pages) {
      expect(width).toBeCloseTo(210, 0)
      expect(height).toBeCloseTo(297, 0)
    }
  })

  test('measures the capitals as drawn, lower-case text by the capitals it would have', async ({ page }) => {
    const [first, second] = await readPdf(await printToPdf(page))
    expect(first!.texts[0]!.capitalHeight).toBeCloseTo(5 * CAPITAL_SHARE, 1)
    expect(smallestCapital(first!)).toBeCloseTo(4 * CAPITAL_SHARE, 1)
    expect(smallestCapital(second!)).toBeCloseTo(6 * CAPITAL_SHARE, 1)
    expect(first!.texts[0]!.left).toBeCloseTo(10, 0)
  })

  test('sees the whole page shrink when one element is wider than the paper', async ({ page }) => {
    await page.evaluate(() => document.body.insertAdjacentHTML('beforeend', '<div style="width: 380mm; height: 1mm">wide</div>'))
    const [first] = await readPdf(await printToPdf(page))
    expect(smallestCapital(first!)).toBeLessThan(0.8 * 4 * CAPITAL_SHARE)
  })

  test('refuses to measure text in a font that is not ours', async ({ page }) => {
    await page.evaluate(() => document.body.insertAdjacentHTML('beforeend', '<p style="font-family: serif">Strange</p>'))
    const [, second] = await readPdf(await printToPdf(page))
    expect(() => smallestCapital(second!)).toThrow('“Strange” is printed in')
  })
})
