import type { Page } from '@playwright/test'
import type { Ride } from '#plan/model.ts'
import { demoRide } from '#tests/support/demoRides.ts'
import { longRide, oneBlockRide, rightToLeftRide, totalsRide } from '#tests/support/sheetRides.ts'
import { smallRide } from '#tests/support/smallRide.ts'
import { openRide } from './support/openRide.ts'
import { printToPdf } from './support/printToPdf.ts'
import { readInk } from './support/readInk.ts'
import { readPdf, smallestCapital, textOf } from './support/readPdf.ts'
import { expect, test } from './support/test.ts'

/** Sixteen minutes of arc at half a metre: 2·500·tan(8′) mm. */
const LEAST_CAPITAL = 2.327
const ROUNDING = 0.005
const SHEETS = ['compact', 'large type', 'cards', 'sub', 'no music', 'before class'] as const
type Sheet = (typeof SHEETS)[number] | 'phone'
/** What a sheet is called on its pages, where the button says otherwise. */
const KIND: Partial<Record<Sheet, string>> = { 'large type': 'large', sub: 'substitute', 'no music': 'plain', 'before class': 'checklist' }

for (const [name, ride] of [
  ['Twenty-Minute Spark', demoRide('spark')],
  ['Ridge and Return', demoRide('ridge')],
  ['totals of every kind', totalsRide()],
] as const) {
  for (const sheet of ['compact', 'large type', 'cards'] as const) {
    test(`no rule runs through a total or the body of a word: ${sheet} of ${name}`, async ({ page }) => {
      await openSheet(page, ride, sheet)
      const pages = await readInk(await printToPdf(page))
      const crossed = pages.flatMap(({ glyphs, rules }) =>
        glyphs.filter((glyph) =>
          rules.some(
            (rule) =>
              glyph.right > rule.left &&
              glyph.left < rule.right &&
              glyph.top < rule.bottom &&
              // The tails of letters may touch the line below them.
              rule.top < glyph.bottom - 0.25 * (glyph.bottom - glyph.top),
          ),
        ),
      )
      expect(pages[0]!.rules.length).toBeGreaterThan(5)
      expect(crossed).toEqual([])
    })

    test(`numbers keep to their columns and words to theirs: ${sheet} of ${name}`, async ({ page }) => {
      await openSheet(page, ride, sheet)
      expect(await crowdedCells(page)).toEqual([])
      const starts = await wordStarts(page)
      expect(starts.filter(({ lines }) => lines.length > 1).length).toBeGreaterThan(0)
      for (const { text, lines } of starts) for (const left of lines) expect(Math.abs(left - lines[0]!), text).toBeLessThan(0.5)
    })
  }
}

for (const sheet of ['compact', 'large type'] as const)
  test(`every row that has room for its block’s name has it: ${sheet}`, async ({ page }) => {
    await openSheet(page, demoRide('ridge'), sheet)
    const rows = page.locator('.sheet-pages .sheet-row')
    const names = await rows.locator('.sheet-name').evaluateAll((all) => all.map((one) => one.getClientRects().length > 0))
    expect(names.filter(Boolean).length).toBeGreaterThan(names.length / 2)
    // What has no name would take a line more with it, and the page has no such line.
    const room = await rows.evaluateAll((all) => {
      const freeIn = (column: Element) => {
        const { bottom } = column.parentElement!.getBoundingClientRect()
        return bottom - Math.max(...[...column.children].map((part) => part.getBoundingClientRect().bottom))
      }
      return all.flatMap((row) => {
        if ((row as HTMLElement).dataset.named === 'true' || row.querySelector('.sheet-name')!.getClientRects().length > 0) return []
        const before = row.getBoundingClientRect().height
        const free = freeIn(row.closest('.sheet-column')!)
        ;(row as HTMLElement).dataset.named = 'true'
        const more = row.getBoundingClientRect().height - before
        ;(row as HTMLElement).dataset.named = 'false'
        return [{ more, free }]
      })
    })
    // Half a millimetre of every column is kept free for printers.
    for (const { more, free } of room) expect(more).toBeGreaterThan(Math.max(0.1, free - 2))
  })

test('a total too long for its column stands on two lines of it, clear of the calls', async ({ page }) => {
  await openSheet(page, totalsRide(), 'compact')
  for (const sheet of ['compact', 'large type', 'cards'] as const) {
    await chooseSheet(page, sheet)
    const total = page.locator('.sheet-pages .sheet-total', { hasText: '6¾ or less' })
    await expect(page.locator('.sheet-pages .sheet-total', { hasText: '12¾' })).toHaveCount(1)
    await expect(page.locator('.sheet-pages .sheet-total', { hasText: '4¼–5¾' }).first()).toBeVisible()
    expect(await total.evaluate((cell) => cell.scrollWidth - cell.clientWidth)).toBe(0)
  }
})

test('count-ins are printed after the words they count in', async ({ page }) => {
  await openSheet(page, totalsRide(), 'compact')
  for (const sheet of ['compact', 'large type', 'cards'] as const) {
    await chooseSheet(page, sheet)
    const text = (await readPdf(await printToPdf(page))).map(textOf).join(' ')
    for (const words of ['Find base. Count in 4.', 'Stand up. Count in 8.']) expect(text).toContain(words)
  }
})

test('totals and efforts are written in fractions on every sheet', async ({ page }) => {
  await openSheet(page, totalsRide(), 'compact')
  for (const sheet of SHEETS) {
    await chooseSheet(page, sheet)
    const text = (await readPdf(await printToPdf(page))).map(textOf).join(' ')
    expect(text).not.toMatch(/\d[.,](?:25|5|75)\b/)
  }
})

for (const ride of [longRide(), totalsRide()])
  test(`the sub’s numbers stay clear of the figures: ${ride.title}`, async ({ page }) => {
    await openSheet(page, ride, 'sub')
    expect(await crowdedCells(page)).toEqual([])
  })

test('rounds that differ say how on the sub’s sheet', async ({ page }) => {
  const waves = totalsRide().sections[1]!
  const blocks = waves.blocks.map((item) => ('parts' in item ? { ...item, perRound: { steps: 2 } } : item))
  await openSheet(page, { ...totalsRide(), sections: [{ ...waves, blocks }] }, 'sub')
  const text = (await readPdf(await printToPdf(page))).map(textOf).join(' ')
  for (const words of ['3 times:', '(3, 3½, 4)', '(1, 1½, 2)']) expect(text).toContain(words)
})

test('times of an hour and more stand on one line, beside what they are the times of', async ({ page }) => {
  await openSheet(page, longRide(), 'compact')
  for (const sheet of ['before class', 'no music', 'compact', 'large type'] as const) {
    await chooseSheet(page, sheet)
    await expect(page.locator('.sheet-pages')).toContainText('1:21:')
    expect(await crowdedCells(page)).toEqual([])
  }
})

test('no word is broken and no head squeezed on a ride of one timed block', async ({ page }) => {
  await openSheet(page, oneBlockRide(), 'compact')
  for (const sheet of SHEETS) {
    await chooseSheet(page, sheet)
    expect(await crowdedCells(page)).toEqual([])
    expect(await brokenWords(page)).toEqual([])
  }
})

test('a ride without blocks prints a sentence, and nothing of the page around it', async ({ page }) => {
  await openRide(page, { ...smallRide(), title: 'Nothing yet', sections: [] })
  await page.getByRole('link', { name: 'print', exact: true }).click()
  await expect(page.getByText('This ride is empty.')).toBeVisible()
  const printed = await readPdf(await printToPdf(page))
  expect(printed.map(textOf)).toEqual(['Nothing yet This ride is empty. Add a song, drag blocks onto it, then print the sheet here.'])
})

test('whoever leads and the welcome are on every sheet', async ({ page }) => {
  await openSheet(page, totalsRide(), 'compact')
  for (const sheet of SHEETS) {
    await chooseSheet(page, sheet)
    const text = (await readPdf(await printToPdf(page))).map(textOf).join(' ')
    expect(text).toContain('Odalys Thornquill')
    expect(text).toContain('welcome and bike setup, 2')
  }
})

test('names in other directions leave our words and numbers where they are', async ({ page }) => {
  await openSheet(page, rightToLeftRide(), 'large type')
  // "… 1 of 3": the number of the page stays with its words, right of the title.
  const head = page.locator('.sheet-header h2').first()
  const places = await head.evaluate((element) => {
    const place = (node: Node, from: number, to: number) => {
      const range = document.createRange()
      range.setStart(node, from)
      range.setEnd(node, to)
      return range.getBoundingClientRect().left
    }
    const count = [...element.childNodes].filter((node) => node.nodeType === Node.TEXT_NODE)
    return [element.querySelector('bdi')!.getBoundingClientRect().left, ...count.map((node) => place(node, 0, node.nodeValue!.length))]
  })
  expect(places).toEqual([...places].sort((a, b) => a - b))
  await chooseSheet(page, 'before class')
  // "song 3, … (6:07)": the time comes after the name.
  const item = page.locator('.sheet-pages .sheet-check', { hasText: '(6:07)' }).locator('span')
  const [name, whole] = await item.evaluate((element) => {
    const text = document.createTreeWalker(element, NodeFilter.SHOW_TEXT).nextNode()!
    const written = /(?<=\u2068)[^\u2069]+/u.exec(text.nodeValue!)!
    const range = document.createRange()
    range.setStart(text, written.index)
    range.setEnd(text, written.index + written[0].length)
    return [range.getBoundingClientRect().right, element.getBoundingClientRect().right]
  })
  expect(whole! - name!).toBeGreaterThan(20)
})

for (const [ride, sheet] of [
  [demoRide('spark'), 'compact'],
  [demoRide('spark'), 'cards'],
  [longRide(), 'no music'],
] as const)
  test(`the distance is that of the smallest capitals on paper: ${sheet} of ${ride.title}`, async ({ page }) => {
    await openSheet(page, ride, sheet)
    const smallest = Math.min(...(await readPdf(await printToPdf(page))).map(smallestCapital))
    const metres = smallest / (2 * 1000 * Math.tan((8 / 60) * (Math.PI / 180)))
    const said = await page.getByText(/Readable from about/).textContent()
    // In inches, as an American reads it: 1 in is 0.0254 m exactly.
    expect(Math.abs(Number(/about (\d+) in\b/.exec(said!)![1]) - metres / 0.0254)).toBeLessThanOrEqual(0.6)
  })

test('the other leader’s rows are never too small to read', async ({ page }) => {
  await openSheet(page, demoRide('spark'), 'compact')
  for (const sheet of ['compact', 'cards'] as const) {
    await chooseSheet(page, sheet)
    await page.getByRole('group', { name: 'made for' }).getByText('Remy Castellane-Voss', { exact: true }).click()
    await expect(page.locator('.sheet-pages .sheet-row[data-mine="false"]')).toHaveCount(35)
    for (const one of await readPdf(await printToPdf(page))) expect(smallestCapital(one)).toBeGreaterThanOrEqual(LEAST_CAPITAL - ROUNDING)
  }
})

for (const width of [1440, 1024, 390])
  test(`the preview shows whole pages at ${width} pixels`, async ({ page }) => {
    await page.setViewportSize({ width, height: 800 })
    await openSheet(page, demoRide('spark'), 'compact')
    for (const sheet of ['compact', 'cards', 'phone'] as const) {
      await chooseSheet(page, sheet)
      const frame = (await page.locator('.sheet-frame').boundingBox())!
      const seen = page.locator('.sheet-frame').locator('.sheet-cut, .sheet-pages > .sheet-page')
      for (const box of await seen.evaluateAll((all) => all.map((one) => one.getBoundingClientRect().toJSON() as DOMRect))) {
        expect(box.left).toBeGreaterThanOrEqual(frame.x - 0.5)
        expect(box.right).toBeLessThanOrEqual(frame.x + frame.width + 0.5)
      }
      // In the middle of the room there is.
      const box = (await seen.first().boundingBox())!
      expect(Math.abs(box.x + box.width / 2 - (frame.x + frame.width / 2))).toBeLessThan(2)
    }
  })

async function openSheet(page: Page, ride: Ride, sheet: Sheet): Promise<void> {
  await openRide(page, ride)
  await page.getByRole('link', { name: 'print', exact: true }).click()
  await chooseSheet(page, sheet)
}

async function chooseSheet(page: Page, sheet: Sheet): Promise<void> {
  await page.getByRole('group', { name: 'sheet', exact: true }).getByText(sheet, { exact: true }).click()
  if (sheet !== 'phone') await page.getByRole('group', { name: 'paper' }).getByText('US Letter', { exact: true }).click()
  await expect(page.locator(`.sheet-pages[data-sheet="${KIND[sheet] ?? sheet}"] .sheet-page`).first()).toBeVisible()
}

/** Cells of numbers whose text reaches out of them, or out of the page's column. */
const crowdedCells = (page: Page): Promise<string[]> =>
  page.locator('.sheet-pages [data-column]').evaluateAll((cells) =>
    cells.flatMap((cell) => {
      const range = document.createRange()
      range.selectNodeContents(cell)
      const [text, own] = [range.getBoundingClientRect(), cell.getBoundingClientRect()]
      if (text.width === 0) return []
      const inside = cell.closest('.sheet-column')!.getBoundingClientRect()
      const fits = text.left > own.left - 0.6 && text.right < own.right + 0.6 && own.right < inside.right + 0.6
      const lines = cell.matches('.sheet-total, .sheet-plain-time') || range.getClientRects().length === 1
      return fits && lines ? [] : [`${cell.getAttribute('data-column')}: ${cell.textContent}`]
    }),
  )

/** Where the lines of a row's words begin, in CSS pixels. */
const wordStarts = (page: Page): Promise<{ text: string; lines: number[] }[]> =>
  page.locator('.sheet-pages .sheet-words').evaluateAll((all) =>
    all.map((words) => {
      const range = document.createRange()
      range.selectNodeContents(words)
      const lines = new Map<number, number>()
      for (const { left, bottom, width } of range.getClientRects()) {
        if (width === 0) continue
        const line = [...lines.keys()].find((known) => Math.abs(known - bottom) < 6) ?? bottom
        lines.set(line, Math.min(left, lines.get(line) ?? Number.POSITIVE_INFINITY))
      }
      // A mark before the first word has room around it.
      const starts = [...lines.values()]
      return { text: words.textContent!, lines: words.firstElementChild?.matches('.sheet-name, .sheet-notes') ? starts : starts.slice(1) }
    }),
  )

/** Words that stand on more than one line. */
const brokenWords = (page: Page): Promise<string[]> =>
  page.locator('.sheet-pages').evaluate((pages) => {
    const texts = document.createTreeWalker(pages, NodeFilter.SHOW_TEXT)
    const broken: string[] = []
    while (texts.nextNode()) {
      const node = texts.currentNode
      if (node.parentElement!.closest('style')) continue
      for (const { 0: word, index } of node.nodeValue!.matchAll(/[\p{L}\d]+/gu)) {
        const range = document.createRange()
        range.setStart(node, index)
        range.setEnd(node, index + word.length)
        if (new Set([...range.getClientRects()].map(({ top }) => Math.round(top))).size > 1) broken.push(word)
      }
    }
    return broken
  })
