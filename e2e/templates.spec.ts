import type { Page } from '@playwright/test'
import { smallRide } from '#tests/support/smallRide.ts'
import { barriers } from './support/barriers.ts'
import { openRide } from './support/openRide.ts'
import { expect, test } from './support/test.ts'

const dialog = (page: Page) => page.getByRole('dialog', { name: 'a new ride from this one' })
const title = (page: Page) => page.locator('.app-title-button')
const saved = (page: Page) => expect(page.locator('.app-saved')).toHaveText('saved')

async function openSaved(page: Page): Promise<void> {
  await openRide(page, { ...smallRide(), startsAt: '18:30' })
  await expect(title(page)).toHaveText('small ride')
  await expect(page.locator('[data-block-id]')).not.toHaveCount(0)
  await saved(page)
}

test('another ride begins from a saved one in two presses, and the old one stays', async ({ page }) => {
  await openSaved(page)
  const blocks = await page.locator('[data-block-id]').count()
  const address = page.url()
  await page.getByRole('link', { name: 'my rides' }).click()
  await page.getByRole('button', { name: 'new ride from small ride' }).click()
  await expect(dialog(page).getByLabel('title')).toHaveValue('small ride (copy)')
  expect(await barriers(page)).toEqual([])
  await dialog(page).getByRole('button', { name: 'start the ride' }).click()
  await expect(title(page)).toHaveText('small ride (copy)')
  expect(page.url()).not.toBe(address)
  await expect(page.locator('[data-block-id]')).toHaveCount(blocks)
  await saved(page)
  await page.getByRole('link', { name: 'my rides' }).click()
  await expect(page.locator('.start-ride')).toHaveCount(2)
})

test('by key, only the blocks come along: every song leaves a place, measured by the clock', async ({ page }) => {
  await openSaved(page)
  const blocks = await page.locator('[data-block-id]').count()
  await page.locator('[data-action="offer.newFromThis"]').focus()
  await page.keyboard.press('Enter')
  const field = dialog(page).getByLabel('title')
  await expect(field).toBeFocused()
  await field.fill('Silent hills')
  await page.keyboard.press('Tab')
  await page.keyboard.press('ArrowRight')
  await expect(dialog(page).getByText('Songs are left out.')).toBeVisible()
  await page.keyboard.press('Enter')
  await expect(title(page)).toHaveText('Silent hills')
  await expect(page.locator('[data-block-id]')).toHaveCount(blocks)
  await expect(page.locator('.ruler')).toHaveCount(0)
})

test('Escape begins nothing', async ({ page }) => {
  await openSaved(page)
  await page.locator('[data-action="offer.newFromThis"]').click()
  await page.keyboard.press('Escape')
  await expect(dialog(page)).toHaveCount(0)
  await expect(title(page)).toHaveText('small ride')
})

test.describe('by finger', () => {
  test.use({ hasTouch: true, isMobile: true, viewport: { width: 390, height: 844 } })

  test('another ride begins from the list', async ({ page }) => {
    await openSaved(page)
    await page.getByRole('link', { name: 'my rides' }).tap()
    await page.getByRole('button', { name: 'new ride from small ride' }).tap()
    await dialog(page).getByText('blocks only').tap()
    await dialog(page).getByRole('button', { name: 'start the ride' }).tap()
    await expect(title(page)).toHaveText('small ride (copy)')
  })
})
