import type { Page } from '@playwright/test'
import { LEVEL_HEIGHT } from '#features/drafting/stage/chartFrame.ts'
import { nextFrame } from './support/drag.ts'
import { block, handle, middleOf, onCurve, openSpark, scrolled, scroller, secondAt, selected, undo, value } from './support/stageHands.ts'
import { expect, test } from './support/test.ts'
import { fingersOn } from './support/touch.ts'

for (const { width, height } of [
  { width: 1440, height: 900 },
  { width: 390, height: 844 },
])
  test.describe(`with fingers, ${width} pixels wide`, () => {
    test.use({ viewport: { width, height }, hasTouch: true, isMobile: width < 600 })

    const inSight = async (page: Page) => {
      await page.locator('.chart-place').evaluate((chart) => chart.scrollIntoView({ block: 'center', inline: 'nearest' }))
      await nextFrame(page)
    }

    test('two fingers zoom the stage around what is between them, and not the page', async ({ page }) => {
      await openSpark(page)
      await inSight(page)
      const at = await middleOf(scroller(page))
      const fingers = await fingersOn(page)
      const before = await secondAt(page, at.x)
      await fingers.down({ x: at.x - 40, y: at.y }, { x: at.x + 40, y: at.y })
      await fingers.move({ x: at.x - 120, y: at.y - 10 }, { x: at.x + 120, y: at.y + 10 })
      const after = await secondAt(page, at.x)
      expect(after.perSecond / before.perSecond).toBeCloseTo(3, 1)
      expect(Math.abs(after.second - before.second) * after.perSecond).toBeLessThanOrEqual(2)
      await fingers.up()
      expect(await page.evaluate(() => visualViewport!.scale)).toBe(1)
      // Where both began on one card, it was not picked up.
      await expect(page.locator('.drag-overlay')).toHaveCount(0)
      await expect(undo(page)).toBeDisabled()
    })

    test('one finger scrolls, and taps the curve to select its block; handles pull it', async ({ page }) => {
      await openSpark(page)
      await inSight(page)
      const fingers = await fingersOn(page)
      const at = await middleOf(scroller(page))
      await fingers.down(at)
      await fingers.move({ x: at.x - 100, y: at.y })
      await fingers.up()
      await expect.poll(() => scrolled(page)).toBeGreaterThan(50)
      await scroller(page).evaluate((box) => box.scrollTo({ left: 0 }))
      await nextFrame(page)

      const line = await onCurve(page, 's1b1', 0.5, 2)
      await page.touchscreen.tap(line.x, line.y)
      await expect.poll(() => selected(page)).toEqual(['s1b1'])
      await inSight(page)
      const size = (await handle(page, 'to').boundingBox())!
      expect(Math.min(size.width, size.height)).toBeGreaterThanOrEqual(44)
      const grip = await middleOf(handle(page, 'level'))
      const level = Number(await value(page, 'level'))
      await fingers.down(grip)
      await fingers.move({ x: grip.x, y: grip.y - 2 * LEVEL_HEIGHT })
      await expect(page.locator('.held-value')).toBeVisible()
      await fingers.up()
      await expect.poll(() => value(page, 'level')).toBe(String(level + 2))
    })

    test('a tap of the curve reads it as well, and a second finger lets go of a handle', async ({ page }) => {
      await openSpark(page)
      await inSight(page)
      const line = await onCurve(page, 's1b1', 0.5, 2)
      const readOut = page.locator('.read-out-box')
      await page.touchscreen.tap(line.x, line.y)
      await expect.poll(() => selected(page)).toEqual(['s1b1'])
      await expect(readOut).toBeVisible()
      await inSight(page)
      const grip = await middleOf(handle(page, 'level'))
      await page.touchscreen.tap(grip.x, grip.y)
      await expect(readOut).toBeVisible()
      expect(await selected(page)).toEqual(['s1b1'])

      const fingers = await fingersOn(page)
      await fingers.down(grip)
      await fingers.move({ x: grip.x, y: grip.y - 2 * LEVEL_HEIGHT })
      await expect(page.locator('.held-value')).toBeVisible()
      await fingers.down({ x: grip.x, y: grip.y - 2 * LEVEL_HEIGHT }, { x: grip.x + 60, y: grip.y })
      await expect(page.locator('.held-value')).toHaveCount(0)
      await fingers.up()
      expect(await value(page, 'level')).toBe('2')
      await expect(undo(page)).toBeDisabled()
    })

    test('the edges of the selected block are as wide as a finger, and are pulled', async ({ page }) => {
      await openSpark(page)
      await block(page, 's1b1').locator('.block-body').tap()
      await expect.poll(() => selected(page)).toEqual(['s1b1'])
      const edge = block(page, 's1b1').locator('.edge[data-side="end"]')
      await edge.scrollIntoViewIfNeeded()
      expect((await edge.boundingBox())!.width).toBeGreaterThanOrEqual(44)
      const grip = await middleOf(edge)
      const fingers = await fingersOn(page)
      await fingers.down(grip)
      await fingers.move({ x: grip.x + 2 * 8 * (60 / 172) * 4.2, y: grip.y })
      await fingers.up()
      await expect(block(page, 's1b1')).toContainText('10 eights')
      // A tap on it is about the card beneath.
      await page.touchscreen.tap((await edge.boundingBox())!.x + 36, grip.y)
      await expect.poll(() => selected(page)).toEqual(['s1b2'])
    })

    test('a finger that rests on the empty row draws a frame', async ({ page }) => {
      await openSpark(page)
      const row = page.locator('.blocks')
      await row.evaluate((each) => each.scrollIntoView({ block: 'center', inline: 'nearest' }))
      const { x, y } = (await row.boundingBox())!
      const fingers = await fingersOn(page)
      await fingers.down({ x: x + 6, y: y + 8 })
      await expect(page.locator('.block-frame')).toBeAttached()
      const second = (await block(page, 's1b2').boundingBox())!
      await fingers.move({ x: second.x + 20, y: y + 80 })
      await fingers.up()
      await expect(page.locator('.block-frame')).toHaveCount(0)
      expect(await selected(page)).toEqual(['s1b1', 's1b2'])
      await expect(page.getByRole('menu')).toHaveCount(0)
    })
  })
