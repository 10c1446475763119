import type { Page } from '@playwright/test'
import jsqr from 'jsqr'
import { barriers } from './support/barriers.ts'
import { openRidewright, ready } from './support/openRidewright.ts'
import { shownLink } from './support/shownLink.ts'
import { expect, test } from './support/test.ts'

const LEVELS = 'levels 1 to 24 (typical)'
const shownOn = (page: Page) => page.getByLabel('shown on')
const bar = (page: Page) => page.getByRole('region', { name: 'another bike' })
const saved = (page: Page) => page.getByText('saved', { exact: true })
const link = (page: Page) => page.getByRole('textbox', { name: 'link', exact: true })

async function openDemo(page: Page) {
  await openRidewright(page)
  await page.getByRole('button', { name: /^Twenty-Minute Spark/ }).click()
  await expect(page.getByText('sample, not saved yet')).toBeVisible()
}

test('a ride is read on the receiver’s bike in draft, sheet and lead, and stays the ride it was', async ({ page }) => {
  await openDemo(page)
  const climb = page.getByRole('option', { name: /^seated climb/ }).first()
  await expect(climb).toHaveAccessibleName(/turn|quarter|half/)
  await page.getByRole('link', { name: 'share', exact: true }).click()
  const before = await shownLink(page)

  await shownOn(page).selectOption({ label: LEVELS })
  await expect(bar(page)).toContainText('Shown on “levels 1 to 24”')
  await expect(link(page)).toHaveValue(before)

  await page.getByRole('link', { name: 'plan', exact: true }).click()
  await expect(climb).toHaveAccessibleName(/to about (\w|-)+, (light|solid|heavy) hill, resistance about \d+/)
  await climb.click()
  await expect(page.locator('.panel-total')).toContainText(/about \d+ levels, \w+ (hill|flat)/)
  await expect(page.locator('.panel-call')).toContainText(/W (more|less) by rounding|the same watts/)
  expect(await barriers(page)).toEqual([])

  await page.getByRole('link', { name: 'print', exact: true }).click()
  await expect(page.getByText('resistance about, on levels 1 to 24').filter({ visible: true }).first()).toBeVisible()
  await expect(page.getByText(/~\d+/).filter({ visible: true }).first()).toBeVisible()

  // It belongs to who looks: the next visit reads on the same bike, and one press takes it back.
  await page.reload()
  await ready(page)
  await expect(bar(page)).toBeVisible()
  await page.getByRole('button', { name: 'original bike' }).click()
  await expect(bar(page)).toHaveCount(0)
  await page.getByRole('link', { name: 'plan', exact: true }).click()
  await expect(climb).toHaveAccessibleName(/turn|quarter|half/)
})

test('a small ride is handed over by a code that another’s reader reads; a large one gets the reason', async ({ page }) => {
  await openRidewright(page)
  await page.getByLabel('title', { exact: true }).fill('Small')
  await page.getByRole('button', { name: 'start a blank ride' }).click()
  await expect(saved(page)).toBeVisible()
  await page.getByRole('link', { name: 'share', exact: true }).click()
  const code = page.getByRole('img', { name: 'QR code of the link' })
  await expect(code).toBeVisible()
  expect(await readShown(page, await code.screenshot())).toBe(await shownLink(page))
  expect(await barriers(page)).toEqual([])

  await page.getByRole('link', { name: 'my rides' }).click()
  await page.getByRole('button', { name: /^Twenty-Minute Spark/ }).click()
  await expect(page.getByText('sample, not saved yet')).toBeVisible()
  await page.getByRole('link', { name: 'share', exact: true }).click()
  await expect(page.getByText('too long for a QR code')).toBeVisible()
  await expect(code).toHaveCount(0)
})

/** What a camera would read: the pixels of a picture, through a decoder that is not the page's. */
async function readShown(page: Page, picture: Buffer): Promise<string | undefined> {
  const { width, height, pixels } = await page.evaluate(async (base64) => {
    const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0))
    const image = await createImageBitmap(new Blob([bytes], { type: 'image/png' }))
    const context = new OffscreenCanvas(image.width, image.height).getContext('2d')!
    context.drawImage(image, 0, 0)
    return { width: image.width, height: image.height, pixels: [...context.getImageData(0, 0, image.width, image.height).data] }
  }, picture.toString('base64'))
  return jsqr(Uint8ClampedArray.from(pixels), width, height)?.data
}

test('blocks given to a second leader carry a letter, and hands that change in a push are named', async ({ page }) => {
  await openDemo(page)
  const climb = page.getByRole('option', { name: /^standing climb/ }).first()
  await page
    .getByRole('option', { name: /^seated climb/ })
    .nth(1)
    .click()
  await climb.click({ modifiers: ['ControlOrMeta'] })
  await page.getByLabel('leads', { exact: true }).selectOption({ label: 'Remy Castellane-Voss' })
  await expect(climb).toHaveAccessibleName(/Remy Castellane-Voss leads$/)
  await expect(climb.locator('.block-leader')).toHaveText('R')
  await expect(page.getByText(/^Odalys takes over at “standing climb”, in the middle of a push/).first()).toBeVisible()
  expect(await barriers(page)).toEqual([])
})
