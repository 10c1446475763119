import type { Page } from '@playwright/test'
import { openRidewright } from './support/openRidewright.ts'
import { expect, test } from './support/test.ts'

const LIST = ['Low Tide, Salt Lantern, 3:45, 128', 'Tin Kettle, Odd Harbour, 4:10, 150', 'Slow Ferry, Odd Harbour, 3:20, 96'].join('\n')

async function bringIn(page: Page): Promise<void> {
  await page.getByRole('link', { name: 'songs' }).click()
  await page.getByRole('textbox', { name: 'songs' }).fill(LIST)
  await page.getByRole('button', { name: 'add 3 songs' }).click()
  await expect(page.getByRole('row')).toHaveCount(4)
}

const choose = (page: Page, title: string) => page.getByRole('checkbox', { name: `check ${title}` }).check()
const heads = (page: Page) => page.locator('.song-head')

test('songs checked make a new ride in the order they were chosen, in a slot that holds them', async ({ page }) => {
  await openRidewright(page)
  await bringIn(page)
  await choose(page, 'Tin Kettle')
  await choose(page, 'Low Tide')
  await choose(page, 'Slow Ferry')
  await page.getByRole('checkbox', { name: 'check Low Tide' }).uncheck()
  await choose(page, 'Low Tide')
  const chosen = page.getByRole('region', { name: 'checked songs' })
  await expect(chosen).toContainText('3 songs checked, 11:')
  await chosen.getByRole('button', { name: 'make a ride from 3 songs' }).click()
  await expect(heads(page)).toHaveText([/1\. Tin Kettle/, /2\. Slow Ferry/, /3\. Low Tide/])
  await expect(page.getByRole('complementary').getByLabel('class length')).toHaveValue('20')
})

test('songs chosen are added to the open ride as one step, and the shelf’s song stays its own', async ({ page }) => {
  await openRidewright(page)
  await page.getByRole('button', { name: /^Twenty-Minute Spark/ }).click()
  await expect(heads(page)).toHaveCount(6)
  await bringIn(page)
  await choose(page, 'Slow Ferry')
  await page.getByRole('button', { name: 'add to “Twenty-Minute Spark”' }).click()
  await expect(heads(page)).toHaveCount(7)
  await expect(heads(page).last()).toContainText('7. Slow Ferry')
  await page.getByRole('button', { name: 'undo' }).click()
  await expect(heads(page)).toHaveCount(6)
})
