import type { Page } from '@playwright/test'
import { barriers } from './support/barriers.ts'
import { tabTo } from './support/keyboard.ts'
import { openRidewright } from './support/openRidewright.ts'
import { printToPdf } from './support/printToPdf.ts'
import { type PdfPage, readPdf, smallestCapital, textOf } from './support/readPdf.ts'
import { expect, test } from './support/test.ts'

const PAPERS = { A4: [210, 297], 'US Letter': [215.9, 279.4] } as const
type Paper = keyof typeof PAPERS
const RIDES = { 'Twenty-Minute Spark': 6, 'Ridge and Return': 13 } as const
type RideName = keyof typeof RIDES

/** Least capitals in millimetres: 2·d·tan(a/2) of 22 minutes of arc at 0.7 m, and of 16 at half a metre. */
const LARGE = 2 * 700 * Math.tan((11 / 60) * (Math.PI / 180))
const NEAR = 2 * 500 * Math.tan((8 / 60) * (Math.PI / 180))
/** Glyphs may hang over their box by a hair, and sizes are rounded in the file. */
const HAIR = 0.5
const ROUNDING = 0.005

interface Kind {
  sheet: string
  capital: number
  /** White edge in millimetres. */
  margin: number
  pages: Record<RideName, number>
  /** On every page. */
  said: RegExp
}

const KINDS: readonly Kind[] = [
  {
    sheet: 'large type',
    capital: LARGE,
    margin: 8,
    pages: { 'Twenty-Minute Spark': 4, 'Ridge and Return': 5 },
    said: /\d of \d .*version [0-9a-f]{4}/,
  },
  { sheet: 'cards', capital: NEAR, margin: 6, pages: { 'Twenty-Minute Spark': 2, 'Ridge and Return': 4 }, said: /version [0-9a-f]{4}/ },
  {
    sheet: 'sub',
    capital: NEAR,
    margin: 8,
    pages: { 'Twenty-Minute Spark': 1, 'Ridge and Return': 1 },
    said: /for a sub: .*version [0-9a-f]{4}/,
  },
  {
    sheet: 'no music',
    capital: LARGE * 0.8,
    margin: 8,
    pages: { 'Twenty-Minute Spark': 1, 'Ridge and Return': 1 },
    said: /teach by the clock.*version [0-9a-f]{4}/,
  },
  {
    sheet: 'before class',
    capital: NEAR,
    margin: 8,
    pages: { 'Twenty-Minute Spark': 1, 'Ridge and Return': 1 },
    said: /Before class.*version [0-9a-f]{4}/,
  },
]

for (const { sheet, capital, margin, pages, said } of KINDS) {
  for (const ride of Object.keys(RIDES) as RideName[]) {
    for (const paper of Object.keys(PAPERS) as Paper[]) {
      test(`${sheet} of ${ride} on ${paper}: pages, sizes, edges, whole songs`, async ({ page }) => {
        await openSheet(page, ride, sheet, paper)
        await expectNothingClipped(page)
        await expect(page.locator('.sheet-pages').getByText('(continued)')).toHaveCount(0)
        const printed = await readPdf(await printToPdf(page))
        expect(printed).toHaveLength(pages[ride])
        for (const one of printed) {
          expectPaper(one, paper)
          expect(textOf(one)).toMatch(said)
          expect(smallestCapital(one)).toBeGreaterThanOrEqual(capital - ROUNDING)
          expect(one.fonts.every((font) => font.startsWith('AtkinsonHyperlegibleNext'))).toBe(true)
          expectWithin(one, margin)
        }
      })
    }
  }
}

test('the sub’s sheet names no song and counts nothing', async ({ page }) => {
  await openSheet(page, 'Ridge and Return', 'sub')
  const [printed] = await readPdf(await printToPdf(page))
  const text = textOf(printed!)
  for (const word of ['Windowsill Harbour', 'bpm', 'chorus', 'eights', 'beat 1']) expect(text).not.toContain(word)
  for (const words of ['the room:', 'must do:', 'must not:', 'off the bikes by 7:15', 'solid']) expect(text).toContain(words)
})

test('printed before it is laid out, a sheet says so and shows none of the screen', async ({ page }) => {
  await openRidewright(page)
  await page.getByRole('button', { name: /^Twenty-Minute Spark/ }).click()
  // Fonts that never come keep it waiting.
  await page.evaluate(() => Object.defineProperty(document.fonts, 'ready', { value: new Promise(() => {}) }))
  await page.getByRole('link', { name: 'print', exact: true }).click()
  await expect(page.getByText('Laying out the sheet…')).toBeVisible()
  const [only, ...others] = await readPdf(new Uint8Array(await page.pdf({ preferCSSPageSize: true })))
  expect(others).toHaveLength(0)
  expect(textOf(only!).trim()).toBe('Laying out the sheet… Print it once it shows.')
})

test('notes for the sub are written on the place, printed, and part of the ride', async ({ page }) => {
  await openSheet(page, 'Twenty-Minute Spark', 'sub')
  await page.getByText('notes for the sub').click()
  await page.getByLabel('what regulars expect').fill('A quiet last song.')
  await page.getByLabel('the room').click()
  await expect(page.locator('.sheet-pages')).toContainText('what regulars expect: A quiet last song.')
  await page.getByRole('button', { name: 'undo' }).click()
  await expect(page.locator('.sheet-pages')).not.toContainText('A quiet last song')
})

test('no music is at most ten lines', async ({ page }) => {
  await openSheet(page, 'Ridge and Return', 'no music')
  await expect(page.locator('.sheet-pages .sheet-row')).toHaveCount(10)
})

test('cards lie four on a page with marks to cut by, or one on a page of their size', async ({ page }) => {
  await openSheet(page, 'Twenty-Minute Spark', 'cards')
  await expect(page.locator('.sheet-cut')).toHaveCount(2)
  await expect(page.locator('.sheet-cut-marks')).toHaveCount(2)
  await expect(page.locator('.sheet-pages .sheet-page')).toHaveCount(6)
  await page.getByText('one per page', { exact: true }).click()
  await expect(page.locator('.sheet-cut')).toHaveCount(0)
  const printed = await readPdf(await printToPdf(page))
  expect(printed).toHaveLength(6)
  // A quarter of A4 is A6.
  for (const { width, height } of printed) expect([Math.round(width), Math.round(height)]).toEqual([105, 149])
  await page.reload()
  await expect(page.getByRole('radio', { name: 'cards' })).toBeChecked()
  await expect(page.getByRole('radio', { name: 'one per page' })).toBeChecked()
})

test('a sheet for one leader has their blocks as large as promised and the other’s smaller', async ({ page }) => {
  await openSheet(page, 'Twenty-Minute Spark', 'large type')
  const madeFor = page.getByRole('group', { name: 'made for' })
  await madeFor.getByText('Remy Castellane-Voss', { exact: true }).click()
  await expect(page.locator('.sheet-pages .sheet-row[data-mine="true"]')).toHaveCount(7)
  await expect(page.locator('.sheet-pages .sheet-row[data-mine="false"]')).toHaveCount(35)
  await expect(page.locator('.sheet-pages .sheet-band-facts').first()).toHaveText(/^OT leads and speaks · /)
  await madeFor.getByText('Odalys Thornquill', { exact: true }).click()
  await expect(page.locator('.sheet-pages .sheet-row[data-mine="true"]')).toHaveCount(35)
  await expect(page.locator('.sheet-pages .sheet-band-facts').first()).toHaveText(/^you lead and speak · /)
  const texts = (await readPdf(await printToPdf(page))).flatMap((one) => one.texts)
  const capitals = (name: string) => texts.filter(({ text }) => text.includes(name)).map(({ capitalHeight }) => capitalHeight)
  expect(Math.min(...capitals('standing run').map(Number))).toBeGreaterThanOrEqual(LARGE - ROUNDING)
  expect(Math.max(...capitals('push 1').map(Number))).toBeLessThan(LARGE - ROUNDING)
})

test('abbreviations are printed, explained, and kept over a reload', async ({ page }) => {
  await openSheet(page, 'Twenty-Minute Spark', 'compact')
  await page.getByText('your abbreviations').click()
  await page.getByLabel('abbreviations, one per line').fill('TB = travel-back')
  await page.getByLabel('abbreviations, one per line').blur()
  await expect(page.locator('.sheet-pages .sheet-notes', { hasText: 'TB on 4' })).toHaveCount(2)
  await expect(page.locator('.sheet-pages .sheet-legend')).toContainText('TB travel-back')
  await page.reload()
  await expect(page.locator('.sheet-pages .sheet-legend')).toContainText('TB travel-back')
})

test('the telephone’s screens are tapped through on 360 pixels, without anything to scroll', async ({ browser }) => {
  const context = await browser.newContext({ viewport: { width: 360, height: 640 }, hasTouch: true })
  const page = await context.newPage()
  await openSheet(page, 'Twenty-Minute Spark', 'phone', null)
  await expectNothingClipped(page)
  await page.getByRole('button', { name: 'show on this screen' }).tap()
  const scan = page.locator('.sheet-scan')
  const status = scan.getByRole('status')
  await expect(status).toHaveText(/^1 of \d+$/)
  await scan.getByRole('button', { name: 'next screen', exact: true }).tap()
  await expect(status).toHaveText(/^2 of/)
  await expect(scan.locator('.sheet-page')).toHaveCount(1)
  await scan.getByRole('button', { name: 'previous screen', exact: true }).tap()
  await expect(status).toHaveText(/^1 of/)
  expect(
    await scan.evaluate((element) => [element.scrollHeight - element.clientHeight, element.scrollWidth - element.clientWidth]),
  ).toEqual([0, 0])
  // 22 minutes of arc at half a metre on a display of 66 mm by 360 pixels: 3.2 mm, 17.4 pixels.
  const capital = await scan
    .locator('.sheet-words')
    .first()
    .evaluate((element) => Number.parseFloat(getComputedStyle(element).fontSize) * 0.668)
  const scale = await scan
    .locator('.sheet-page')
    .evaluate((element) => element.getBoundingClientRect().width / (element as HTMLElement).offsetWidth)
  expect(capital * scale).toBeGreaterThanOrEqual(17)
  await page.keyboard.press('Escape')
  await expect(scan).toHaveCount(0)
  await context.close()
})

test('the screens answer a page-turner’s keys', async ({ page }) => {
  await openSheet(page, 'Twenty-Minute Spark', 'phone', null)
  await page.getByRole('button', { name: 'show on this screen' }).click()
  const status = page.locator('.sheet-scan').getByRole('status')
  for (const [key, screen] of [
    ['PageDown', 2],
    ['ArrowRight', 3],
    [' ', 4],
    ['PageUp', 3],
    ['ArrowLeft', 2],
  ] as const) {
    await page.keyboard.press(key)
    await expect(status).toHaveText(new RegExp(`^${screen} of`))
  }
})

test('the checklist is ticked with the keyboard alone, and over a reload', async ({ page }) => {
  await openSheet(page, 'Twenty-Minute Spark', 'before class')
  await tabTo(page, page.getByLabel('shuffle and repeat off'))
  await page.keyboard.press('Space')
  await expect(page.getByText('1 of 16 done')).toBeVisible()
  await page.reload()
  await expect(page.getByLabel('shuffle and repeat off')).toBeChecked()
  await expect(page.locator('.sheet-pages')).toContainText('12:16')
})

test('every sheet is chosen with the keyboard alone', async ({ page }) => {
  await openSheet(page, 'Twenty-Minute Spark', 'compact')
  await tabTo(page, page.getByRole('radio', { name: 'compact' }))
  for (const kind of ['large', 'cards', 'substitute', 'plain', 'phone', 'checklist']) {
    await page.keyboard.press('ArrowRight')
    await expect(page.locator('.sheet-pages').first()).toHaveAttribute('data-sheet', kind)
  }
})

test('exports are saved under their names, and the writers fetched only then', async ({ page }) => {
  const fetched: string[] = []
  page.on('request', (request) => fetched.push(request.url()))
  await openSheet(page, 'Twenty-Minute Spark', 'compact')
  expect(fetched.filter((url) => url.includes('exportFile'))).toEqual([])
  await page.getByText('export as a file').click()
  for (const [button, name, start] of [
    ['cues in ride time', 'twenty-minute-spark.cues.vtt', 'WEBVTT'],
    ['calendar entry', 'twenty-minute-spark.ics', 'BEGIN:VCALENDAR\r\n'],
    ['playlist M3U8', 'twenty-minute-spark.m3u8', '#EXTM3U\n'],
    ['cues in song time', 'twenty-minute-spark.song-cues.zip', 'PK'],
  ] as const) {
    const waiting = page.waitForEvent('download')
    await page.getByRole('button', { name: button, exact: true }).click()
    const download = await waiting
    expect(download.suggestedFilename()).toBe(name)
    const chunks: Buffer[] = []
    for await (const chunk of await download.createReadStream()) chunks.push(chunk as Buffer)
    expect(Buffer.concat(chunks).toString('latin1').startsWith(start)).toBe(true)
  }
})

for (const sheet of ['large type', 'cards', 'sub', 'no music', 'phone', 'before class']) {
  test(`${sheet} has no barriers that axe finds`, async ({ page }) => {
    test.slow() // axe looks at every mark of every row
    await openSheet(page, 'Twenty-Minute Spark', sheet, sheet === 'phone' ? null : 'A4')
    expect(await barriers(page, ['.sheet-measure-frame', '.sheet-bar'])).toEqual([])
  })
}

async function openSheet(page: Page, ride: RideName, sheet: string, paper: Paper | null = 'A4'): Promise<void> {
  await openRidewright(page)
  await page.getByRole('button', { name: new RegExp(`^${ride}`) }).click()
  await page.getByRole('link', { name: 'print', exact: true }).click()
  await page.getByRole('group', { name: 'sheet', exact: true }).getByText(sheet, { exact: true }).click()
  if (paper) await page.getByRole('group', { name: 'paper' }).getByText(paper, { exact: true }).click()
  await expect(page.locator('.sheet-page').first()).toBeVisible()
}

/** No page holds more than it shows, and nothing in it reaches into its foot. */
async function expectNothingClipped(page: Page): Promise<void> {
  const over = await page.locator('.sheet-pages .sheet-page').evaluateAll((pages) =>
    pages.flatMap((sheet) => {
      const columns = sheet.querySelector('.sheet-columns')!
      const floor = columns.getBoundingClientRect().bottom
      const low = [...columns.querySelectorAll('.sheet-column > *')].map((part) => part.getBoundingClientRect().bottom)
      return [
        sheet.scrollHeight - sheet.clientHeight,
        sheet.scrollWidth - sheet.clientWidth,
        Math.max(0, Math.round(Math.max(...low) - floor)),
      ]
    }),
  )
  expect(over.filter((pixels) => pixels !== 0)).toEqual([])
}

function expectPaper({ width, height }: PdfPage, paper: Paper): void {
  for (const [i, side] of [width, height].sort((a, b) => a - b).entries()) expect(Math.abs(side - PAPERS[paper][i]!)).toBeLessThan(0.4)
}

function expectWithin({ texts, width, height }: PdfPage, margin: number): void {
  const outside = texts.filter(
    ({ left, baseline, width: length }) =>
      left < margin - HAIR || left + length > width - margin + HAIR || baseline > height - margin + HAIR || baseline < margin,
  )
  expect(outside).toEqual([])
}
