import type { Locator, Page } from '@playwright/test'
import { LEVEL_HEIGHT } from '#features/drafting/stage/chartFrame.ts'
import { barriers } from './support/barriers.ts'
import { drag, nextFrame, type Point } from './support/drag.ts'
import { press } from './support/keyboard.ts'
import { openRidewright } from './support/openRidewright.ts'
import { expect, test } from './support/test.ts'
import { fingersOn } from './support/touch.ts'

const block = (page: Page, id: string) => page.locator(`[data-block-id="${id}"]`)
const scroller = (page: Page) => page.locator('.stage-scroller')
const selected = (page: Page) =>
  page.locator('[role="option"][aria-selected="true"]').evaluateAll((all) => all.map((each) => (each as HTMLElement).dataset.id))
const undo = (page: Page) => page.locator('[data-action="ride.undo"]')
const scrolled = (page: Page) => scroller(page).evaluate((box) => box.scrollLeft)
const handle = (page: Page, part: 'from' | 'level' | 'to') => page.locator(`.curve-grip[data-part="${part}"]`)
const value = (page: Page, part: 'from' | 'level' | 'to') => handle(page, part).getAttribute('aria-valuenow')

async function openSpark(page: Page): Promise<void> {
  await openRidewright(page)
  await page.getByRole('button', { name: /^Twenty-Minute Spark/ }).click()
  await expect(page.locator('[data-curve="intent"]')).toBeAttached()
}

async function select(page: Page, id: string): Promise<void> {
  await block(page, id).locator('.block-body').click()
  await expect(handle(page, 'level')).toBeVisible()
}

const middleOf = async (thing: Locator): Promise<Point> => {
  const { x, y, width, height } = (await thing.boundingBox())!
  return { x: x + width / 2, y: y + height / 2 }
}

/** A point of the curve over a block, at a share of its width. */
async function onCurve(page: Page, id: string, share: number, level: number): Promise<Point> {
  const card = (await block(page, id).boundingBox())!
  const chart = (await page.locator('.chart-place').boundingBox())!
  return { x: card.x + card.width * share, y: chart.y + 10 + (10 - level) * LEVEL_HEIGHT }
}

/** The second of the class at a place on the screen. */
const secondAt = (page: Page, x: number) =>
  page.evaluate((at) => {
    const box = document.querySelector('.stage-scroller')!
    const stretch = [...document.querySelectorAll<HTMLElement>('[data-block-id]')]
    const last = stretch.at(-1)!
    const perSecond = (last.offsetLeft + last.offsetWidth) / Number(document.querySelector<HTMLElement>('[data-total]')!.dataset.total)
    return { second: (box.scrollLeft + at - box.getBoundingClientRect().left) / perSecond, perSecond }
  }, x)

test.describe('with a mouse', () => {
  test('the curve over a block is pulled to set its effort, and its ends to make a ramp', async ({ page }) => {
    await openSpark(page)
    const card = block(page, 's1b2')
    await expect(card).toHaveAccessibleName(/effort 3/)
    const line = await onCurve(page, 's1b2', 0.5, 3)
    await page.mouse.move(line.x, line.y)
    await page.mouse.down()
    await page.mouse.move(line.x, line.y - 2.4 * LEVEL_HEIGHT, { steps: 8 })
    await expect(page.locator('.held-value')).toHaveText('5½')
    await page.mouse.up()
    await expect(page.locator('.held-value')).toHaveCount(0)
    await expect(card).toHaveAccessibleName(/effort 5½/)
    await expect(card).toHaveAttribute('aria-selected', 'true')

    await drag(page, handle(page, 'to'), { by: { x: 0, y: -2 * LEVEL_HEIGHT } })
    expect([await value(page, 'from'), await value(page, 'to')]).toEqual(['5.5', '7.5'])
    await drag(page, handle(page, 'from'), { by: { x: 0, y: 2.1 * LEVEL_HEIGHT } })
    expect([await value(page, 'from'), await value(page, 'to')]).toEqual(['3.5', '7.5'])
    // All of it goes no further than its higher end, and keeps its rise.
    await drag(page, handle(page, 'level'), { by: { x: 0, y: -8 * LEVEL_HEIGHT } })
    expect([await value(page, 'from'), await value(page, 'to')]).toEqual(['6', '10'])

    // One step each.
    for (const name of [/effort 3½ rising to 7½|effort 3½/, /effort 5½/]) {
      await undo(page).click()
      await expect(card).toHaveAccessibleName(name)
    }
  })

  test('Escape gives the curve up, Alt pulls it by tenths, and a press of it selects the block', async ({ page }) => {
    await openSpark(page)
    const line = await onCurve(page, 's1b2', 0.5, 3)
    await page.mouse.click(line.x, line.y)
    await expect.poll(() => selected(page)).toEqual(['s1b2'])
    await expect(block(page, 's1b2')).toBeFocused()
    await page.mouse.move(line.x, line.y - 40)
    await page.mouse.move(line.x, line.y)
    await drag(page, handle(page, 'level'), { by: { x: 0, y: -30 } }, { release: false })
    await expect(page.locator('.held-value')).toHaveText('5')
    await press(page, 'Escape')
    await expect(page.locator('.held-value')).toHaveCount(0)
    await page.mouse.up()
    await expect(block(page, 's1b2')).toHaveAccessibleName(/effort 3/)
    expect(await selected(page)).toEqual(['s1b2'])

    await page.keyboard.down('Alt')
    await drag(page, handle(page, 'level'), { by: { x: 0, y: -19 } })
    await page.keyboard.up('Alt')
    await expect.poll(() => value(page, 'level')).toBe('4.3')
  })

  test('the left edge of a block moves the joint with the one before, and everything after stays', async ({ page }) => {
    await openSpark(page)
    const [first, second, third] = ['s1b1', 's1b2', 's1b3'].map((id) => block(page, id)) as [Locator, Locator, Locator]
    const end = (await third.boundingBox())!.x
    const eight = 8 * (60 / 172) * 4.2
    await drag(page, second.locator('.edge[data-side="start"]'), { by: { x: 2 * eight, y: 0 } }, { release: false })
    await expect(second.locator('.edge-words')).toHaveText('eight 11, 14 eights')
    await page.mouse.up()
    await expect(first).toContainText('10 eights')
    await expect(second).toContainText('14 eights')
    expect((await third.boundingBox())!.x).toBeCloseTo(end, 1)
    await expect(second).toHaveAttribute('aria-selected', 'true')
    await undo(page).click()
    await expect(first).toContainText('8 eights')
  })

  test('an edge held at the side of the stage scrolls it on', async ({ page }) => {
    await openSpark(page)
    await drag(page, block(page, 's1b2').locator('.edge[data-side="end"]'), await rightBorder(page), { release: false })
    const from = await scrolled(page)
    await expect.poll(() => scrolled(page)).toBeGreaterThan(from + 300)
    await press(page, 'Escape')
    await page.mouse.up()
    await expect(block(page, 's1b2')).toContainText('16 eights')
  })

  test('a frame on the empty row selects what it touches; with Shift it begins on a card', async ({ page }) => {
    await openSpark(page)
    const row = (await page.locator('.blocks').boundingBox())!
    const third = (await block(page, 's1b3').boundingBox())!
    // From the strip over the cards.
    await page.mouse.move(row.x + 3, row.y + 8)
    await page.mouse.down()
    await page.mouse.move(third.x + 10, row.y + 60, { steps: 10 })
    await expect(page.locator('.block-frame')).toBeVisible()
    await page.mouse.up()
    await expect(page.locator('.block-frame')).toHaveCount(0)
    expect(await selected(page)).toEqual(['s1b1', 's1b2', 's1b3'])
    // Keys are about all of it.
    await expect(block(page, 's1b3')).toBeFocused()

    const at = await middleOf(block(page, 's1b2'))
    await page.keyboard.down('Shift')
    await page.mouse.move(at.x, at.y)
    await page.mouse.down()
    await page.mouse.move(third.x + 10, at.y + 20, { steps: 10 })
    await page.mouse.up()
    await page.keyboard.up('Shift')
    expect(await selected(page)).toEqual(['s1b2', 's1b3'])
    // Nothing was picked up.
    await expect(undo(page)).toBeDisabled()

    await page.mouse.move(row.x + 3, row.y + 8)
    await page.mouse.down()
    await page.mouse.move(row.x + 60, row.y + 60, { steps: 5 })
    await expect.poll(() => selected(page)).toEqual(['s1b1'])
    await press(page, 'Escape')
    await page.mouse.up()
    expect(await selected(page)).toEqual(['s1b2', 's1b3'])

    await page.mouse.click(at.x, at.y)
    await block(page, 's1b3').click({ modifiers: ['Shift'] })
    expect(await selected(page)).toEqual(['s1b2', 's1b3'])
  })

  test('the stage is moved by an empty part, by the middle button, and by Space, and nothing else comes of it', async ({ page }) => {
    await openSpark(page)
    await select(page, 's1b2')
    const chart = (await page.locator('.chart-place').boundingBox())!
    const pull = async (from: Point, by: number, button: 'left' | 'middle' = 'left') => {
      const before = await scrolled(page)
      await page.mouse.move(from.x, from.y)
      await page.mouse.down({ button })
      await page.mouse.move(from.x - by, from.y + 3, { steps: 6 })
      await page.mouse.up({ button })
      return (await scrolled(page)) - before
    }
    expect(await pull({ x: chart.x + 600, y: chart.y + 8 }, 200)).toBe(200)
    const card = { x: chart.x + 500, y: (await middleOf(block(page, 's1b3'))).y }
    expect(await pull(card, 150, 'middle')).toBe(150)
    expect(await selected(page)).toEqual(['s1b2'])

    await page.mouse.move(card.x, card.y)
    await page.keyboard.down('Space')
    await expect(page.locator('.stage-content')).toHaveAttribute('data-hand', 'ready')
    expect(await pull(card, -100)).toBe(-100)
    await page.keyboard.up('Space')
    await expect(page.locator('.stage-content')).not.toHaveAttribute('data-hand', /./)
    expect(await selected(page)).toEqual(['s1b2'])
    await expect(undo(page)).toBeDisabled()

    // Without a pull the key means what it means on a card.
    await expect(block(page, 's1b2')).toBeFocused()
    await page.keyboard.press('Space')
    await expect.poll(() => selected(page)).toEqual([])
    await page.keyboard.press('Space')
    await expect.poll(() => selected(page)).toEqual(['s1b2'])
  })

  test('a pinch on a pad keeps the second under the pointer, and the page its size', async ({ page }) => {
    await openSpark(page)
    const at = await middleOf(page.locator('.chart-place').locator('xpath=ancestor::*[contains(@class,"stage-scroller")]'))
    const before = await secondAt(page, at.x)
    await page.mouse.move(at.x, at.y)
    await page.keyboard.down('Control')
    for (let step = 0; step < 12; step++) await page.mouse.wheel(0, -7)
    await page.keyboard.up('Control')
    await expect.poll(async () => (await secondAt(page, at.x)).perSecond / before.perSecond).toBeCloseTo(Math.exp(0.84), 1)
    const after = await secondAt(page, at.x)
    expect(Math.abs(after.second - before.second) * after.perSecond).toBeLessThanOrEqual(2)
    expect(await page.evaluate(() => visualViewport!.scale)).toBe(1)
  })

  test('the window of the small chart is moved as it is held, and its edges zoom', async ({ page }) => {
    await openSpark(page)
    const window = page.getByRole('slider', { name: 'part of the ride on the stage' })
    const end = page.getByRole('slider', { name: 'end of the view' })
    const start = page.getByRole('slider', { name: 'start of the view' })
    const box = async () => (await window.boundingBox())!
    const before = await box()
    await drag(page, window, { by: { x: 120, y: 0 } })
    expect((await box()).x).toBeCloseTo(before.x + 120, -0.5)
    const wide = await box()
    await drag(page, end, { by: { x: 90, y: 0 } })
    expect((await box()).width).toBeCloseTo(wide.width + 90, -0.5)
    expect((await box()).x).toBeCloseTo(wide.x, -0.5)
    await drag(page, start, { by: { x: 60, y: 0 } })
    expect((await box()).width).toBeCloseTo(wide.width + 30, -0.5)
    await end.focus()
    const narrow = await box()
    await press(page, 'ArrowLeft')
    await expect.poll(async () => (await box()).width).toBeCloseTo((narrow.width * 7) / 8, -0.5)
  })

  test('the chart is read over the handles too, they stand clear of what is read, and only the first button pulls', async ({ page }) => {
    await openSpark(page)
    await select(page, 's1b2')
    const readOut = page.locator('.read-out-box')
    const all = (['from', 'level', 'to'] as const).map((part) => handle(page, part))
    for (const grip of all) {
      const at = await middleOf(grip)
      await page.mouse.move(at.x, at.y)
      await expect(readOut).toBeVisible()
      const { y } = (await readOut.boundingBox())!
      for (const other of all) expect((await middleOf(other)).y).toBeLessThan(y)
    }
    const at = await middleOf(handle(page, 'level'))
    await page.mouse.move(at.x, at.y)
    await page.mouse.down({ button: 'right' })
    await page.mouse.move(at.x, at.y - 40, { steps: 5 })
    await expect(page.locator('.held-value')).toHaveCount(0)
    await page.mouse.up({ button: 'right' })
    await press(page, 'Escape')
    await page.mouse.click(at.x, at.y)
    expect(await selected(page)).toEqual(['s1b2'])
    await expect(undo(page)).toBeDisabled()
  })
})

test('by key: the curve has three sliders, and a start moves with comma and point', async ({ page }) => {
  await openSpark(page)
  await select(page, 's1b2')
  await page.getByRole('slider', { name: 'effort on the chart', exact: true }).focus()
  await press(page, 'ArrowUp')
  await expect.poll(() => value(page, 'level')).toBe('4')
  await page.getByRole('slider', { name: 'effort on the chart, end' }).focus()
  await press(page, 'Shift+ArrowUp')
  await expect(handle(page, 'to')).toHaveAttribute('aria-valuetext', /^4½ of 10/)
  await expect(handle(page, 'level')).toHaveAttribute('aria-valuetext', '4–4½')
  await block(page, 's1b2').focus()
  await press(page, ',')
  await expect(block(page, 's1b2')).toContainText('17 eights')
  await expect(block(page, 's1b1')).toContainText('7 eights')
  await press(page, 'Alt+.')
  await expect(block(page, 's1b2')).toContainText('16 eights + 7')
  expect(await barriers(page)).toEqual([])
})

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

async function rightBorder(page: Page): Promise<Point> {
  const { x, y, width, height } = (await scroller(page).boundingBox())!
  return { x: x + width - 4, y: y + height * 0.7 }
}
