import type { Locator, Page } from '@playwright/test'
import type { Block, Ride } from '#plan/model.ts'
import { blankRide } from '#plan/newRide.ts'
import { gridOfTempo } from '#plan/songs/beatGrid.ts'
import { aBlock, aSection, aSong } from '#tests/support/smallRide.ts'
import { barriers } from './support/barriers.ts'
import { tabTo } from './support/keyboard.ts'
import { openRide } from './support/openRide.ts'
import { expect, test } from './support/test.ts'

const GLASS = { title: 'Slow Glass', artist: 'Pier Four', grid: gridOfTempo(120), lengthSeconds: 128 }

const hill = (id: string, counts: number, total: number, effort: number): Block =>
  aBlock(id, {
    terrain: 'hill',
    length: { counts },
    resistance: { kind: 'total', from: total, to: total },
    effort: { from: effort, to: effort },
  })

const rideOf = (id: string, title: string, sections: Ride['sections']): Ride => ({ ...blankRide({ newId: () => id, title }), sections })

/** The song planned whole: 32 eights. */
const waves = rideOf('waves', 'Thursday Waves', [
  aSection('glass', { song: aSong('s1', GLASS), blocks: [hill('roll', 128, 2, 4), hill('climb', 64, 6, 7), hill('top', 64, 8, 8)] }),
])

/** The same song, empty, and another one that is faster and shorter. */
const friday = rideOf('friday', 'Friday Draft', [
  aSection('glass2', { song: aSong('s2', { ...GLASS, title: 'slow glass' }) }),
  aSection('tin', { song: aSong('s3', { title: 'Fast Tin', grid: gridOfTempo(160), lengthSeconds: 48 }) }),
])

const blocks = (page: Page) => page.locator('[data-block-id]')
const panel = (page: Page) => page.locator('.panel')
const plans = (page: Page): Locator => panel(page).locator('.song-plan')
const song = (page: Page, name: string) => page.locator('.song-head').filter({ hasText: name })

/** Opens another ride's file from the page of all rides. */
async function openNext(page: Page, ride: Ride): Promise<void> {
  await page.getByRole('link', { name: 'my rides' }).click()
  const file = { name: `${ride.id}.ride.json`, mimeType: 'application/json', buffer: Buffer.from(JSON.stringify(ride)) }
  await page.locator('input[type="file"][accept^=".json"]').first().setInputFiles(file)
}

/** Teaches the ride: logs it as it is, with stars for its song. */
async function teach(page: Page, ride: Ride): Promise<void> {
  await page.clock.setFixedTime(new Date('2026-11-25T19:30:00Z'))
  await openRide(page, ride)
  await page.getByRole('link', { name: 'log', exact: true }).click()
  await page.getByRole('button', { name: /as taught/ }).click()
  await page.getByLabel('1 Slow Glass: stars').selectOption('4')
  await page.getByRole('button', { name: 'save to log' }).click()
  await expect(page.getByRole('button', { name: /as taught/ })).toBeVisible()
}

test('a song that was taught offers its plan in a new ride: seen first, used, and undone', async ({ page }) => {
  await teach(page, waves)
  await openNext(page, friday)
  await expect(blocks(page)).toHaveCount(0)
  await song(page, 'slow glass').click()
  await expect(panel(page).locator('summary').filter({ hasText: 'ridden before' })).toContainText('1 plan')
  await expect(plans(page)).toHaveCount(1)
  await expect(plans(page)).toContainText('Thursday Waves')
  await expect(plans(page)).toContainText('taught Nov 25, 2026 · 4 stars')
  await expect(plans(page)).toContainText('Fits as it is.')
  const use = plans(page).getByRole('button', { name: /^use this plan/ })
  await use.hover()
  await expect(blocks(page)).toHaveCount(3)
  await page.mouse.move(5, 5)
  await expect(blocks(page)).toHaveCount(0)
  await use.click()
  await expect(blocks(page)).toHaveCount(3)
  await expect(plans(page)).toContainText('This is what the song has now.')
  await page.keyboard.press('ControlOrMeta+z')
  await expect(blocks(page)).toHaveCount(0)
  expect(await barriers(page)).toEqual([])
})

test('what was taught stays as it was, whatever becomes of the ride; the ride as it is now is a plan of its own', async ({ page }) => {
  await teach(page, waves)
  await page.getByRole('link', { name: 'plan', exact: true }).click()
  await page.locator('[data-stage-stop="block"]').last().click()
  await page.keyboard.press('Delete')
  await expect(blocks(page)).toHaveCount(2)
  await song(page, 'Slow Glass').click()
  await panel(page).locator('summary').filter({ hasText: 'ridden before' }).click()
  await plans(page)
    .getByRole('button', { name: /^use this plan/ })
    .click()
  await expect(blocks(page)).toHaveCount(3)
  await page.keyboard.press('ControlOrMeta+z')
  await expect(page.getByText('saved', { exact: true }).first()).toBeVisible()
  await openNext(page, friday)
  await song(page, 'slow glass').click()
  await expect(plans(page)).toHaveCount(2)
  await expect(plans(page).nth(0)).toContainText('taught')
  await expect(plans(page).nth(1)).toContainText('planned, not taught yet')
  await expect(plans(page).nth(1)).toContainText('The last 8 eights of the song stay empty.')
})

test('on another song of another tempo and length it says what it changed; all by keys', async ({ page }) => {
  await teach(page, waves)
  await openNext(page, friday)
  await song(page, 'Fast Tin').click()
  const other = panel(page).locator('summary').filter({ hasText: 'use another song’s plan' })
  await tabTo(page, other)
  await page.keyboard.press('Enter')
  const find = panel(page).getByRole('searchbox')
  await tabTo(page, find)
  await page.keyboard.type('nothing like it')
  await expect(panel(page).getByText('No plan found.')).toBeVisible()
  await find.fill('pier thursday')
  await expect(plans(page)).toContainText('Slow Glass, in “Thursday Waves”')
  await expect(plans(page)).toContainText('Shortened to fit: “roll” from 16 eights to 6 eights, “climb” from 8 eights to 5 eights')
  await expect(plans(page)).toContainText('Cadence is 80 rpm (on the beat), was 60.')
  await tabTo(page, plans(page).getByRole('button', { name: /^use this plan/ }))
  await expect(blocks(page)).toHaveCount(3)
  await page.keyboard.press('Enter')
  await expect(blocks(page)).toHaveCount(3)
  await page.keyboard.press('ControlOrMeta+z')
  await expect(blocks(page)).toHaveCount(0)
})

test('a song that is put in brings its plan along in one step', async ({ page }) => {
  await teach(page, waves)
  await page.getByRole('link', { name: 'plan', exact: true }).click()
  await song(page, 'Slow Glass').click()
  await panel(page).getByRole('button', { name: 'add to my songs' }).click()
  await expect(panel(page).getByRole('button', { name: 'update it in my songs' })).toBeVisible()
  await openNext(page, friday)
  await song(page, 'Fast Tin').click()
  await panel(page).locator('summary').filter({ hasText: 'replace the song' }).click()
  await panel(page).getByRole('button', { name: 'Slow Glass, Pier Four' }).click()
  await plans(page)
    .getByRole('button', { name: /^replace the song and use this plan/ })
    .click()
  await expect(blocks(page)).toHaveCount(3)
  await expect(page.locator('.song-head').nth(1)).toContainText('Slow Glass')
  await page.keyboard.press('ControlOrMeta+z')
  await expect(blocks(page)).toHaveCount(0)
  await expect(page.locator('.song-head').nth(1)).toContainText('Fast Tin')

  // My songs shows what it was ridden with, and changes nothing.
  await page.getByRole('link', { name: 'songs', exact: true }).click()
  await page
    .getByRole('button', { name: /Slow Glass/ })
    .first()
    .click()
  const use = page.getByRole('region', { name: 'where it is used' })
  await expect(use).toContainText('Thursday Waves')
  await expect(use).toContainText('taught Nov 25, 2026 · 4 stars')
  expect(await barriers(page)).toEqual([])
})

test.describe('by finger', () => {
  test.use({ hasTouch: true, viewport: { width: 390, height: 844 } })
  test('a plan is used and undone', async ({ page }) => {
    await teach(page, waves)
    await openNext(page, friday)
    await song(page, 'slow glass').tap()
    await plans(page)
      .getByRole('button', { name: /^use this plan/ })
      .tap()
    await expect(blocks(page)).toHaveCount(3)
    expect(await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)).toBe(0)
    await page.getByRole('button', { name: 'undo' }).first().tap()
    await expect(blocks(page)).toHaveCount(0)
  })
})
