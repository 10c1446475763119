import type { Page } from '@playwright/test'
import { blocks, choose, sections, stop } from './actions/row.ts'
import { barriers } from './support/barriers.ts'
import { openRidewright, ready } from './support/openRidewright.ts'
import { expect, test } from './support/test.ts'

async function openSpark(page: Page): Promise<void> {
  await openRidewright(page)
  await page.getByRole('button', { name: /^Twenty-Minute Spark/ }).click()
  await expect(blocks(page)).toHaveCount(42)
}

const field = (page: Page) => page.locator('.rename-field input')
const head = (page: Page, id: string) => stop(page, id).locator('header')
const songName = (page: Page, id: string) => stop(page, id).locator('b')
const undo = (page: Page) => page.locator('[data-action="ride.undo"]')

test('a block is renamed where its name stands, by two presses of it, as one step', async ({ page }) => {
  await openSpark(page)
  await head(page, 's1b2').dblclick()
  await expect(page.getByRole('textbox', { name: 'name of “flat”' })).toBeFocused()
  await expect(field(page)).toHaveValue('flat')
  const [name, over] = [(await head(page, 's1b2').boundingBox())!, (await field(page).boundingBox())!]
  expect(Math.abs(over.x - name.x)).toBeLessThan(4)
  expect(Math.abs(over.y - name.y)).toBeLessThan(4)
  expect(await barriers(page)).toEqual([])
  // All of it is marked: what is typed takes its place.
  await page.keyboard.type('rolling start')
  await page.keyboard.press('Enter')
  await expect(field(page)).toHaveCount(0)
  await expect(head(page, 's1b2')).toContainText('rolling start')
  await expect(stop(page, 's1b2')).toBeFocused()
  // The name it has anyway is no name of its own, and an empty one gives that back.
  await page.keyboard.press('F2')
  await page.keyboard.press('Delete')
  await page.keyboard.press('Enter')
  await expect(head(page, 's1b2')).toContainText('flat')
  await undo(page).click()
  await expect(head(page, 's1b2')).toContainText('rolling start')
  await undo(page).click()
  await expect(head(page, 's1b2')).toContainText('flat')
  await expect(undo(page)).toBeDisabled()
})

test('Escape gives it up, a press elsewhere keeps it, and keys of the stage are letters there', async ({ page }) => {
  await openSpark(page)
  await head(page, 's1b2').dblclick()
  await page.keyboard.type('l, g. s ')
  await page.keyboard.press('Escape')
  await expect(field(page)).toHaveCount(0)
  await expect(stop(page, 's1b2')).toBeFocused()
  await expect(head(page, 's1b2')).toContainText('flat')
  await expect(undo(page)).toBeDisabled()

  await page.keyboard.press('F2')
  await page.keyboard.type('l, g. s')
  await field(page).click()
  await expect(stop(page, 's1b2')).toHaveAttribute('aria-selected', 'true')
  await head(page, 's1b4').click()
  await expect(field(page)).toHaveCount(0)
  await expect(head(page, 's1b2')).toContainText('l, g. s')
  await expect(stop(page, 's1b4')).toHaveAttribute('aria-selected', 'true')
})

test('a song is renamed by its name and fitted by the rest of its head; without a name it says so', async ({ page }) => {
  await openSpark(page)
  await songName(page, 's1').dblclick()
  await expect(field(page)).toHaveValue('Paper Comets over Harbour Nine')
  await page.keyboard.press('Delete')
  await page.keyboard.press('Enter')
  await expect(page.locator('.rename-field [role="alert"]')).toHaveText(/^A song needs a title/)
  await expect(field(page)).toBeFocused()
  await page.keyboard.type('Paper Comets')
  await page.keyboard.press('Enter')
  await expect(songName(page, 's1')).toHaveText('1. Paper Comets')
  await expect(stop(page, 's1')).toBeFocused()

  const seen = page.getByRole('slider', { name: 'part of the ride on the stage' })
  const before = await seen.getAttribute('aria-valuetext')
  await stop(page, 's1').locator('.song-facts').dblclick()
  await expect(seen).not.toHaveAttribute('aria-valuetext', before!)
  await expect(field(page)).toHaveCount(0)
})

test('a set and an empty song have names of their own; a menu asks for the field as well', async ({ page }) => {
  await openSpark(page)
  await choose('s1b2')(page)
  await page.keyboard.press('g')
  await page.keyboard.press('F2')
  await page.keyboard.type('loop')
  await page.keyboard.press('Enter')
  await expect(page.locator('.set-head')).toContainText('loop')
  await page.locator('.set-head').dblclick()
  await expect(field(page)).toHaveValue('loop')
  await page.keyboard.press('Escape')

  await page.locator('[data-action="add.section"]').click()
  await expect(sections(page)).toHaveCount(7)
  const empty = sections(page).last()
  await empty.focus()
  await page.keyboard.press('F2')
  await page.keyboard.type('talk')
  await page.keyboard.press('Enter')
  await expect(empty).toContainText('7. talk')

  await stop(page, 's1b4').click({ button: 'right', position: { x: 10, y: 12 } })
  await page.getByRole('menuitem', { name: 'rename', exact: true }).click()
  await expect(field(page)).toBeFocused()
  await page.keyboard.type('last hill')
  // The field has the browser's own menu.
  await field(page).click({ button: 'right' })
  await expect(page.getByRole('menu')).toHaveCount(0)
  await page.keyboard.press('Enter')
  await expect(stop(page, 's1b4')).toHaveAccessibleName(/^last hill/)
})

/** Longer than a name can be. */
const LONG = 'once more around '.repeat(12)

test('words that are refused are in the field again after the page has ended', async ({ page }) => {
  await openSpark(page)
  // A ride of one's own: the sample is not kept until it is changed.
  await choose('s1b2')(page)
  await page.keyboard.press('+')
  await expect(page.getByText('saved', { exact: true })).toBeVisible()
  await page.keyboard.press('F2')
  await field(page).fill(LONG)
  await page.reload()
  await ready(page)
  await expect(field(page)).toHaveValue(LONG)
  await expect(page.locator('.rename-field')).toContainText('You typed this before the page closed')
  await field(page).focus()
  await page.keyboard.press('Escape')
  await expect(head(page, 's1b2')).toContainText('flat')
  await expect.poll(() => page.evaluate(() => JSON.stringify({ ...localStorage }).includes('once more around'))).toBe(false)
  await page.reload()
  await ready(page)
  await expect(stop(page, 's1b2')).toBeVisible()
  await expect(field(page)).toHaveCount(0)
})

test.describe('by finger', () => {
  test.use({ hasTouch: true, isMobile: true, viewport: { width: 390, height: 844 } })
  test('two taps of a name open a field as high as a finger, all of it in sight', async ({ page }) => {
    await openSpark(page)
    await head(page, 's1b1').scrollIntoViewIfNeeded()
    const { x, y } = (await head(page, 's1b1').boundingBox())!
    await page.touchscreen.tap(x + 36, y + 12)
    await page.touchscreen.tap(x + 36, y + 12)
    await expect(field(page)).toBeFocused()
    const box = (await field(page).boundingBox())!
    expect(box.height).toBeGreaterThanOrEqual(44)
    expect(box.x).toBeGreaterThanOrEqual(0)
    expect(box.x + box.width).toBeLessThanOrEqual(390)
    await page.keyboard.type('ease in')
    await page.keyboard.press('Enter')
    await expect(stop(page, 's1b1')).toHaveAccessibleName(/^ease in/)
  })
})
