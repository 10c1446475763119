import type { Page } from '@playwright/test'
import { everyFinding } from '#e2e/support/everyFinding.ts'
import { barriers } from './support/barriers.ts'
import { drawLate } from './support/drawLate.ts'
import { openRidewright, ready } from './support/openRidewright.ts'
import { expect, test } from './support/test.ts'

const saved = (page: Page) => page.getByText('saved', { exact: true })
const places = (page: Page) => page.getByRole('navigation', { name: 'places' })
const goTo = (page: Page, name: string) => places(page).getByRole('link', { name }).click()
const showPart = (page: Page, name: string) => page.locator('.setup-head label').getByText(name, { exact: true }).click()
const demandLine = (page: Page) => page.locator('[data-curve="demand"]').first()

async function openRide(page: Page): Promise<void> {
  await openRidewright(page)
  await page.getByRole('button', { name: /^Ridge and Return/ }).click()
  await expect(page.getByText('sample, not saved yet')).toBeVisible()
}

test('a rider’s numbers move the demand line, and the way back brings it back', async ({ page }) => {
  await openRide(page)
  await expect(demandLine(page)).toHaveAttribute('d', /^M/)
  const before = await demandLine(page).getAttribute('d')
  await page.getByRole('button', { name: 'change the riders' }).click()
  const uptake = page.getByLabel('VO2 max of the regular rider')
  await uptake.fill('a lot')
  await uptake.press('Enter')
  await expect(page.getByText('VO2 max must be a number, such as 40.')).toBeVisible()
  await uptake.fill('33')
  await uptake.press('Enter')
  await goTo(page, 'plan')
  await expect(demandLine(page)).toHaveAttribute('d', /^M/)
  await expect(demandLine(page)).not.toHaveAttribute('d', before!)
  await page.getByRole('button', { name: 'undo' }).click()
  await expect(demandLine(page)).toHaveAttribute('d', before!)
})

test('a bike calibrated by its watts is seen before it is taken, kept, and there after a reload for other rides', async ({ page }) => {
  // What is read off the console is typed without looking up, field after field.
  await drawLate(page)
  await openRide(page)
  await page.getByRole('button', { name: 'change or calibrate the bike' }).click()
  await page.getByRole('button', { name: 'by the console’s watts' }).click()
  await expect(page.getByText('Set the knob to base, 2 turns.')).toBeVisible()
  await page.getByLabel('watts shown at 2', { exact: true }).focus()
  for (const watts of ['61', '135']) {
    await page.keyboard.type(watts)
    await page.keyboard.press('Enter')
  }
  await expect(page.getByLabel('watts shown at 4', { exact: true })).toBeFocused()
  await page.getByRole('button', { name: 'skip this one' }).click()
  await expect(page.getByText('Set the knob to 5 turns.')).toBeVisible()
  await page.keyboard.type('280')
  await page.keyboard.press('Enter')
  await expect(page.getByText('For the regular rider it changes most in')).toBeVisible()
  await page.getByRole('button', { name: 'use this calibration' }).click()
  await expect(page.getByLabel('watts at 3', { exact: true })).toHaveValue('135')
  await page.getByRole('button', { name: /^save Lanternfish/ }).click()
  await expect(page.getByText('in this ride', { exact: true })).toBeVisible()
  await expect(saved(page)).toBeVisible()

  await page.reload()
  await ready(page)
  await expect(page.getByText('in this ride', { exact: true })).toBeVisible()
  await page.getByRole('link', { name: 'my rides' }).click()
  await expect(page.getByLabel('bike').locator('option:checked')).toHaveText('Lanternfish, main room')
  await page.getByRole('button', { name: /^Twenty-Minute Spark/ }).click()
  await goTo(page, 'bikes & riders')
  await page.getByRole('button', { name: 'use Lanternfish, main room for this ride' }).click()
  await expect(page.getByLabel('watts at 3', { exact: true })).toHaveValue('135')
})

test('two all-out trials give a rider’s critical power, which the class is then judged by, and stay for a third', async ({ page }) => {
  await openRide(page)
  await goTo(page, 'bikes & riders')
  await showPart(page, 'riders')
  const part = page.getByRole('region', { name: 'critical power from a test' })
  await expect(part.getByText('not for first-timers')).toBeVisible()
  await part.getByLabel('length of a new trial').focus()
  for (const typed of ['3:00', '283', '12:00', '213']) {
    await page.keyboard.type(typed)
    await page.keyboard.press('Enter')
    // A length is followed by Tab; after the watts the next trial is at hand.
    if (typed.includes(':')) await page.keyboard.press('Tab')
  }
  await expect(part.getByLabel('length of a new trial')).toBeFocused()
  await expect(part.getByText('Critical power 190 watts; reserve 16.8 kJ.')).toBeVisible()
  await expect(part.getByText('Two trials always fit.')).toBeVisible()
  await part.getByRole('button', { name: 'use these for the regular rider' }).click()
  await expect(part.getByText('used for the regular rider')).toBeVisible()
  await expect(page.getByLabel('critical power of the regular rider', { exact: true })).toHaveValue('190')
  await expect(page.getByLabel('where critical power and reserve of the regular rider come from')).toHaveValue('tested')
  for (const [which, beats] of [
    ['first', '125'],
    ['second', '158'],
  ] as const) {
    await page.getByLabel(`${which} threshold of the regular rider`).fill(beats)
    await page.keyboard.press('Enter')
  }
  await expect(saved(page)).toBeVisible()
  await page.reload()
  await ready(page)
  await goTo(page, 'plan')
  const riders = page.getByRole('region', { name: 'riders, estimated' })
  await expect(riders.getByRole('row', { name: /^between thresholds/ })).toContainText(/\d:\d\d/)
  await goTo(page, 'bikes & riders')
  await showPart(page, 'riders')
  await expect(part.getByLabel('watts of trial 2')).toHaveValue('213')
  await part.getByLabel('length of a new trial').fill('6:00')
  await part.getByLabel('watts of a new trial').fill('262')
  await page.keyboard.press('Enter')
  await expect(part.getByText('These trials don’t agree')).toBeVisible()
})

test('studio rules change what is found, and a move to avoid is found with another way to ride it', async ({ page }) => {
  await openRide(page)
  await expect(page.getByText('without sitting down')).toHaveCount(0)
  await goTo(page, 'bikes & riders')
  await showPart(page, 'studio rules')
  await page.getByLabel('longest time standing', { exact: true }).fill('30')
  await page.getByLabel('longest time standing', { exact: true }).press('Enter')
  await page.getByLabel('avoid another move').fill('shoulder roll')
  await page.getByLabel('avoid another move').press('Enter')
  await goTo(page, 'plan')
  const rows = await everyFinding(page)
  await expect(page.getByText('without sitting down; 30 s is the most.').first()).toBeVisible()
  const avoided = rows.filter({ hasText: 'which this room doesn’t do' }).first()
  await expect(avoided).toBeVisible()
  await avoided.getByRole('button', { name: /^Leave out “shoulder roll/ }).click()
  await expect(page.getByText('which this room doesn’t do')).toHaveCount(0)
})

test('the place has no barriers that a machine can find, light and dark, wide and narrow', async ({ page }) => {
  await openRide(page)
  await goTo(page, 'bikes & riders')
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme })
    for (const width of [1440, 390]) {
      await page.setViewportSize({ width, height: 900 })
      for (const part of ['riders', 'studio rules', 'bike']) {
        await showPart(page, part)
        expect(await barriers(page), part).toEqual([])
      }
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width)
    }
  }
})
