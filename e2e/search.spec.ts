import type { Locator, Page } from '@playwright/test'
import type { Ride } from '#plan/model.ts'
import { demoRide } from '#tests/support/demoRides.ts'
import { button, choose, link, stop } from './actions/row.ts'
import { barriers } from './support/barriers.ts'
import { keepRides } from './support/keptRides.ts'
import { openRide } from './support/openRide.ts'
import { openRidewright } from './support/openRidewright.ts'
import { expect, test } from './support/test.ts'

const spark = demoRide('spark')

const box = (page: Page): Locator => page.getByRole('combobox', { name: /^(find anything|alles finden)$/ })
const rows = (page: Page, group: string): Locator => page.getByRole('group', { name: group }).getByRole('option')
const gone = (page: Page) => expect(page.getByRole('dialog')).toHaveCount(0)

async function openSpark(page: Page): Promise<void> {
  await openRidewright(page)
  await page.getByRole('button', { name: /^Twenty-Minute Spark/ }).click()
  await expect(page.locator('[data-block-id]').first()).toBeAttached()
}

/** Three ways to press: each is given what opens the box and what is chosen in it. */
const HANDS = [
  { hand: 'mouse', open: (page: Page) => button(page, 'shell.find').click(), take: (row: Locator) => row.click() },
  { hand: 'finger', open: (page: Page) => button(page, 'shell.find').tap(), take: (row: Locator) => row.tap() },
  {
    hand: 'key',
    open: (page: Page) => page.keyboard.press('Control+k'),
    take: async (row: Locator) => {
      // Down the list until it is this one.
      for (let step = 0; step < 30 && (await row.getAttribute('aria-selected')) !== 'true'; step++)
        await row.page().keyboard.press('ArrowDown')
      await expect(row).toHaveAttribute('aria-selected', 'true')
      await row.page().keyboard.press('Enter')
    },
  },
]

for (const { width, height } of [
  { width: 1440, height: 900 },
  { width: 390, height: 844 },
])
  test.describe(`at ${width} pixels`, () => {
    test.use({ viewport: { width, height }, hasTouch: true })

    for (const { hand, open, take } of HANDS)
      test(`what stands in this ride is gone to by ${hand}`, async ({ page }) => {
        await openSpark(page)
        await open(page)
        await box(page).fill('tin orch')
        await expect(rows(page, 'in this ride')).toHaveText([/^Tin Orchard Run/])
        await take(rows(page, 'in this ride').first())
        await gone(page)
        await expect(stop(page, 's3')).toBeFocused()
        await expect(stop(page, 's3')).toBeInViewport()
        await expect(page.locator('.draft-side')).toContainText('song 3')

        await open(page)
        await box(page).fill('rise hips saddle')
        await take(rows(page, 'in this ride').filter({ hasText: 'Rise. Hips' }))
        await gone(page)
        await expect(page.locator('.draft-side textarea:focus')).toHaveValue('Rise. Hips to the saddle and home, on fours.')
        await expect(page.locator('.draft-side textarea:focus')).toBeInViewport()

        await open(page)
        await box(page).fill('shoulder')
        await take(
          rows(page, 'in this ride')
            .filter({ hasText: /^shoulder roll/ })
            .first(),
        )
        await gone(page)
        await expect(page.locator('[data-stage-stop="block"]:focus')).toBeInViewport()
      })

    test('a song of other rides is found with its day and its place, and leads to it', async ({ page }) => {
      await openRidewright(page)
      const other = (id: string, title: string, location?: string): Ride => ({ ...spark, id, title, ...(location && { location }) })
      await keepRides(page, [other('old', 'Early Loop'), other('new', 'Late Loop', 'Quay Street')])
      await openRidewright(page)
      await button(page, 'shell.find').click()
      // Before anything is typed: the rides of late, the latest first.
      await expect(rows(page, 'recent rides')).toHaveText([/^Late Loop/, /^Early Loop/])
      await box(page).fill('magnesium')
      const uses = rows(page, 'in my rides')
      await expect(uses).toHaveText([/Late Loop · changed October 1, 2026 · Quay Street/, /Early Loop · changed September 30, 2026/])
      await uses.nth(1).click()
      await gone(page)
      await expect(page.locator('.app-title')).toContainText('Early Loop')
      await expect(stop(page, 's4')).toBeFocused()
      // The words of a cue lead to its very field.
      await page.keyboard.press('Control+k')
      await box(page).fill('sit keep it on')
      await rows(page, 'in other rides').first().click()
      await expect(page.locator('.app-title')).toContainText('Late Loop')
      await expect(page.locator('.draft-side textarea:focus')).toHaveValue('Sit, keep it on.')
    })

    test('checks, studio rules, songs and help are gone to', async ({ page }) => {
      await openRide(page, spark)
      await expect(page.locator('.app-title')).toBeVisible()

      await page.keyboard.press('Control+k')
      await box(page).fill('longest time standing')
      await rows(page, 'studio rules').first().click()
      await gone(page)
      await expect(page.getByLabel('longest time standing')).toBeFocused()
      await expect(page.getByLabel('longest time standing')).toBeInViewport()

      await link(page, 'plan').click()
      await page.keyboard.press('Control+k')
      await box(page).fill('recovery after it')
      await rows(page, 'checks').first().click()
      await gone(page)
      await expect(stop(page, 's2b5')).toBeFocused()
      await link(page, 'bikes & riders').click()
      await page.getByLabel('longest time standing').focus()

      // The key works in a field as well.
      await page.keyboard.press('Control+k')
      await box(page).fill('rhabdo')
      await rows(page, 'help').first().click()
      await gone(page)
      await expect(page.locator('.start-safety :focus')).toContainText('newcomers')

      await page.keyboard.press('Control+k')
      await box(page).fill('one level out')
      await rows(page, 'help').first().click()
      await expect(page.getByRole('dialog', { name: 'shortcuts' })).toBeVisible()
      await expect(page.locator('.app-keys :focus')).toContainText(/level out/i)
      await page.keyboard.press('Escape')

      await link(page, 'songs').click()
      await button(page, 'songs.add').click()
      await page.getByRole('dialog').getByLabel('title').fill('Übermut')
      await page.getByRole('dialog').getByLabel('length').fill('3:10')
      await page
        .getByRole('dialog')
        .getByRole('button', { name: /^(save|add)/ })
        .click()
      await gone(page)
      await link(page, 'log').click()
      await page.keyboard.press('Control+k')
      await box(page).fill('uebermut')
      await rows(page, 'my songs').first().click()
      await expect(page.getByRole('button', { name: 'edit Übermut' })).toBeFocused()
    })

    test('there are no barriers, and the count is told', async ({ page }) => {
      await openSpark(page)
      await button(page, 'shell.find').click()
      await box(page).fill('climb')
      await expect(page.locator('dialog [role="status"]').filter({ hasText: /^\d+ results/ })).toHaveCount(1)
      expect(await barriers(page)).toEqual([])
      await box(page).fill('xyzzyq')
      await expect(page.locator('dialog [role="status"]').filter({ hasText: 'Nothing found for “xyzzyq”.' })).toHaveCount(1)
      await expect(page.getByRole('dialog').getByRole('option')).toHaveCount(0)
      // What was typed is not kept.
      await page.keyboard.press('Escape')
      await button(page, 'shell.find').click()
      await expect(box(page)).toHaveValue('')
    })
  })

test('Escape and the key itself close it, and the focus is where it was', async ({ page }) => {
  await openSpark(page)
  await choose('s1b2')(page)
  for (const closing of ['Escape', 'Control+k']) {
    await page.keyboard.press('Control+k')
    await expect(box(page)).toBeFocused()
    await box(page).fill('t')
    await page.keyboard.press(closing)
    await gone(page)
    await expect(stop(page, 's1b2')).toBeFocused()
  }
})

test('an action is done on what had the focus, and one that cannot be done says why', async ({ page }) => {
  await openSpark(page)
  await choose('s1b2')(page)
  const before = await page.locator('[data-block-id]').count()
  await page.keyboard.press('Control+k')
  await box(page).fill('undo')
  const undo = rows(page, 'actions').filter({ hasText: 'There is nothing to undo.' })
  await expect(undo).toHaveAttribute('aria-disabled', 'true')
  await undo.click({ force: true })
  await expect(box(page)).toBeVisible()
  await box(page).fill('duplicate')
  await page.keyboard.press('Enter')
  await gone(page)
  await expect(page.locator('[data-block-id]')).toHaveCount(before + 1)
})

test('it is not offered while a class is led', async ({ page }) => {
  await openSpark(page)
  await link(page, 'teach').click()
  await expect(button(page, 'beforeClass.start')).toBeVisible()
  await expect(button(page, 'shell.find')).toHaveCount(0)
  await page.keyboard.press('Control+k')
  await expect(page.getByRole('status').filter({ hasText: 'Search is off on the teaching screen.' })).toHaveCount(1)
  await gone(page)
})

test('in German too, umlauts written out or not', async ({ page }) => {
  await openRide(page, { ...spark, title: 'Übung am Hügel', id: 'uebung' })
  await expect(page.locator('.app-title')).toBeVisible()
  await link(page, 'my rides').click()
  await page.getByLabel('language').selectOption('Deutsch')
  await expect(button(page, 'shell.find')).toHaveText('suchen')
  await page.keyboard.press('Control+k')
  for (const typed of ['ubung', 'uebung', 'Übung', 'huegel']) {
    await box(page).fill(typed)
    await expect(page.getByRole('group', { name: 'Rides', exact: true }).getByRole('option')).toHaveText([/^Übung am Hügel/])
  }
  await box(page).fill('unterrichten')
  await expect(rows(page, 'Aktionen').first()).toContainText('unterrichten')
})

test('many rides are found by their title on the start page', async ({ page }) => {
  await openRidewright(page)
  await keepRides(
    page,
    Array.from({ length: 9 }, (_, n) => ({ ...spark, id: `many${n}`, title: n === 4 ? 'Café am See' : `Loop ${n}` })),
  )
  await openRidewright(page)
  await expect(page.locator('.start-ride')).toHaveCount(9)
  await page.getByPlaceholder('title of a ride').fill('cafe')
  await expect(page.locator('.start-ride')).toHaveText([/^Café am See/])
  await page.getByPlaceholder('title of a ride').fill('nowhere')
  await expect(page.getByText('Nothing found for “nowhere”.')).toBeVisible()
})
