import type { Page } from '@playwright/test'
import { barriers } from './support/barriers.ts'
import { openRidewright, ready } from './support/openRidewright.ts'
import { printToPdf } from './support/printToPdf.ts'
import { type PdfPage, readPdf, smallestCapital, textOf } from './support/readPdf.ts'
import { expect, test } from './support/test.ts'

/** Sixteen minutes of arc at half a metre: 2·500·tan(8′) mm. */
const LEAST_CAPITAL = 2.327
/** White edge of the sheet. */
const MARGIN = 8
/** Glyphs may hang over their box by a hair. */
const HAIR = 0.5
const MM_PER_PX = 25.4 / 96

const PAPERS = { A4: [210, 297], 'US Letter': [215.9, 279.4] } as const
const RIDES = [
  {
    ride: 'Twenty-Minute Spark',
    bands: 6,
    rows: 42,
    said: ['19:36 long, 0:24 left', '158 bpm, 79 rpm on the beat', 'Three quarters on, up light, twenty-four seconds.'],
  },
  { ride: 'Ridge and Return', bands: 13, rows: 67, said: ['43:43 long, 1:17 left', 'Windowsill Harbour', 'Up tall, light hands.'] },
] as const

for (const { ride, bands, rows, said } of RIDES) {
  for (const paper of ['A4', 'US Letter'] as const) {
    test(`${ride} prints on one page of ${paper}, readable from half a metre`, async ({ page }) => {
      await openSheet(page, ride, paper)
      await expect(page.locator('.sheet-pages .sheet-band')).toHaveCount(bands)
      await expect(page.locator('.sheet-pages .sheet-row')).toHaveCount(rows)
      const previewed = await rideClocks(page)

      const pages = await readPdf(await printToPdf(page))
      expect(pages).toHaveLength(1)
      const [sheet] = pages as [PdfPage]
      expect([sheet.width, sheet.height].sort((a, b) => a - b).map((side, i) => Math.abs(side - PAPERS[paper][i]!) < 0.4)).toEqual([
        true,
        true,
      ])
      expect(smallestCapital(sheet)).toBeGreaterThanOrEqual(LEAST_CAPITAL)
      expect(sheet.fonts.every((font) => font.startsWith('AtkinsonHyperlegibleNext'))).toBe(true)
      for (const words of [...said, 'Stop for dizziness', ride]) expect(textOf(sheet)).toContain(words)
      expectWithinMargins(sheet)
      expectPrintedWherePreviewed(sheet, previewed)
    })
  }
}

test('only the pages are printed, in ink, from a dark screen too', async ({ page }) => {
  await page.emulateMedia({ colorScheme: 'dark' })
  await openSheet(page, 'Twenty-Minute Spark', 'A4')
  await expect(page.locator('.sheet-page')).toHaveCSS('background-color', 'rgb(255, 255, 255)')
  await expect(page.locator('.sheet-pages')).toHaveCSS('color', 'rgb(0, 0, 0)')
  const pages = await readPdf(await printToPdf(page))
  const words = pages.map(textOf).join(' ')
  for (const chrome of ['share', 'song clock', 'US Letter', 'shortcuts', 'Readable from']) expect(words).not.toContain(chrome)
})

test('no song is split: each band stands whole in one column, on the screen as on paper', async ({ page }) => {
  await openSheet(page, 'Ridge and Return', 'A4')
  await expect(page.locator('.sheet-pages').getByText('(continued)')).toHaveCount(0)
  const over = await page
    .locator('.sheet-page')
    .evaluateAll((sheets) => sheets.map((sheet) => [sheet.scrollHeight - sheet.clientHeight, sheet.scrollWidth - sheet.clientWidth]))
  expect(over).toEqual([[0, 0]])
  const free = await page
    .locator('.sheet-columns')
    .evaluate((columns) =>
      [...columns.children].map(
        (column) =>
          columns.clientHeight -
          [...column.children].reduce(
            (end, part) => Math.max(end, part.getBoundingClientRect().bottom - columns.getBoundingClientRect().top),
            0,
          ),
      ),
    )
  expect(Math.min(...free)).toBeGreaterThanOrEqual(0)
})

test('a row says both clocks, eights, call, total and words; the song clock can run either way', async ({ page }) => {
  await openSheet(page, 'Twenty-Minute Spark', 'A4')
  const row = page.locator('.sheet-pages .sheet-row', { has: page.getByText('6:19', { exact: true }) })
  await expect(row).toContainText('3:39')
  await expect(row.locator('.sheet-total')).toHaveText('1½')
  await expect(row.locator('.sheet-call')).toHaveText('+¾')
  await expect(row.getByRole('img', { name: 'standing' })).toBeVisible()
  await page.getByText('time elapsed', { exact: true }).click()
  await expect(row).toContainText('0:12')
  await expect(page.locator('.sheet-legend').last()).toContainText('time elapsed since beat 1')
})

test('the paper is remembered, and the button prints', async ({ page }) => {
  await page.addInitScript(() => {
    window.print = () => document.body.setAttribute('data-printed', 'yes')
  })
  await openSheet(page, 'Twenty-Minute Spark', 'US Letter')
  await page.reload()
  await ready(page)
  await expect(page.getByRole('radio', { name: 'US Letter' })).toBeChecked()
  await page.getByRole('button', { name: 'print' }).click()
  await expect(page.locator('body')).toHaveAttribute('data-printed', 'yes')
})

test('the sheet has no barriers that axe finds, and the copy it is measured on takes no room', async ({ page }) => {
  test.slow() // axe looks at every mark of every row
  await openSheet(page, 'Twenty-Minute Spark', 'A4')
  expect(await barriers(page, ['.sheet-measure-frame', '.sheet-bar'])).toEqual([])
  const below = await page.evaluate(
    () => document.documentElement.scrollHeight - document.querySelector('.sheet-page')!.getBoundingClientRect().bottom - scrollY,
  )
  expect(below).toBeLessThan(100)
})

test('a ride of one block is not blown up until its line breaks', async ({ page }) => {
  await openRidewright(page)
  await page.getByRole('button', { name: 'start a blank ride' }).click()
  await page.getByRole('button', { name: 'standing climb', exact: true }).click()
  await page.getByRole('link', { name: 'print', exact: true }).click()
  for (const paper of ['A4', 'US Letter']) {
    await page.getByRole('group', { name: 'paper' }).getByText(paper, { exact: true }).click()
    const row = page.locator('.sheet-pages .sheet-row')
    await expect(row).toHaveCount(1)
    const middle = async (part: string) => {
      const { y, height } = (await row.locator(part).boundingBox())!
      return y + height / 2
    }
    const line = (await row.locator('.sheet-ride').boundingBox())!.height
    for (const part of ['.sheet-total', '.sheet-call'])
      expect(Math.abs((await middle(part)) - (await middle('.sheet-ride')))).toBeLessThan(line / 2)
  }
})

test('a ride without blocks says what is missing', async ({ page }) => {
  await openRidewright(page)
  await page.getByRole('button', { name: 'start a blank ride' }).click()
  await page.getByRole('link', { name: 'print', exact: true }).click()
  await expect(page.getByText('This ride is empty.')).toBeVisible()
})

async function openSheet(page: Page, ride: string, paper: keyof typeof PAPERS): Promise<void> {
  await openRidewright(page)
  await page.getByRole('button', { name: new RegExp(`^${ride}`) }).click()
  await page.getByRole('link', { name: 'print', exact: true }).click()
  await page.getByRole('group', { name: 'paper' }).getByText(paper, { exact: true }).click()
  await expect(page.locator('.sheet-page').first()).toBeVisible()
}

interface Placed {
  text: string
  left: number
  top: number
}

/** Ride clocks of the preview with their places on the page, in millimetres. */
async function rideClocks(page: Page): Promise<Placed[]> {
  return page.locator('.sheet-page').evaluate((sheet, mm) => {
    const box = sheet.getBoundingClientRect()
    const scale = box.width / (sheet as HTMLElement).offsetWidth
    return [...sheet.querySelectorAll('.sheet-row .sheet-ride')].map((clock) => {
      const range = document.createRange()
      range.selectNodeContents(clock)
      const place = range.getBoundingClientRect()
      return { text: clock.textContent!, left: ((place.left - box.left) / scale) * mm, top: ((place.top - box.top) / scale) * mm }
    })
  }, MM_PER_PX)
}

function expectWithinMargins({ texts, width, height }: PdfPage): void {
  const outside = texts.filter(
    ({ left, baseline, width: length }) =>
      left < MARGIN - HAIR || left + length > width - MARGIN + HAIR || baseline > height - MARGIN + HAIR || baseline < MARGIN,
  )
  expect(outside).toEqual([])
}

/**
 * Every ride clock stands on paper where the preview shows it, so every line breaks alike: its
 * baseline lies one fixed step below the top of its line. Numbers close together are one run in the file.
 */
function expectPrintedWherePreviewed(sheet: PdfPage, previewed: Placed[]): void {
  const steps = previewed.map(({ text, left, top }) => {
    const printed = sheet.texts.filter(
      (run) =>
        run.text.includes(text) && run.left < left + HAIR && run.left + run.width > left && run.baseline > top && run.baseline < top + 6,
    )
    expect(printed, `${text} at ${left.toFixed(1)}, ${top.toFixed(1)} mm`).toHaveLength(1)
    return printed[0]!.baseline - top
  })
  expect(Math.max(...steps) - Math.min(...steps)).toBeLessThan(HAIR)
}
