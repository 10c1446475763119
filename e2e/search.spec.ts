import type { Page } from '@playwright/test'
import { button, link, stop } from './actions/row.ts'
import { openRidewright } from './support/openRidewright.ts'
import { expect, test } from './support/test.ts'

const box = (page: Page) => page.getByRole('combobox', { name: 'find anything' })
const rows = (page: Page, group: string) => page.getByRole('group', { name: group }).getByRole('option')

async function openSpark(page: Page): Promise<void> {
  await openRidewright(page)
  await page.getByRole('button', { name: /^Twenty-Minute Spark/ }).click()
  await expect(page.locator('[data-block-id]').first()).toBeAttached()
}

test('the key opens it, Escape closes it, and the focus is where it was', async ({ page }) => {
  await openSpark(page)
  await stop(page, 's1b2').click({ position: { x: 12, y: 10 } })
  await expect(stop(page, 's1b2')).toBeFocused()
  await page.keyboard.press('Control+k')
  await expect(box(page)).toBeFocused()
  await page.keyboard.press('Escape')
  await expect(page.getByRole('dialog')).toHaveCount(0)
  await expect(stop(page, 's1b2')).toBeFocused()
})

for (const width of [1440, 390])
  test(`a song of this ride is found by its button, an action done by Enter: ${width}`, async ({ page }) => {
    await page.setViewportSize({ width, height: 844 })
    await openSpark(page)
    await button(page, 'shell.find').click()
    await box(page).fill('tin')
    await rows(page, 'in this ride').first().click()
    await expect(page.getByRole('dialog')).toHaveCount(0)
    await page.keyboard.press('Control+k')
    await box(page).fill('undo')
    await page.keyboard.press('Escape')
    await link(page, 'my rides').click()
    await button(page, 'shell.find').click()
  })
