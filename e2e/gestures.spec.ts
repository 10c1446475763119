import type { Locator, Page } from '@playwright/test'
import { LEVEL_HEIGHT } from '#features/drafting/stage/chartFrame.ts'
import { barriers } from './support/barriers.ts'
import { drag, type Point } from './support/drag.ts'
import { press } from './support/keyboard.ts'
import {
  block,
  handle,
  middleOf,
  onCurve,
  openSpark,
  scrolled,
  scroller,
  secondAt,
  select,
  selected,
  undo,
  value,
} from './support/stageHands.ts'
import { expect, test } from './support/test.ts'

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
      await expect.poll(async () => (await scrolled(page)) - before).toBe(by)
    }
    await pull({ x: chart.x + 600, y: chart.y + 8 }, 200)
    const card = { x: chart.x + 500, y: (await middleOf(block(page, 's1b3'))).y }
    await pull(card, 150, 'middle')
    expect(await selected(page)).toEqual(['s1b2'])

    await page.mouse.move(card.x, card.y)
    await page.keyboard.down('Space')
    await expect(page.locator('.stage-content')).toHaveAttribute('data-hand', 'ready')
    await pull(card, -100)
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
    // A press of it that stays where it is brings that place to the middle.
    const { x, y, width } = await box()
    await page.mouse.click(x + width * 0.8, y + 20)
    await expect.poll(async () => (await box()).x).toBeCloseTo(x + width * 0.3, -0.5)
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

async function rightBorder(page: Page): Promise<Point> {
  const { x, y, width, height } = (await scroller(page).boundingBox())!
  return { x: x + width - 4, y: y + height * 0.7 }
}
