import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Page } from '@playwright/test'
import { killAgainAndAgain } from './support/killing.ts'
import { openRidewright, ready } from './support/openRidewright.ts'
import { expect, test } from './support/test.ts'
import { editTogether, fieldOf, openInTwo, setText } from './support/twoWindows.ts'

const SAVED = 'saved'
const state = (page: Page) => page.locator('.app-saved')
const title = (page: Page) => page.getByLabel('title', { exact: true })
const heading = (page: Page) => page.locator('.app-title-button')

/** Opens a demo ride, makes it one's own by a title, and leaves the focus in its field. */
async function openOwn(page: Page): Promise<void> {
  await openRidewright(page)
  await page.getByRole('button', { name: /^Twenty-Minute Spark/ }).click()
  await heading(page).click()
  await setText(title(page), 'My Ride')
  await expect(state(page)).toHaveText(SAVED)
}

test('words in a field count as not saved, and are kept by a reload, by Back, and by closing the page', async ({ page, context }) => {
  await openOwn(page)
  await title(page).pressSequentially(', reloaded')
  await expect(state(page)).toHaveText('typing, not saved yet')
  await page.reload()
  await ready(page)
  await expect(heading(page)).toHaveText('My Ride, reloaded')
  await expect(state(page)).toHaveText(SAVED)

  await page.getByRole('link', { name: 'print', exact: true }).click()
  await page.getByRole('link', { name: 'plan', exact: true }).click()
  await heading(page).click()
  await setText(title(page), 'Left by Back', { leave: false })
  await page.goBack()
  await expect(heading(page)).toHaveText('Left by Back')

  await heading(page).click()
  await setText(title(page), 'Closed', { leave: false })
  await page.close({ runBeforeUnload: true })
  const again = await context.newPage()
  await openRidewright(again)
  await expect(heading(again)).toHaveText('Closed')
})

test('words that a field refuses come back to it, with what they are about', async ({ page }) => {
  await openOwn(page)
  await page.locator('[data-stage-stop]').first().click()
  await page.keyboard.press('ArrowDown')
  const field = page.getByLabel('length', { exact: true }).first()
  const before = await field.inputValue()
  await field.fill('quite long')
  await page.reload()
  await ready(page)
  await expect(field).toHaveValue('quite long')
  await expect(page.getByText('You typed this before the page closed')).toBeVisible()
  await field.focus()
  await page.keyboard.press('Escape')
  await expect(field).toHaveValue(before)
  await page.reload()
  await ready(page)
  await expect(page.getByText('You typed this before the page closed')).toHaveCount(0)
})

test('a playlist that is pasted and not sent is there after a reload', async ({ page }) => {
  await openRidewright(page)
  await page.getByLabel('playlist').fill('Low Tide – Salt Lantern – 3:45 – 128 bpm')
  await expect(page.getByRole('button', { name: 'make a ride from this song' })).toBeVisible()
  await page.reload()
  await ready(page)
  await page.getByRole('button', { name: 'make a ride from this song' }).click()
  await expect(heading(page)).toHaveText('New ride')
  await page.getByRole('link', { name: 'my rides' }).click()
  await expect(page.getByLabel('playlist')).toHaveValue('')
})

test('two windows edit one ride: nothing of either is lost, both end equal, and undo is one’s own', async ({ page, context }) => {
  const other = await openInTwo(page, context)
  expect(await editTogether(page, other, { edits: 10, how: 'together' })).toEqual({ edits: 10, lost: 0 })
  await page.getByRole('button', { name: 'undo' }).click()
  for (const each of [page, other]) {
    await expect(fieldOf.first(each)).toHaveValue('1 2 3 4')
    await expect(fieldOf.second(each)).toHaveValue('1 2 3 4 5')
  }
})

test('ten edits in one window, and one in another that has heard of none: nothing is gone', async ({ page, context }) => {
  const other = await openInTwo(page, context)
  await deaf(other)
  for (let count = 1; count <= 10; count++) await setText(title(page), `edit ${count}`)
  await expect(state(page)).toHaveText(SAVED)
  await expect(title(other)).toHaveValue('Two Windows')
  await setText(other.getByLabel('location'), 'Quay Street')
  for (const each of [page, other]) {
    await expect(title(each)).toHaveValue('edit 10')
    await expect(each.getByLabel('location')).toHaveValue('Quay Street')
  }
})

test('what two windows change differently is shown once, and decided by a press', async ({ page, context }) => {
  const other = await openInTwo(page, context)
  await deaf(other)
  await setText(title(page), 'mine')
  await expect(state(page)).toHaveText(SAVED)
  await setText(title(other), 'theirs')
  await expect(other.getByText('Another window changed 1 thing differently.')).toBeVisible()
  await expect(title(page)).toHaveValue('theirs')
  await other.getByRole('button', { name: 'resolve' }).click()
  await other.getByRole('button', { name: 'use theirs for all' }).click()
  await other.getByRole('button', { name: 'use these changes' }).click()
  await expect(heading(other)).toHaveText('mine')
  await expect(title(page)).toHaveValue('mine')
})

test('a ride that one window deletes is not called saved in the other, and can be kept', async ({ page, context }) => {
  const other = await openInTwo(page, context)
  await page.getByRole('link', { name: 'my rides' }).click()
  await page
    .getByRole('button', { name: /^delete/i })
    .first()
    .click()
  await expect(state(other)).toHaveText('deleted elsewhere')
  await setText(title(other), 'Still here')
  await expect(state(other)).toHaveText('deleted elsewhere')
  await other.getByRole('button', { name: 'keep it' }).click()
  await expect(state(other)).toHaveText(SAVED)
  await expect(page.getByRole('link', { name: 'Still here' })).toBeVisible()
})

test('one window leads a class; the other follows it, and takes over by a press', async ({ page, context }) => {
  const other = await openInTwo(page, context)
  for (const each of [page, other]) {
    await each.getByRole('link', { name: 'teach', exact: true }).click()
    await expect(each.getByRole('button', { name: 'start: beat 1 now' })).toBeVisible()
  }
  await page.keyboard.press('Space')
  await expect(other.getByText('Another window is teaching this class.')).toBeVisible()
  await expect(page.getByText('Another window is teaching this class.')).toHaveCount(0)
  await other.getByRole('button', { name: 'teach from here' }).click()
  await expect(page.getByText('Another window is teaching this class.')).toBeVisible()
  await expect(other.getByText('Another window is teaching this class.')).toHaveCount(0)
  // The one that leads comes back to it after a reload.
  await other.reload()
  await ready(other)
  await expect(page.getByText('Another window is teaching this class.')).toBeVisible()
  await expect(other.locator('.lead')).toBeVisible()
  await expect(other.getByText('Another window is teaching this class.')).toHaveCount(0)
})

test('a ride is saved again after this site’s data was cleared under the page, and that is said', async ({ page, context, baseURL }) => {
  await openOwn(page)
  const session = await context.newCDPSession(page)
  await session.send('Storage.clearDataForOrigin', { origin: new URL(baseURL!).origin, storageTypes: 'all' })
  await expect(page.getByText('data was cleared in this browser while the page was open')).toBeVisible()
  await expect(state(page)).toHaveText(SAVED)
  await page.reload()
  await ready(page)
  await expect(heading(page)).toHaveText('My Ride')
})

test('where one of the two copies cannot be written that is said quietly, until it can be', async ({ page }) => {
  await openOwn(page)
  await page.evaluate(() => {
    const real = FileSystemFileHandle.prototype.createWritable
    FileSystemFileHandle.prototype.createWritable = () => Promise.reject(new DOMException('refused', 'QuotaExceededError'))
    Object.assign(window, { allow: () => Object.assign(FileSystemFileHandle.prototype, { createWritable: real }) })
  })
  await setText(title(page), 'Once')
  await expect(state(page)).toHaveText('saved, one copy only')
  await page.evaluate(() => (window as unknown as { allow: () => void }).allow())
  await expect(state(page)).toHaveText(SAVED)
})

test('kills lose no more than the last moment, and the ride that was open is open again', async ({ baseURL }) => {
  const profile = await mkdtemp(join(tmpdir(), 'ridewright-killed-'))
  try {
    const totals = await killAgainAndAgain(profile, baseURL!, { kills: 2, pace: 'steady' })
    expect(totals).toMatchObject({ kills: 2, ridesLost: 0, notReopened: 0 })
    expect(totals.oldestLost).toBeLessThan(1000)
  } finally {
    await rm(profile, { recursive: true, force: true })
  }
})

/** Has a window hear nothing of the others, as one that sleeps. */
async function deaf(page: Page): Promise<void> {
  await page.evaluate(() => {
    Object.defineProperty(MessageEvent.prototype, 'data', { get: () => undefined })
  })
}
