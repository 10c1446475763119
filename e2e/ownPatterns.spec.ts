import type { Locator, Page } from '@playwright/test'
import { barriers } from './support/barriers.ts'
import { drag } from './support/drag.ts'
import { openRidewright } from './support/openRidewright.ts'
import { expect, test } from './support/test.ts'

const blocks = (page: Page) => page.locator('[data-block-id]')
const stop = (page: Page, id: string) => page.locator(`[data-stage-stop][data-id="${id}"]`)
const mine = (page: Page) => page.getByRole('group', { name: 'my patterns' })
const own = (page: Page, name: string): Locator => mine(page).getByRole('button', { name, exact: true })
const dialog = (page: Page) => page.getByRole('dialog', { name: 'save as a pattern' })

async function openSpark(page: Page): Promise<number> {
  await openRidewright(page)
  await page.getByRole('button', { name: /^Twenty-Minute Spark/ }).click()
  await expect(stop(page, 's1b2')).toBeAttached()
  return blocks(page).count()
}

async function keep(page: Page, name: string): Promise<void> {
  await stop(page, 's1b2').click({ position: { x: 12, y: 10 } })
  await page.keyboard.press('k')
  await dialog(page).getByLabel('name').fill(name)
  await page.keyboard.press('Enter')
  await expect(own(page, name)).toBeVisible()
}

test('a block is saved as a pattern by key, under its own label unless another is given, and used by click and key', async ({ page }) => {
  const before = await openSpark(page)
  await expect(mine(page)).toHaveCount(0)
  await stop(page, 's1b2').click({ position: { x: 12, y: 10 } })
  await page.keyboard.press('k')
  const name = dialog(page).getByLabel('name')
  await expect(name).toBeFocused()
  await expect(name).not.toHaveValue('')
  expect(await barriers(page)).toEqual([])
  await name.fill('  ')
  await page.keyboard.press('Enter')
  await expect(dialog(page).getByRole('alert')).toHaveText('Give it a name.')
  await name.fill('Monday opener')
  await page.keyboard.press('Enter')
  await expect(dialog(page)).toHaveCount(0)
  await expect(stop(page, 's1b2')).toBeFocused()

  await own(page, 'Monday opener').click()
  await expect(blocks(page)).toHaveCount(before + 1)
  await own(page, 'Monday opener').focus()
  await page.keyboard.press('Enter')
  await expect(blocks(page)).toHaveCount(before + 2)
  await page.keyboard.press('ControlOrMeta+z')
  await page.keyboard.press('ControlOrMeta+z')
  await expect(blocks(page)).toHaveCount(before)
  expect(await barriers(page)).toEqual([])
})

test('a run of blocks is saved by its button, and dragged onto the stage as one step', async ({ page }) => {
  const before = await openSpark(page)
  await stop(page, 's1b1').click({ position: { x: 12, y: 10 } })
  await stop(page, 's1b2').click({ modifiers: ['Shift'], position: { x: 12, y: 10 } })
  await page.getByRole('button', { name: 'save as pattern' }).click()
  await dialog(page).getByLabel('name').fill('Two in a row')
  await dialog(page).getByRole('button', { name: 'save', exact: true }).click()
  await drag(page, own(page, 'Two in a row'), stop(page, 's1b2'))
  await expect(blocks(page)).toHaveCount(before + 2)
  await page.keyboard.press('ControlOrMeta+z')
  await expect(blocks(page)).toHaveCount(before)

  // Let go of in the air, nothing is added.
  await drag(page, own(page, 'Two in a row'), stop(page, 's1b2'), { release: false })
  await expect(blocks(page)).toHaveCount(before + 2)
  await page.keyboard.press('Escape')
  await page.mouse.up()
  await expect(blocks(page)).toHaveCount(before)
})

test('blocks that stand apart are no pattern, and the button says so', async ({ page }) => {
  await openSpark(page)
  await stop(page, 's1b1').click({ position: { x: 12, y: 10 } })
  await page
    .locator('[data-stage-stop="block"]')
    .nth(5)
    .click({ modifiers: ['ControlOrMeta'], position: { x: 12, y: 10 } })
  await expect(page.getByRole('button', { name: 'save as pattern' })).toBeDisabled()
  await expect(page.getByRole('button', { name: 'save as pattern' })).toHaveAttribute('title', /side by side in one song/)
})

test('a pattern is renamed, deleted and brought back, is there after a reload, and in another window at once', async ({
  page,
  context,
}) => {
  await openSpark(page)
  const other = await context.newPage()
  await openRidewright(other)
  await other.getByRole('button', { name: /^Twenty-Minute Spark/ }).click()
  await keep(page, 'Long hill')
  await expect(own(other, 'Long hill')).toBeVisible()
  await page.getByRole('button', { name: 'edit my patterns' }).click()
  const field = mine(page).getByLabel('name of Long hill')
  await field.fill('Longer hill')
  await field.press('Enter')
  await expect(own(other, 'Longer hill')).toBeVisible()
  await page.reload()
  await expect(own(page, 'Longer hill')).toBeVisible()
  await page.getByRole('button', { name: 'edit my patterns' }).click()
  await page.getByRole('button', { name: 'delete Longer hill' }).click()
  await expect(mine(page)).toHaveCount(0)
  await expect(mine(other)).toHaveCount(0)
  await page.getByRole('button', { name: 'undo', exact: true }).last().click()
  await expect(own(page, 'Longer hill')).toBeVisible()
})

test('the same name twice is refused', async ({ page }) => {
  await openSpark(page)
  await keep(page, 'Twin')
  await stop(page, 's1b2').click({ position: { x: 12, y: 10 } })
  await page.keyboard.press('k')
  await dialog(page).getByLabel('name').fill('Twin')
  await page.keyboard.press('Enter')
  await expect(dialog(page).getByRole('alert')).toHaveText('You already have a pattern called “Twin”.')
  await page.keyboard.press('Escape')
  await expect(dialog(page)).toHaveCount(0)
})

test.describe('by finger', () => {
  test.use({ hasTouch: true, isMobile: true, viewport: { width: 390, height: 844 } })

  test('a pattern is saved and used, and many stay in one row', async ({ page }) => {
    const before = await openSpark(page)
    for (const name of ['One of a dozen', 'Another of a dozen', 'A third of a dozen']) {
      await stop(page, 's1b2').tap({ position: { x: 12, y: 10 } })
      await page.getByRole('button', { name: 'save as pattern' }).tap()
      await dialog(page).getByLabel('name').fill(name)
      await dialog(page).getByRole('button', { name: 'save', exact: true }).tap()
      await expect(own(page, name)).toBeAttached()
    }
    const row = (await page.locator('.own-row').boundingBox())!
    expect(row.height).toBeLessThan(80)
    expect(row.x + row.width).toBeLessThanOrEqual(390)
    expect((await own(page, 'Another of a dozen').boundingBox())!.height).toBeGreaterThanOrEqual(44)
    await own(page, 'Another of a dozen').tap()
    await expect(blocks(page)).toHaveCount(before + 1)
  })
})
