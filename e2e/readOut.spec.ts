import type { Page } from '@playwright/test'
import { computeRide } from '#engine/computeRide.ts'
import { readCurves } from '#engine/readOut/readCurves.ts'
import { demoRide } from '#tests/support/demoRides.ts'
import { barriers } from './support/barriers.ts'
import { openRidewright } from './support/openRidewright.ts'
import { expect, test } from './support/test.ts'

const report = computeRide(demoRide('spark'))
const box = (page: Page) => page.locator('.read-out-box')
const slider = (page: Page) => page.getByRole('slider', { name: 'read the chart' })

async function openSpark(page: Page): Promise<void> {
  await openRidewright(page)
  await page.getByRole('button', { name: /^Twenty-Minute Spark/ }).click()
  await expect(page.locator('[data-curve="intent"]')).toBeAttached()
  await expect(slider(page)).toBeAttached()
}

/** What the box says of planned effort at the second in its first line. */
async function saysWhatIsSo(page: Page): Promise<void> {
  const place = (await box(page).locator('.read-out-place').textContent())!
  const [minutes, seconds] = /^(\d+):(\d\d)/.exec(place)!.slice(1).map(Number)
  const at = minutes! * 60 + seconds!
  const near = [at, at + 0.5, at + 0.99].map((moment) =>
    readCurves(
      report,
      report.riders.find(({ reference }) => reference),
      moment,
    ),
  )
  const planned = Number((await box(page).locator('div', { hasText: 'planned effort' }).locator('dd').textContent())!.replace('½', '.5'))
  const range = near.map(({ planned: level }) => level!)
  expect(planned).toBeGreaterThanOrEqual(Math.min(...range) - 0.26)
  expect(planned).toBeLessThanOrEqual(Math.max(...range) + 0.26)
  await expect(box(page)).toContainText(/estimated effort.*about .* to .*cadence.*rpm.*resistance.*heart rate.*bpm.*left in the legs.*%/)
}

test('the mouse reads the chart where it points, and leaves it as it was', async ({ page }) => {
  await openSpark(page)
  const chart = (await page.locator('.chart-place').boundingBox())!
  for (const share of [0.2, 0.5, 0.8]) {
    await page.mouse.move(200 + share * 700, chart.y + 60)
    await expect(box(page)).toBeVisible()
    await saysWhatIsSo(page)
    const shown = (await box(page).boundingBox())!
    const scroller = (await page.locator('.stage-scroller').boundingBox())!
    expect(shown.x).toBeGreaterThanOrEqual(scroller.x - 1)
    expect(shown.x + shown.width).toBeLessThanOrEqual(scroller.x + scroller.width + 1)
  }
  await page.mouse.move(400, chart.y + 600)
  await expect(box(page)).toHaveCount(0)
})

test('the keys read it an eight and a block at a time, as text for who hears the page', async ({ page }) => {
  await openSpark(page)
  await slider(page).focus()
  await page.keyboard.press('Home')
  await expect(slider(page)).toHaveAttribute('aria-valuenow', '0')
  const starts = report.blocks.filter(({ from, to }) => to > from).map(({ from }) => from)
  for (const from of starts.slice(0, 3).filter((at) => at > 0)) {
    await page.keyboard.press('PageUp')
    await expect(slider(page)).toHaveAttribute('aria-valuenow', `${Math.round(from)}`)
  }
  await expect(slider(page)).toHaveAttribute(
    'aria-valuetext',
    /, eight \d+ of \d+\. .*planned effort \d.*, cadence \d+ rpm, .*Estimates for the regular rider\./,
  )
  const before = Number(await slider(page).getAttribute('aria-valuenow'))
  await page.keyboard.press('ArrowRight')
  await expect.poll(async () => Number(await slider(page).getAttribute('aria-valuenow'))).toBeGreaterThan(before)
  await page.keyboard.press('ArrowLeft')
  await expect(slider(page)).toHaveAttribute('aria-valuenow', `${before}`)
  await page.keyboard.press('End')
  await expect(box(page)).toBeInViewport()
  expect(await barriers(page)).toEqual([])
  await page.keyboard.press('Escape')
  await expect(box(page)).toHaveCount(0)
})

test.describe('by finger', () => {
  test.use({ hasTouch: true, viewport: { width: 390, height: 844 } })
  test('a touch reads the chart, and one elsewhere puts it away', async ({ page }) => {
    await openSpark(page)
    await page.locator('.chart-place').scrollIntoViewIfNeeded()
    const chart = (await page.locator('.chart-place').boundingBox())!
    await page.touchscreen.tap(200, chart.y + 80)
    await expect(box(page)).toBeVisible()
    const shown = (await box(page).boundingBox())!
    expect(shown.x).toBeGreaterThanOrEqual(0)
    expect(shown.x + shown.width).toBeLessThanOrEqual(390)
    await page.screenshot({ path: test.info().outputPath('finger.png') })
    await page.touchscreen.tap(200, chart.y - 100)
    await expect(box(page)).toHaveCount(0)
  })
})
