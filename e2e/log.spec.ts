import type { Page } from '@playwright/test'
import { barriers } from './support/barriers.ts'
import { tabTo } from './support/keyboard.ts'
import { openRidewright, ready } from './support/openRidewright.ts'
import { printToPdf } from './support/printToPdf.ts'
import { readPdf, textOf } from './support/readPdf.ts'
import { expect, test } from './support/test.ts'

test('a class is logged as it was taught, kept over a reload, and never in the ride’s link', async ({ page }) => {
  await openLog(page)
  await logOn(page, '2026-11-25', async () => {
    await page.getByLabel('actual start').fill('12:14')
    await page.getByLabel('head count').fill('17')
    await page.getByLabel('4 Quarter to Magnesium: how it went').selectOption('skipped')
    await page.getByLabel('1 Paper Comets over Harbour Nine: stars').selectOption('5')
    await page.getByLabel('private note').fill('The fan is broken.')
  })
  const entry = page.locator('.log-list li')
  await expect(entry).toContainText(/started 12:14\sPM, scheduled 12:10\sPM/)
  await expect(entry).toContainText('17 riders · 1 skipped')
  await page.reload()
  await expect(entry).toContainText('The fan is broken.')
  await page.getByRole('link', { name: 'share', exact: true }).click()
  await expect(page.getByRole('textbox', { name: 'link' })).not.toHaveValue('')
  await page.getByRole('link', { name: 'plan', exact: true }).click()
  await expect(page.getByText('Quarter to Magnesium').first()).toBeVisible()
})

test('the log is reached from the start without a ride, and its address can be kept', async ({ page }) => {
  await openRidewright(page)
  await page.getByRole('link', { name: 'log', exact: true }).click()
  await expect(page.getByText('Nothing yet.')).toBeVisible()
  await expect(page).toHaveURL(/#\/log$/)
  await page.reload()
  await expect(page.getByRole('heading', { name: 'log', exact: true })).toBeVisible()
  await page.getByRole('link', { name: 'my rides' }).click()
  await expect(page.getByRole('heading', { name: 'try a sample ride' })).toBeVisible()
})

test('a class led from the screen begins its entry: the late start is there already, after its end too', async ({ page }) => {
  await page.clock.install({ time: new Date('2026-11-25T12:13:00Z') })
  await openRidewright(page)
  await page.getByRole('button', { name: /^Twenty-Minute Spark/ }).click()
  await page.getByRole('link', { name: 'teach', exact: true }).click()
  await page.getByRole('button', { name: 'start: beat 1 now' }).click()
  await page.clock.fastForward(1_500_000)
  await page.clock.runFor(400)
  await page.getByRole('button', { name: 'end the class' }).click()
  await page.getByRole('button', { name: 'press again to end' }).click()
  await page.getByRole('button', { name: 'log this class' }).click()
  await expect(page.getByLabel('actual start')).toHaveValue(/^12:13\sPM$/)
  await expect(page.getByLabel('scheduled start')).toHaveValue(/^12:10\sPM$/)
  expect(await barriers(page)).toEqual([])

  // Not now; the next day it is still known how it was.
  await page.reload()
  await ready(page)
  await page.clock.setFixedTime(new Date('2026-11-26T08:00:00Z'))
  await page.getByRole('button', { name: /as taught/ }).click()
  await expect(page.getByLabel('actual start')).toHaveValue(/^12:13\sPM$/)
  await expect(page.getByLabel('day', { exact: true })).toHaveValue('2026-11-25')
  await page.getByRole('button', { name: 'save to log' }).click()
  await page.getByRole('button', { name: /as taught/ }).click()
  await expect(page.getByLabel('actual start')).toHaveValue(/^12:10\sPM$/)

  // The class is in the log; of the demo ride, which nobody changed, no copy is kept.
  await page.getByRole('link', { name: 'my rides' }).click()
  await expect(page.getByRole('heading', { name: 'try a sample ride' })).toBeVisible()
  await expect(page.locator('.start-ride')).toHaveCount(0)
})

test('what repeats, whom it tires, and the songs used as a file and on paper', async ({ page }) => {
  await openLog(page)
  for (const day of ['2026-11-11', '2026-11-18', '2026-11-24']) await logOn(page, day)
  await expect(page.getByText('0% new for anyone who took the last 2 classes.')).toBeVisible()
  await expect(page.locator('.log-songs li')).toHaveCount(6)
  await expect(page.getByText('1 class, load 101')).toBeVisible()

  const waiting = page.waitForEvent('download')
  await page.getByRole('button', { name: 'save as CSV' }).click()
  const download = await waiting
  expect(download.suggestedFilename()).toBe('songs-used-2026-11-01-to-2026-11-25.csv')

  const printed = await readPdf(await printToPdf(page))
  const text = printed.map(textOf).join(' ')
  expect(text).toContain('18 songs played from Nov 1, 2026 to Nov 25, 2026')
  expect(text).toContain('differs by country')
  for (const chrome of ['compare with recent classes', 'classes taught', 'share', 'save as CSV']) expect(text).not.toContain(chrome)
})

test('logged with the keyboard alone', async ({ page }) => {
  await openLog(page)
  await tabTo(page, page.getByRole('button', { name: /as taught/ }))
  await page.keyboard.press('Enter')
  await tabTo(page, page.getByLabel('head count'))
  await page.keyboard.type('12')
  await tabTo(page, page.getByLabel('2 Brickworks Elevator: stars'))
  await page.keyboard.type('4')
  await tabTo(page, page.getByRole('button', { name: 'save to log' }))
  await page.keyboard.press('Enter')
  await expect(page.locator('.log-list li')).toContainText('12 riders')
  await tabTo(page, page.getByRole('button', { name: /^delete/ }))
  await page.keyboard.press('Enter')
  await tabTo(page, page.getByRole('button', { name: 'restore', exact: true }))
  await page.keyboard.press('Enter')
  await expect(page.locator('.log-list li')).toContainText('12 riders')
})

for (const scheme of ['light', 'dark'] as const) {
  test(`no barriers that axe finds, ${scheme}, wide and narrow`, async ({ page }) => {
    test.slow()
    await page.emulateMedia({ colorScheme: scheme })
    await openLog(page)
    await logOn(page, '2026-11-24')
    await logOn(page, '2026-11-18')
    expect(await barriers(page)).toEqual([])
    await page.setViewportSize({ width: 390, height: 800 })
    expect(await barriers(page)).toEqual([])
    expect(await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)).toBe(0)
    await page.getByRole('button', { name: /as taught/ }).click()
    expect(await barriers(page)).toEqual([])
  })
}

async function openLog(page: Page): Promise<void> {
  await page.clock.setFixedTime(new Date('2026-11-25T19:30:00Z'))
  await openRidewright(page)
  await page.getByRole('button', { name: /^Twenty-Minute Spark/ }).click()
  await page.getByRole('link', { name: 'log', exact: true }).click()
  await expect(page.getByRole('button', { name: /as taught/ })).toBeVisible()
}

async function logOn(page: Page, day: string, change = async () => {}): Promise<void> {
  await page.getByRole('button', { name: /as taught/ }).click()
  await page.getByLabel('day', { exact: true }).fill(day)
  await change()
  await page.getByRole('button', { name: 'save to log' }).click()
  await expect(page.getByRole('button', { name: /as taught/ })).toBeVisible()
}
