import type { Page } from '@playwright/test'
import { button, choose } from './actions/row.ts'
import { barriers } from './support/barriers.ts'
import { openRidewright } from './support/openRidewright.ts'
import { expect, test } from './support/test.ts'

const panel = (page: Page) => page.getByRole('dialog', { name: 'find and replace' })
const hits = (page: Page) => panel(page).locator('.replace-hit')
const find = (page: Page) => panel(page).getByRole('searchbox', { name: 'find' })
const by = (page: Page) => panel(page).getByRole('textbox', { name: 'replace with' })
const count = (page: Page) => panel(page).getByRole('status')

async function openSpark(page: Page): Promise<void> {
  await openRidewright(page)
  await page.getByRole('button', { name: /^Twenty-Minute Spark/ }).click()
  await expect(page.locator('[data-curve="intent"]')).toBeAttached()
}

test('by key: words are found, shown as they are and would be, seen on the stage, and replaced as one step', async ({ page }) => {
  await openSpark(page)
  const card = page.locator('[data-block-id="s1b2"]')
  await expect(card).toContainText('Quarter turn on.')
  await choose('s1b2')(page)
  await page.keyboard.press('Control+Shift+h')
  await expect(find(page)).toBeFocused()
  await page.keyboard.type('quarter turn')
  await expect(hits(page).first()).toContainText('Quarter turn')
  const found = await hits(page).count()
  expect(found).toBeGreaterThan(1)
  await page.keyboard.press('Tab')
  await page.keyboard.type('little')
  await expect(hits(page).first().locator('ins')).toHaveText('Little')
  await expect(card).toContainText('Little on.')
  expect(await barriers(page)).toEqual([])
  const take = panel(page).getByRole('button', { name: `replace ${found} places` })
  await take.focus()
  await page.keyboard.press('Enter')
  await expect(panel(page)).toHaveCount(0)
  await expect(card).toContainText('Little on.')
  expect(await button(page, 'ride.undo').getAttribute('title')).toContain(`Replaced “quarter turn” with “little” in ${found} places`)
  await page.keyboard.press('Control+z')
  await expect(card).toContainText('Quarter turn on.')
})

test('by mouse: a place that is not meant stays, and where to look is narrowed down', async ({ page }) => {
  await openSpark(page)
  await button(page, 'offer.replaceWords').click()
  await expect(find(page)).toBeFocused()
  await page.keyboard.type('flat')
  await expect(hits(page)).not.toHaveCount(0)
  const found = await hits(page).count()
  await panel(page).getByText('whole words').click()
  await panel(page).getByText('names', { exact: true }).click()
  const names = await hits(page).count()
  expect(names).toBeLessThanOrEqual(found)
  await by(page).fill('road')
  await hits(page).first().getByRole('checkbox').click()
  await expect(count(page)).toHaveText(`${names - 1} of ${names} places`)
  await panel(page)
    .getByRole('button', { name: /^replace/ })
    .click()
  await expect(panel(page)).toHaveCount(0)
  await page.getByRole('button', { name: /^undo/ }).click()
})

test.describe('on a phone', () => {
  test.use({ hasTouch: true, viewport: { width: 390, height: 844 } })
  test('a finger replaces words, and leaves it at that', async ({ page }) => {
    await openSpark(page)
    await button(page, 'offer.replaceWords').tap()
    await find(page).fill('zebra')
    expect(await panel(page).evaluate((element) => getComputedStyle(element).position)).toBe('fixed')
    const shown = (await panel(page).boundingBox())!
    expect(Math.round(shown.y + shown.height)).toBeLessThanOrEqual(844)
    await expect(count(page)).toHaveText('Nothing found.')
    await find(page).fill('climb')
    await by(page).fill('hill')
    await expect(hits(page)).not.toHaveCount(0)
    const box = (await hits(page).first().getByRole('checkbox').boundingBox())!
    expect(Math.min(box.width, box.height)).toBeGreaterThanOrEqual(44)
    await panel(page)
      .getByRole('button', { name: /^replace \d+ places/ })
      .tap()
    await expect(panel(page)).toHaveCount(0)
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390)
  })
})
