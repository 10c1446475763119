import type { Page } from '@playwright/test'
import { linkAddress } from '#features/handover/linkAddress.ts'
import { encodeLink } from '#plan/link/encodeLink.ts'
import { demoRide } from '#tests/support/demoRides.ts'
import { openRidewright, ready } from './support/openRidewright.ts'
import { shownLink } from './support/shownLink.ts'
import { expect, test } from './support/test.ts'

const total = (page: Page) => page.getByTestId('slot')
const receivedBar = (page: Page) => page.getByRole('region', { name: 'shared ride' })

test('a link opens on another machine as the same ride, read-only, and a copy of it is kept', async ({ page, secondProfile }) => {
  await openDemo(page, 'Twenty-Minute Spark')
  const totals = await total(page).textContent()
  const link = await linkOf(page)

  await openRidewright(secondProfile, link)
  await expect(receivedBar(secondProfile)).toContainText('read-only')
  await expect(secondProfile.getByText('Twenty-Minute Spark').first()).toBeVisible()
  await expect(total(secondProfile)).toHaveText(totals!)
  expect(totals).toContain('19:36')

  // Nothing is saved by looking, and a reload shows the shared ride again.
  await secondProfile.reload()
  await ready(secondProfile)
  await expect(receivedBar(secondProfile)).toBeVisible()
  expect(await savedTitles(secondProfile)).toEqual([])

  // From the start the shared ride is one press away.
  await secondProfile.getByRole('link', { name: 'my rides' }).click()
  await secondProfile.getByRole('button', { name: 'show it' }).click()
  await secondProfile.getByRole('button', { name: 'keep a copy' }).click()
  await expect(receivedBar(secondProfile)).toHaveCount(0)
  await expect(secondProfile.getByText('saved', { exact: true })).toBeVisible()
  await secondProfile.reload()
  await ready(secondProfile)
  await expect(receivedBar(secondProfile)).toHaveCount(0)
  await expect(total(secondProfile)).toHaveText(totals!)
  expect(await savedTitles(secondProfile)).toEqual(['Twenty-Minute Spark'])
})

test('nothing of a shared ride can be changed before a copy is kept', async ({ page, secondProfile }) => {
  await openDemo(page, 'Twenty-Minute Spark')
  await openRidewright(secondProfile, await linkOf(page))
  const before = await linkOf(secondProfile)
  await secondProfile.getByRole('link', { name: 'plan', exact: true }).click()
  await secondProfile.locator('[data-stage-stop]').first().focus()
  for (const keys of ['ArrowDown', 'Delete', 'd', 's', '+', 'Alt+ArrowUp', 'Alt+ArrowRight', 'ControlOrMeta+z'])
    await secondProfile.keyboard.press(keys)
  expect(await linkOf(secondProfile)).toBe(before)
})

test('a link opened over a ride of one’s own leaves it as it was', async ({ page, secondProfile }) => {
  await openDemo(secondProfile, 'Ridge and Return')
  const link = await linkOf(secondProfile)

  await openRidewright(page)
  await page.getByLabel('title', { exact: true }).fill('My own')
  await page.getByRole('button', { name: 'start a blank ride' }).click()
  await expect(page.getByText('saved', { exact: true })).toBeVisible()
  await page.goto(link)
  await expect(receivedBar(page)).toBeVisible()
  await expect(total(page)).toContainText('43:43')
  await page.getByRole('button', { name: 'close' }).click()
  await expect(page.getByText('My own').first()).toBeVisible()
  expect(await savedTitles(page)).toEqual(['My own'])
})

test('a link opens in the address bar as mail, chat, and trackers leave it', async ({ page, baseURL }) => {
  const link = encodeLink(demoRide('spark'))
  const address = linkAddress(baseURL!, link)
  const middle = address.length - 300
  const broken = (by: string) => address.slice(0, middle) + by + address.slice(middle)
  for (const sent of [
    `${address}?fbclid=IwAR0_aB-3`,
    address.replace('#', '?utm_source=mail#'),
    `${address}**`,
    `${address}_`,
    `${address}”.`,
    broken('\u200b'),
    broken('%E2%80%8B'),
    broken('\u00a0'),
    broken('=%0A%3E%20'),
    address.replaceAll('-', '%2d').replaceAll('_', '%255F'),
    address.replace('#', '?x=%2523'),
    `${address} and ${address.slice(0, -60)}`,
  ]) {
    await page.goto('about:blank')
    await openRidewright(page, sent)
    await expect(total(page), sent.slice(0, 80)).toContainText('19:36')
    // Reloaded, bookmarked and passed on, it is the link as it was made.
    expect(new URL(page.url()).hash).toBe(`#${link}`)
  }
  expect(await savedTitles(page)).toEqual([])
})

test('a link is opened out of the message it came in, by keys, and the way back leads to the start', async ({ page, baseURL }) => {
  const address = linkAddress(baseURL!, encodeLink(demoRide('ridge')))
  await openRidewright(page)
  const field = page.getByLabel('link, or the message it came in')
  const said = page.locator('.start-link').getByRole('status')
  await field.fill('Where is it?')
  await expect(said).toContainText('There’s no ride link in this text.')
  await field.fill(`Here you go: ${address.slice(0, -200)}`)
  await expect(said).toContainText('The end of this link is missing: 200 of its')
  await field.press('Enter')
  await expect(field).toBeFocused()

  await field.fill(`> Here you go:\n> ${address.replace(/.{60}/g, '$&=\n> ')}\n> See you!`)
  await expect(said).toHaveText('“Ridge and Return”, mixed, 45 min.')
  await field.press('Enter')
  await expect(receivedBar(page)).toContainText('read-only')
  await expect(total(page)).toContainText('43:43')
  await page.reload()
  await ready(page)
  await expect(receivedBar(page)).toBeVisible()
  await page.goBack()
  await expect(receivedBar(page)).toHaveCount(0)
  await expect(page.getByRole('heading', { name: 'new ride' })).toBeVisible()

  await page.getByLabel('playlist').fill(address)
  await expect(page.getByText('That’s a link to a ride: “Ridge and Return”, mixed, 45 min. Open it?')).toBeVisible()
  await page.getByRole('button', { name: 'open it' }).click()
  await page.getByRole('button', { name: 'keep a copy' }).click()
  await expect(page.getByText('saved', { exact: true })).toBeVisible()
  expect(await savedTitles(page)).toEqual(['Ridge and Return'])
})

test.describe('a link that cannot be opened says why, leads to the start, and touches nothing saved', () => {
  const bad: [name: string, spoil: (link: string) => string, sentence: RegExp][] = [
    ['truncated', (link) => link.slice(0, -40), /end of this link is missing/],
    ['damaged', (link) => link.slice(0, 60) + (link[60] === 'A' ? 'B' : 'A') + link.slice(61), /damaged/],
    ['written in small letters', (link) => link.toLowerCase(), /changed its capital and small letters/],
    ['too new', (link) => link.replace('#r1.', '#r7.'), /newer version/],
    ['not ours', (link) => link.replace(/#.*/, '#utm_source=newsletter'), /isn’t a link to a ride/],
    ['hostile markup', (link) => link.replace(/#.*/, '#r1.<img src=x onerror=alert(1)>'), /damaged|not a link/],
    ['hostile path', (link) => link.replace(/#.*/, '#/draft/../../etc'), /isn’t a link to a ride/],
    ['cut to its head', (link) => link.replace(/#.*/, '#r1.'), /missing|damaged|not a link/],
  ]
  for (const [name, spoil, sentence] of bad) {
    test(name, async ({ page, baseURL }) => {
      const link = linkAddress(baseURL!, encodeLink(demoRide('spark')))
      await openRidewright(page)
      await page.getByLabel('title', { exact: true }).fill('Kept')
      await page.getByRole('button', { name: 'start a blank ride' }).click()
      await expect(page.getByText('saved', { exact: true })).toBeVisible()

      // In a page of its own, as a press in a mail program opens it.
      const tab = await page.context().newPage()
      await openRidewright(tab, spoil(link))
      await expect(tab.getByRole('alert')).toContainText(sentence)
      await expect(tab.getByRole('alert')).toContainText('untouched')
      await expect(tab.getByRole('heading', { name: 'new ride' })).toBeVisible()
      await expect(tab.getByRole('link', { name: 'Kept' })).toBeVisible()

      // And over the ride that is open: it stays.
      await page.goto(spoil(link))
      await expect(page.getByRole('alert')).toContainText(sentence)
      await expect(page.getByText('Kept').first()).toBeVisible()
      expect(await savedTitles(page)).toEqual(['Kept'])
    })
  }
})

async function openDemo(page: Page, title: string): Promise<void> {
  await openRidewright(page)
  await page.getByRole('button', { name: new RegExp(`^${title}`) }).click()
  await expect(total(page)).toBeVisible()
}

/** The link the hand-over place shows for the ride on the screen. */
async function linkOf(page: Page): Promise<string> {
  await page.getByRole('link', { name: 'share', exact: true }).click()
  return shownLink(page)
}

/** Titles of the rides in the browser's storage, asked for behind the page's back. */
function savedTitles(page: Page): Promise<string[]> {
  return page.evaluate(
    () =>
      new Promise<string[]>((resolve, reject) => {
        const opening = indexedDB.open('ridewright')
        opening.onerror = () => reject(opening.error)
        opening.onsuccess = () => {
          const reading = opening.result.transaction('rides').objectStore('rides').getAll()
          reading.onerror = () => reject(reading.error)
          reading.onsuccess = () => {
            opening.result.close()
            resolve(reading.result.map(({ title }) => title))
          }
        }
      }),
  )
}
