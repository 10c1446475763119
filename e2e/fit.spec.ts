import type { Page } from '@playwright/test'
import { everyFinding } from '#e2e/support/everyFinding.ts'
import { barriers } from './support/barriers.ts'
import { press, tabTo } from './support/keyboard.ts'
import { openRidewright, ready } from './support/openRidewright.ts'
import { expect, test } from './support/test.ts'

const total = (page: Page) => page.getByTestId('slot').locator('[data-total]')
const seconds = async (page: Page) => Number(await total(page).getAttribute('data-total'))
const asked = (page: Page) => page.locator('[data-curve="intent"]')
const curve = async (page: Page) => (await asked(page).getAttribute('d')) ?? ''
const block = (page: Page, id: string) => page.locator(`[data-block-id="${id}"]`)
const undo = (page: Page) => page.getByRole('button', { name: 'undo' })

async function openDemo(page: Page, name: RegExp): Promise<void> {
  await openRidewright(page)
  await page.getByRole('button', { name }).click()
  await expect(asked(page)).toBeAttached()
}

async function setField(page: Page, label: string, text: string): Promise<void> {
  await page.getByLabel(label, { exact: true }).fill(text)
  await page.getByLabel(label, { exact: true }).press('Enter')
}

async function noFaults(page: Page): Promise<void> {
  expect(await barriers(page)).toEqual([])
}

test('the blocks of a section are fitted to its song, seen on the curve before they are', async ({ page }) => {
  await openDemo(page, /^Ridge and Return/)
  await page.locator('.song-head').filter({ hasText: 'Hedge Maze' }).click()
  await setField(page, 'play to', '58')
  const offer = page.getByRole('region', { name: 'fit blocks to the song' })
  await expect(offer.getByRole('listitem')).toHaveCount(6)
  const before = await curve(page)
  const length = await seconds(page)

  await offer.getByRole('button', { name: 'Fit the blocks' }).hover()
  await expect.poll(() => curve(page)).not.toBe(before)
  await page.mouse.move(10, 400)
  await expect.poll(() => curve(page)).toBe(before)

  await offer.getByRole('button', { name: 'Fit the blocks' }).click()
  await expect(offer).toHaveCount(0)
  await expect.poll(() => seconds(page)).toBeLessThan(length)
  await page.mouse.move(10, 400)
  await undo(page).click()
  await expect.poll(() => curve(page)).toBe(before)
})

test('a ride is fitted to its slot: shown, left, taken, and undone in one step', async ({ page }) => {
  await openDemo(page, /^Ridge and Return/)
  await setField(page, 'class length', '43')
  const before = await curve(page)
  const ask = page.getByRole('button', { name: 'fit to class length' })
  await ask.click()
  const offer = page.getByRole('dialog', { name: 'fit to class length' })
  await expect(offer).toContainText('43 s over')
  await expect(offer.getByRole('listitem')).not.toHaveCount(0)
  await expect.poll(() => curve(page)).not.toBe(before)
  await expect.poll(() => seconds(page)).toBeLessThanOrEqual(43 * 60)
  await noFaults(page)

  await press(page, 'Escape')
  await expect(offer).toHaveCount(0)
  await expect(ask).toBeFocused()
  await expect.poll(() => curve(page)).toBe(before)

  await ask.click()
  await offer.getByRole('button', { name: 'use', exact: true }).click()
  await expect(offer).toHaveCount(0)
  const fitted = await seconds(page)
  expect(fitted).toBeLessThanOrEqual(43 * 60)
  expect(fitted).toBeGreaterThanOrEqual(43 * 60 - 20)
  await undo(page).click()
  await expect.poll(() => curve(page)).toBe(before)
})

test('the 30-minute version of a 45-minute class, by keyboard, is a ride of its own that leads back', async ({ page }) => {
  await openDemo(page, /^Ridge and Return/)
  await tabTo(page, page.getByRole('button', { name: 'shorter or longer version' }))
  await press(page, 'Enter')
  const offer = page.getByRole('dialog', { name: 'a shorter or longer version' })
  await expect(offer).toContainText('30 minutes instead of 45.')
  await expect(offer).toContainText('Warm-up')
  await expect(offer.getByText(/is left out/).first()).toBeVisible()
  await expect.poll(() => seconds(page)).toBeLessThanOrEqual(30 * 60)
  await noFaults(page)

  await tabTo(page, offer.getByRole('button', { name: 'save as a new ride' }))
  await press(page, 'Enter')
  await expect(offer).toHaveCount(0)
  await expect(page.getByRole('heading', { name: 'Ridge and Return (30 min)' })).toBeVisible()
  await expect.poll(() => seconds(page)).toBeGreaterThanOrEqual(30 * 60 - 20)

  await expect(page.getByText('saved', { exact: true })).toBeVisible()
  await page.reload()
  await ready(page)
  await page
    .locator('.panel')
    .getByRole('button', { name: /^made from Ridge and Return/ })
    .click()
  await expect.poll(() => seconds(page)).toBeGreaterThan(43 * 60)
})

test('a swapped song says what falls off its end before it is taken', async ({ page }) => {
  await openDemo(page, /^Ridge and Return/)
  await page.locator('.song-head').filter({ hasText: 'Hedge Maze' }).click()
  await page.locator('summary').filter({ hasText: 'replace the song' }).click()
  await setField(page, 'new title', 'Copper Weather')
  await setField(page, 'new tempo', '150')
  await setField(page, 'new length', '3:00')
  const panel = page.locator('.panel')
  await expect(panel).toContainText('All 8 blocks keep their counts, 64 eights in all.')
  await expect(panel).toContainText('All of “ease” falls off the end (8 eights).')
  await expect(panel).toContainText('The ride ends at 43:28, 1:32 under class length.')
  await expect(page.locator('.song-head').nth(2)).toContainText('Hedge Maze')

  await panel.getByRole('button', { name: 'replace the song' }).click()
  await expect(page.locator('.song-head').nth(2)).toContainText('Copper Weather')
  await expect(page.locator('.findings')).toContainText('run 8 eights past its end point')
})

test('a wrong number in a cue is mended in one press, and a form point added in another', async ({ page }) => {
  await openDemo(page, /^Ridge and Return/)
  await block(page, 's3b2').click()
  await page.getByRole('textbox', { name: 'cue 1, words' }).fill('Half turn on, hill one.')
  await page.getByRole('textbox', { name: 'cue 1, words' }).press('Enter')
  await expect(page.locator('.panel-speech').first()).toContainText(/needs \d+\.\d s, has \d+ s · at 6:42, song 0:23/)
  await page.locator('.panel').getByRole('button', { name: 'Say “Three quarters of a turn on, hill one.”' }).click()
  await expect(page.getByRole('textbox', { name: 'cue 1, words' })).toHaveValue('Three quarters of a turn on, hill one.')
  await expect(block(page, 's3b2')).toContainText('Three quarters of a turn on, hill one.')

  await block(page, 's1b2').click()
  await page.getByRole('button', { name: /^form cue “/ }).click()
  await expect(page.getByLabel('cue 2, moment')).toHaveValue('form')
  await noFaults(page)
})

test('words typed without a moment begin with their block, are checked when they are said, and go where their moment stands', async ({
  page,
}) => {
  await openDemo(page, /^Ridge and Return/)
  await block(page, 's11b2').click()
  const cues = page.getByRole('region', { name: 'cues' })
  const typed = page.getByRole('textbox', { name: 'add a cue' })
  await typed.fill('Forty seconds to go.')
  await typed.press('Enter')
  // Twenty-two seconds of push, and the words begin with it.
  await expect(cues.getByLabel('cue 2, moment')).toHaveValue('form')
  await expect(cues.getByLabel('cue 2, finishes before the change')).toHaveValue('as it begins')
  await cues.getByRole('button', { name: 'Say “Twenty seconds to go.”' }).click()
  await expect(cues.getByRole('textbox', { name: 'cue 2, words' })).toHaveValue('Twenty seconds to go.')
  await expect(cues).not.toContainText('where the plan is')

  // A story is always there, and says what it lacks.
  await expect(cues.getByRole('textbox', { name: 'add a story' })).toBeVisible()
  await expect(cues).toContainText(/No room for a story here: \d+ s free at most\./)

  // As an announcement it stands before the change, and so before the other words.
  await cues.getByLabel('cue 2, moment').focus()
  await cues.getByLabel('cue 2, moment').selectOption('preview')
  await expect(cues.getByLabel('cue 2, finishes before the change')).toHaveValue('32 counts')
  await typed.focus()
  await expect(cues.getByRole('textbox', { name: 'cue 1, words' })).toHaveValue('Twenty seconds to go.')
  await page.getByRole('button', { name: 'undo' }).click()
  await expect(cues.getByLabel('cue 2, finishes before the change')).toHaveValue('as it begins')
  await page.getByRole('button', { name: 'undo' }).click()
  await expect(cues.getByRole('textbox', { name: 'cue 2, words' })).toHaveValue('Forty seconds to go.')
  await noFaults(page)
})

test('form points of one’s own are there on the next visit', async ({ page }) => {
  await openDemo(page, /^Ridge and Return/)
  await page.locator('summary').filter({ hasText: 'form cues' }).click()
  await page.getByLabel('form cues, one per line').fill('Heels quiet.\nEyes up.')
  await page.getByLabel('form cues, one per line').blur()
  // Folded, it says what it holds.
  await page.locator('summary').filter({ hasText: 'form cues' }).click()
  await expect(page.locator('summary').filter({ hasText: 'form cues' })).toContainText('2, in turn')
  await page.reload()
  await ready(page)
  await expect(page.locator('summary').filter({ hasText: 'form cues' })).toContainText('2, in turn')
  await block(page, 's1b2').click()
  await expect(page.getByRole('button', { name: /^form cue “(Heels quiet|Eyes up)\.”$/ })).toBeVisible()
})

test('a check that is intentional is hidden, stays so, and comes back', async ({ page }) => {
  await openDemo(page, /^Twenty-Minute Spark/)
  const findings = page.locator('.findings')
  const row = (await everyFinding(page)).filter({ hasText: '15 s of recovery' }).first()
  await row.getByRole('button', { name: /This is intentional/ }).click()
  await expect(findings).toContainText('hidden (1)')
  await expect(page.getByText('saved', { exact: true })).toBeVisible()
  await page.reload()
  await ready(page)
  await findings.getByText('hidden (1)').click()
  await findings.getByRole('button', { name: 'unhide' }).click()
  await expect(findings).not.toContainText('hidden (')
})

for (const theme of ['light', 'dark'] as const) {
  test(`shape and findings have no accessibility faults that can be found by machine, ${theme}`, async ({ page }) => {
    await page.emulateMedia({ colorScheme: theme })
    await openDemo(page, /^Twenty-Minute Spark/)
    await everyFinding(page)
    await page
      .getByRole('button', { name: /^This is intentional/ })
      .first()
      .click()
    await page.getByText('hidden (1)').click()
    await expect(page.getByRole('heading', { name: 'shape' })).toBeVisible()
    await noFaults(page)
  })
}
