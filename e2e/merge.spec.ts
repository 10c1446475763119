import type { Page } from '@playwright/test'
import { contentRevision } from '#plan/contentRevision.ts'
import { decodeLink } from '#plan/link/decodeLink.ts'
import type { Ride } from '#plan/model.ts'
import { openRidewright } from './support/openRidewright.ts'
import { expect, test } from './support/test.ts'

const total = (page: Page) => page.getByTestId('slot').locator('[data-total]')
const conflicts = (page: Page) => page.getByRole('region', { name: 'changed by both' })

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
  await page.getByRole('link', { name: 'hand over' }).click()
  const link = await page.getByRole('textbox', { name: 'link', exact: true }).inputValue()
  await page.getByRole('textbox', { name: 'link', exact: true }).press('ControlOrMeta+c')
  await expect(page.getByText(/^kept by themselves/)).toBeVisible()
  await page.getByRole('link', { name: 'draft' }).click()
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
  await page.getByRole('button', { name: /^(take these changes|keep mine as it is)$/ }).click()
  await expect(total(page)).toBeAttached()
  await expect(page.getByText('saved on this machine')).toBeVisible()
}

function rideOf(link: string): Ride {
  const decoded = decodeLink(link)
  if (!decoded.ok) throw new Error(decoded.problems[0]!.sentence)
  return decoded.ride
}

test('two people pass a ride back and forth through five rounds and end with the same one', async ({ page, secondProfile }) => {
  test.setTimeout(180_000)
  await openDemo(page)
  await openRidewright(secondProfile, await handOver(page))
  await secondProfile.getByRole('button', { name: 'keep a copy' }).click()
  await expect(secondProfile.getByText('saved on this machine')).toBeVisible()

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
    await receiver.getByRole('button', { name: round % 2 === 0 ? 'mine in all' : 'theirs in all' }).click()
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
  expect(await total(sender).getAttribute('data-total')).toBe(await total(receiver).getAttribute('data-total'))
})
