import { fileURLToPath } from 'node:url'
import type { Page } from '@playwright/test'
import { manyBlocks } from '#tests/support/manyBlocks.ts'
import { drag, nextFrame } from './support/drag.ts'
import { press } from './support/keyboard.ts'
import { openRidewright, ready } from './support/openRidewright.ts'
import { expect, test } from './support/test.ts'

const CLIP = fileURLToPath(new URL('../tests/audio/clips/clip-124.wav', import.meta.url))
const BLOCKS = 60

const blocks = (page: Page) => page.locator('[data-block-id]')
const block = (page: Page, id: string) => page.locator(`[data-block-id="${id}"]`)
const waves = (page: Page) => page.locator('.wave')
const asked = (page: Page) => page.locator('[data-curve="intent"]')
/** Bars of the first wave. */
const bars = (page: Page) =>
  waves(page)
    .first()
    .locator('.wave-body')
    .evaluate((path) => (path.getAttribute('d') ?? '').split('M').length - 1)

async function openSpark(page: Page): Promise<void> {
  await openRidewright(page)
  await page.getByRole('button', { name: /^Twenty-Minute Spark/ }).click()
  await expect(asked(page)).toBeAttached()
}

async function openMany(page: Page): Promise<void> {
  await openRidewright(page)
  await page
    .locator('input[type="file"]')
    .first()
    .setInputFiles({ name: 'many.ride.json', mimeType: 'application/json', buffer: Buffer.from(JSON.stringify(manyBlocks(BLOCKS))) })
  await expect(blocks(page)).toHaveCount(BLOCKS)
}

test('a song shows what it sounds like, with its beats when they are wide enough, and again after a reload', async ({ page }) => {
  await openSpark(page)
  await page.locator('.song-head').first().click()
  await expect(waves(page)).toHaveCount(0)
  const hear = page.getByRole('region', { name: 'beat from a file' })
  await hear.locator('input[type="file"]').setInputFiles(CLIP)
  await expect(hear.locator('[data-hearing="heard"]')).toBeVisible({ timeout: 60_000 })

  // At most six seconds at 4.2 pixels a second, from the first one of a bar on; a bar of the wave on every second pixel.
  await expect(waves(page)).toHaveCount(1)
  const coarse = await bars(page)
  expect(coarse).toBeGreaterThan(4)
  expect(coarse).toBeLessThan(14)
  await expect(page.locator('.ruler-beats')).toHaveCount(0)

  const ruler = (await page.locator('.ruler').first().boundingBox())!
  await page.mouse.move(ruler.x + 2, ruler.y + 10)
  await page.keyboard.down('Control')
  await page.mouse.wheel(0, -480)
  await page.keyboard.up('Control')
  await expect.poll(() => bars(page)).toBeGreaterThan(4 * coarse)
  await expect(page.locator('.ruler-beats')).toHaveCount(1)
  await expect(page.locator('.ruler').first().getByText('phrase 1', { exact: true })).toHaveCount(1)

  await expect(page.getByText('saved', { exact: true })).toBeVisible()
  await page.reload()
  await ready(page)
  await expect(waves(page)).toHaveCount(1)
})

test('the edge of a block falls on a phrase before the next eight, says so, and is let go by Escape', async ({ page }) => {
  await openSpark(page)
  const total = page.getByTestId('slot').locator('[data-total]')
  const before = await total.getAttribute('data-total')
  // From the end of the eighth eight, where a phrase begins, to five counts past the end of the twelfth: 172 beats a minute, 4.2 pixels a second.
  const counts = 37
  const edge = block(page, 's1b1').locator('.edge[data-side="end"]')
  await drag(page, edge, { by: { x: counts * (60 / 172) * 4.2, y: 0 } }, { release: false })
  await expect(block(page, 's1b1').locator('.edge-words')).toHaveText('phrase 4, 12 eights')
  await press(page, 'Escape')
  await nextFrame(page)
  await page.mouse.up()
  await expect(page.locator('.edge-words')).toHaveCount(0)
  await expect(total).toHaveAttribute('data-total', before!)
})

test('an edge is held on to when its block becomes too narrow to be gripped', async ({ page }) => {
  await openSpark(page)
  await page.getByRole('button', { name: 'whole ride' }).click()
  const second = block(page, 's1b2')
  const width = async () => (await second.boundingBox())!.width
  await expect.poll(width).toBeLessThan(60)
  const wide = await width()
  // Down to nothing and back to where it was, in one pull.
  await drag(page, second.locator('.edge[data-side="end"]'), { by: { x: -wide, y: 0 } }, { release: false })
  await expect(second).toHaveAttribute('data-room', 'none')
  const { x, y, height } = (await second.boundingBox())!
  await page.mouse.move(x + wide, y + height / 2, { steps: 10 })
  await expect.poll(width).toBeGreaterThan(wide / 2)
  await press(page, 'Escape')
  await page.mouse.up()
  await expect.poll(width).toBeCloseTo(wide, 0)
})

test('blocks out of sight have their names and can be gone to; what is gone to is drawn', async ({ page }) => {
  await openMany(page)
  const last = block(page, `block-${BLOCKS - 1}`)
  await expect(last).toHaveAccessibleName(new RegExp(`^block ${BLOCKS}, `))
  await expect(last).toHaveText('')
  await expect(blocks(page).first()).toContainText('block 1')

  await blocks(page)
    .first()
    .click({ position: { x: 8, y: 60 } })
  await press(page, 'End')
  await expect(last).toBeFocused()
  await expect(last).toBeInViewport()
  await expect(last.locator('.block-effort')).toHaveText('4')
  // A change before what is in sight reaches the names of what is not.
  await press(page, 'Home')
  await expect(blocks(page).first()).toBeFocused()
  const nameBefore = await last.getAttribute('aria-label')
  await press(page, '+')
  await expect(last).not.toHaveAttribute('aria-label', nameBefore!)
  await expect(page.locator('.block-body')).not.toHaveCount(BLOCKS)
})

test('scrolling and zooming draw what comes into sight', async ({ page }) => {
  await openMany(page)
  const middle = block(page, `block-${BLOCKS / 2}`)
  await expect(middle).toHaveText('')
  await middle.scrollIntoViewIfNeeded()
  await expect(middle).toContainText(`block ${BLOCKS / 2 + 1}`)
  await page.getByRole('button', { name: 'whole ride' }).click()
  await expect(page.locator('.block-body')).toHaveCount(BLOCKS)
})
