import { readFile } from 'node:fs/promises'
import type { Page } from '@playwright/test'
import { contentRevision } from '#plan/document/contentRevision.ts'
import type { Ride } from '#plan/model.ts'
import { decodeLink } from '#tests/support/decodeLink.ts'
import { told } from '#tests/support/told.ts'
import { barriers } from './support/barriers.ts'
import { openRidewright } from './support/openRidewright.ts'
import { shownLink } from './support/shownLink.ts'
import { expect, test } from './support/test.ts'

const total = (page: Page) => page.getByTestId('slot').locator('[data-total]')
const conflicts = (page: Page) => page.getByRole('region', { name: 'conflicts' })

async function openDemo(page: Page): Promise<void> {
  await openRidewright(page)
  await page.getByRole('button', { name: /^Twenty-Minute Spark/ }).click()
  await expect(total(page)).toBeAttached()
}

/** Presses keys on a block of the stage. */
async function work(page: Page, id: string, ...keys: string[]): Promise<void> {
  await page.locator(`[data-stage-stop][data-id="${id}"]`).focus()
  for (const key of keys) await page.keyboard.press(key)
}

/** Gives a block another name. */
async function rename(page: Page, id: string, name: string): Promise<void> {
  await page.locator(`[data-stage-stop][data-id="${id}"]`).click()
  await page.getByLabel('name', { exact: true }).fill(name)
  await page.getByLabel('name', { exact: true }).press('Enter')
  await expect(page.getByRole('option', { name: new RegExp(`^${name}, `) })).toBeAttached()
}

/** Hands the ride over as its user does, and gives the link. */
async function handOver(page: Page): Promise<string> {
  await page.getByRole('link', { name: 'share', exact: true }).click()
  const link = await shownLink(page)
  await page.getByRole('textbox', { name: 'link', exact: true }).press('ControlOrMeta+c')
  await expect(page.getByText(/^saved automatically/)).toBeVisible()
  await page.getByRole('link', { name: 'plan', exact: true }).click()
  await expect(total(page)).toBeAttached()
  return link
}

/** Opens a link that came back and asks what changed. */
async function compare(page: Page, link: string): Promise<void> {
  await page.goto(link)
  await page.getByRole('button', { name: 'see what changed' }).click()
  await expect(page.getByRole('heading', { name: /^What changed in/ })).toBeVisible()
}

async function take(page: Page): Promise<void> {
  await page.getByRole('button', { name: /^(use these changes|use mine as is)$/ }).click()
  await expect(total(page)).toBeAttached()
  await expect(page.getByText('saved', { exact: true })).toBeVisible()
}

function rideOf(link: string): Ride {
  const decoded = decodeLink(link)
  if (!decoded.ok) throw new Error(told(decoded.problems[0]!.text))
  return decoded.ride
}

test('two people pass a ride back and forth through five rounds and end with the same one', async ({ page, secondProfile }) => {
  test.setTimeout(180_000)
  await openDemo(page)
  await openRidewright(secondProfile, await handOver(page))
  await secondProfile.getByRole('button', { name: 'keep a copy' }).click()
  await expect(secondProfile.getByText('saved', { exact: true })).toBeVisible()

  // Each round both work on: a block of their own, and one field that both change.
  const OWN = ['s1b1', 's1b2', 's1b3', 's2b1', 's2b2']
  let [sender, receiver] = [secondProfile, page]
  for (const [round, id] of OWN.entries()) {
    await work(sender, id, 'Alt+ArrowUp')
    await rename(sender, 's1b4', `sender ${round}`)
    await work(receiver, OWN[(round + 1) % OWN.length]!, '+')
    await rename(receiver, 's1b4', `receiver ${round}`)
    if (round === 2) await work(sender, 's2b3', 'd')
    if (round === 3) await work(receiver, 's1b1', 'Alt+ArrowRight')

    await compare(receiver, await handOver(sender))
    await expect(conflicts(receiver)).toContainText(`sender ${round}`)
    await expect(conflicts(receiver)).toContainText(`receiver ${round}`)
    await receiver.getByRole('button', { name: round % 2 === 0 ? 'use mine for all' : 'use theirs for all' }).click()
    await take(receiver)
    ;[sender, receiver] = [receiver, sender]
  }

  // The last merged ride goes back to the one who has done nothing since: it is taken as it is.
  const last = await handOver(sender)
  await compare(receiver, last)
  await expect(conflicts(receiver)).toHaveCount(0)
  await take(receiver)

  const [one, other] = [rideOf(await handOver(sender)), rideOf(await handOver(receiver))]
  expect(contentRevision(one)).toBe(contentRevision(other))
  expect(one.id).not.toBe(other.id)
  await expect(total(sender)).toHaveAttribute('data-total', (await total(receiver).getAttribute('data-total'))!)
})

test('a conflict is decided by key with the curve of either choice, and cancelling changes nothing', async ({ page, secondProfile }) => {
  await openDemo(page)
  await openRidewright(secondProfile, await handOver(page))
  await secondProfile.getByRole('button', { name: 'keep a copy' }).click()
  await expect(secondProfile.getByText('saved', { exact: true })).toBeVisible()
  await work(secondProfile, 's2b5', 'Alt+ArrowDown', '-')
  await work(secondProfile, 's4b2', 'Alt+ArrowDown')
  await work(page, 's2b5', 'Alt+ArrowUp', '+')
  await work(page, 's4b2', 'Delete')
  const before = await total(page).getAttribute('data-total')
  await expect(page.getByText('saved', { exact: true })).toBeVisible()
  await compare(page, await handOver(secondProfile))

  const effort = page.getByRole('group', { name: /standing climb effort was 8/ })
  await expect(effort.getByRole('radio', { name: /^mine 9/ })).toBeChecked()
  await expect(effort.locator('svg')).toHaveCount(2)
  await effort.getByRole('radio', { name: /^mine/ }).focus()
  await page.keyboard.press('ArrowRight')
  await expect(effort.getByRole('radio', { name: /^theirs 7/ })).toBeChecked()

  // What one deleted and the other changed is there until it is decided.
  const push = page.getByRole('group', { name: /push 1 block removed/ })
  await expect(push.getByRole('radio', { name: /^theirs there, changed: effort/ })).toBeChecked()

  // Another length is another length of the ride.
  const length = page.getByRole('group', { name: /standing climb length/ })
  await expect(page.getByTestId('merge-total')).toContainText('mine is')
  await length.getByRole('radio', { name: /^theirs/ }).check()
  await expect(length.getByText(/\d+:\d\d to \d+:\d\d · ride \d+:\d\d/)).toHaveCount(2)
  await expect(page.getByTestId('merge-total')).toBeVisible()

  expect(await barriers(page)).toEqual([])

  await page.getByRole('button', { name: 'cancel' }).click()
  await page.getByRole('button', { name: 'close, back to my ride' }).click()
  await expect(total(page)).toHaveAttribute('data-total', before!)
  await expect(page.locator('[data-stage-stop][data-id="s4b2"]')).toHaveCount(0)
})

test('a version is kept under a name, compared block by block, and restored as a step that can be undone', async ({ page }) => {
  await openDemo(page)
  await page.getByRole('link', { name: 'share', exact: true }).click()
  await page.getByLabel('name of this version').fill('before the class')
  await page.getByLabel('name of this version').press('Enter')
  await expect(page.getByRole('button', { name: 'compare before the class' })).toBeVisible()
  await page.getByRole('link', { name: 'plan', exact: true }).click()
  await rename(page, 's2b2', 'long haul')
  await page.reload()
  await expect(total(page)).toBeAttached()

  await page.getByRole('link', { name: 'share', exact: true }).click()
  await page.getByRole('button', { name: 'compare before the class' }).click()
  await expect(page.getByRole('dialog')).toContainText('“long haul” was “seated climb”')
  // Drawn as it is meant to be, although nothing came back to be merged since the page was opened.
  await expect(page.getByRole('dialog').locator('.merging-row').first()).toHaveCSS('display', 'grid')
  await expect(page.getByRole('dialog').locator('.merging-curve-line')).toHaveCSS('fill', 'none')
  expect(await barriers(page)).toEqual([])
  await page.getByRole('button', { name: 'close', exact: true }).click()

  await page.getByRole('button', { name: 'restore before the class' }).click()
  await page.getByRole('link', { name: 'plan', exact: true }).click()
  await expect(page.getByRole('option', { name: /^long haul, / })).toHaveCount(0)
  await page.keyboard.press('ControlOrMeta+z')
  await expect(page.getByRole('option', { name: /^long haul, / })).toBeAttached()
})

test('a backup of everything says what it would change on another machine, and changes it when told to', async ({
  page,
  secondProfile,
}) => {
  await openDemo(page)
  await handOver(page)
  await page.getByRole('link', { name: 'my rides' }).click()
  const download = page.waitForEvent('download')
  await page.getByRole('button', { name: 'save a backup' }).click()
  const path = await (await download).path()
  expect(JSON.parse(await readFile(path, 'utf8'))).toMatchObject({ ridewright: 'backup', backup: 1 })

  await openRidewright(secondProfile)
  const chooser = secondProfile.waitForEvent('filechooser')
  await secondProfile.getByText('restore a backup…').click()
  await (await chooser).setFiles({ name: 'all.backup.json', mimeType: 'application/json', buffer: await readFile(path) })
  const dialog = secondProfile.getByRole('dialog')
  await expect(dialog.getByRole('checkbox', { name: /Twenty-Minute Spark not here yet/ }).first()).toBeChecked()
  expect(await barriers(secondProfile)).toEqual([])
  await dialog.getByRole('button', { name: /^restore \d/ }).click()
  await secondProfile.getByRole('link', { name: 'Twenty-Minute Spark' }).click()
  await expect(total(secondProfile)).toHaveText('19:36')
})
