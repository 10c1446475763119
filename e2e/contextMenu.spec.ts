import type { Locator, Page } from '@playwright/test'
import { blocks, choose, order, sections, stop } from './actions/row.ts'
import { barriers } from './support/barriers.ts'
import { openRidewright } from './support/openRidewright.ts'
import { expect, test } from './support/test.ts'

const BLOCKS = 42

async function openSpark(page: Page): Promise<void> {
  await openRidewright(page)
  await page.getByRole('button', { name: /^Twenty-Minute Spark/ }).click()
  await expect(blocks(page)).toHaveCount(BLOCKS)
}

const menu = (page: Page) => page.getByRole('menu')
const entry = (page: Page, name: string | RegExp) =>
  menu(page).getByRole('menuitem', typeof name === 'string' ? { name, exact: true } : { name })
const selected = (page: Page) => page.locator('[data-stage-stop="block"][aria-selected="true"]')
const chooseEntry = async (page: Page, name: string) => {
  await entry(page, name).click()
  await expect(menu(page)).toHaveCount(0)
}

test('the second button opens the menu where the pointer is, on what it selects', async ({ page }) => {
  await openSpark(page)
  await choose('s1b2')(page)
  await stop(page, 's1b4').click({ button: 'right', position: { x: 10, y: 12 } })
  await expect(menu(page)).toBeVisible()
  await expect(stop(page, 's1b4')).toHaveAttribute('aria-selected', 'true')
  await expect(selected(page)).toHaveCount(1)
  const [pressed, opened] = [(await stop(page, 's1b4').boundingBox())!, (await menu(page).boundingBox())!]
  expect(Math.abs(opened.x - (pressed.x + 10))).toBeLessThan(2)
  expect(await barriers(page)).toEqual([])
  await chooseEntry(page, 'duplicate')
  await expect(blocks(page)).toHaveCount(BLOCKS + 1)
})

test('among several that are selected it is about all of them', async ({ page }) => {
  await openSpark(page)
  await choose('s1b2')(page)
  await stop(page, 's1b4').click({ modifiers: ['Shift'], position: { x: 12, y: 10 } })
  await expect(selected(page)).toHaveCount(3)
  await stop(page, 's1b3').click({ button: 'right', position: { x: 10, y: 12 } })
  await expect(selected(page)).toHaveCount(3)
  await chooseEntry(page, 'delete')
  await expect(blocks(page)).toHaveCount(BLOCKS - 3)
})

test('by keys: the menu key and Shift+F10, arrows, first letters, Escape, and the focus goes back', async ({ page }) => {
  await openSpark(page)
  for (const key of ['ContextMenu', 'Shift+F10']) {
    await choose('s1b2')(page)
    await page.keyboard.press(key)
    await expect(menu(page)).toHaveCount(1)
    await expect(entry(page, 'cut')).toBeFocused()
    await page.keyboard.press('ArrowDown')
    await expect(entry(page, 'copy')).toBeFocused()
    await page.keyboard.press('ArrowUp')
    await page.keyboard.press('ArrowUp')
    await expect(menu(page).getByRole('menuitem').last()).toBeFocused()
    await page.keyboard.press('Home')
    await expect(entry(page, 'cut')).toBeFocused()
    await page.keyboard.press('End')
    await expect(menu(page).getByRole('menuitem').last()).toBeFocused()
    await page.keyboard.type('dup')
    await expect(entry(page, 'duplicate')).toBeFocused()
    await page.keyboard.press('Escape')
    await expect(menu(page)).toHaveCount(0)
    await expect(stop(page, 's1b2')).toBeFocused()
    await expect(stop(page, 's1b2')).toHaveAttribute('aria-selected', 'true')
  }
  await page.keyboard.press('ContextMenu')
  await page.keyboard.type('de')
  await page.keyboard.press('Enter')
  await expect(blocks(page)).toHaveCount(BLOCKS - 1)
})

test('what cannot be done stays in it, says why, and does nothing', async ({ page }) => {
  await openSpark(page)
  await choose('s1b1')(page)
  await page.keyboard.press('Shift+F10')
  const cannot = entry(page, /^split song here/)
  await expect(cannot).toHaveAttribute('aria-disabled', 'true')
  await expect(cannot).toHaveAccessibleDescription('A song already starts here.')
  await cannot.click({ force: true })
  await expect(menu(page)).toBeVisible()
  await page.mouse.click(5, 5)
  await expect(menu(page)).toHaveCount(0)
  await expect(sections(page)).toHaveCount(6)
})

test('on a song and on the empty stage, and never off the window', async ({ page }) => {
  await openSpark(page)
  await sections(page)
    .first()
    .click({ button: 'right', position: { x: 12, y: 10 } })
  await expect(sections(page).first()).toHaveAttribute('aria-pressed', 'true')
  await expect(entry(page, 'duplicate song')).toBeVisible()
  await expect(entry(page, 'merge')).toHaveCount(0)
  await page.keyboard.press('Escape')
  await expect(sections(page).first()).toBeFocused()

  await page.locator('.chart-place').click({ button: 'right', position: { x: 900, y: 20 } })
  await expect(entry(page, 'paste')).toBeVisible()
  await expect(entry(page, 'copy')).toHaveCount(0)
  await expect(page.locator('.song-head[aria-pressed="true"]')).toHaveCount(0)
  await page.keyboard.press('Escape')

  for (const size of [
    { width: 1440, height: 900 },
    { width: 390, height: 700 },
  ]) {
    await page.setViewportSize(size)
    await page.locator('.stage-scroller').scrollIntoViewIfNeeded()
    const box = (await page.locator('.stage-scroller').boundingBox())!
    await page.mouse.click(box.x + box.width - 4, box.y + box.height - 30, { button: 'right' })
    const opened = (await menu(page).boundingBox())!
    expect(opened.x).toBeGreaterThanOrEqual(0)
    expect(opened.y).toBeGreaterThanOrEqual(0)
    expect(opened.x + opened.width).toBeLessThanOrEqual(size.width)
    expect(opened.y + opened.height).toBeLessThanOrEqual(size.height)
    await page.keyboard.press('Escape')
    await expect(menu(page)).toHaveCount(0)
  }
})

test.describe('by touch', () => {
  test.use({ hasTouch: true, viewport: { width: 390, height: 844 } })

  /** A finger that comes down, rests or travels, and lifts. */
  async function finger(page: Page, on: Locator) {
    await on.scrollIntoViewIfNeeded()
    const box = (await on.boundingBox())!
    const [x, y] = [box.x + Math.min(box.width / 2, 20), box.y + Math.min(box.height / 2, 14)]
    const session = await page.context().newCDPSession(page)
    const send = (type: 'touchStart' | 'touchMove' | 'touchEnd', dx = 0) =>
      session.send('Input.dispatchTouchEvent', { type, touchPoints: type === 'touchEnd' ? [] : [{ x: x + dx, y }] })
    return { down: () => send('touchStart'), move: (dx: number) => send('touchMove', dx), up: () => send('touchEnd') }
  }

  test('a finger that rests opens it, and lifting leaves it open', async ({ page }) => {
    await openSpark(page)
    const before = await order(page)
    for (const place of [stop(page, 's1b1'), sections(page).first()]) {
      const hand = await finger(page, place)
      await hand.down()
      await expect(menu(page)).toBeVisible()
      await hand.up()
      await expect(entry(page, 'cut')).toBeFocused()
      await page.locator('.draft-top').tap({ position: { x: 4, y: 4 } })
      await expect(menu(page)).toHaveCount(0)
    }
    expect(await order(page)).toEqual(before)
    const hand = await finger(page, stop(page, 's1b1'))
    await hand.down()
    await entry(page, 'duplicate').waitFor()
    await hand.up()
    await entry(page, 'duplicate').tap()
    await expect(blocks(page)).toHaveCount(BLOCKS + 1)
  })

  test('a finger that goes on after resting a little drags, and no menu is left', async ({ page }) => {
    await openSpark(page)
    await page.getByRole('button', { name: 'whole ride' }).click()
    const hand = await finger(page, stop(page, 's1b1'))
    await hand.down()
    await expect(page.locator('.drag-overlay')).toBeVisible()
    for (let dx = 4; dx <= 120; dx += 4) await hand.move(dx)
    await expect(menu(page)).toHaveCount(0)
    await expect(page.locator('.drag-overlay')).toBeVisible()
    await hand.up()
    await expect(page.locator('.drag-overlay')).toHaveCount(0)
    await expect(menu(page)).toHaveCount(0)
  })

  test('a finger that has rested long can still drag: the menu goes and the block moves', async ({ page }) => {
    await openSpark(page)
    await page.getByRole('button', { name: 'whole ride' }).click()
    const before = await order(page)
    const hand = await finger(page, stop(page, 's1b1'))
    await hand.down()
    await expect(menu(page)).toBeVisible()
    for (let dx = 4; dx <= 120; dx += 4) await hand.move(dx)
    await expect(menu(page)).toHaveCount(0)
    await hand.up()
    await expect.poll(() => order(page)).not.toEqual(before)
  })
})
