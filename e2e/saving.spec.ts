import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { type BrowserContext, chromium, type Page } from '@playwright/test'
import { CONTAINER_FLAGS, findBrowser } from '#ci/find-browser.mjs'
import { openRidewright, ready } from './support/openRidewright.ts'
import { expect, test } from './support/test.ts'

const saved = (page: Page) => page.getByText('saved on this machine')
const slot = (page: Page) => page.getByTestId('slot')

async function openDemo(page: Page): Promise<void> {
  await openRidewright(page)
  await page.getByRole('button', { name: /^Twenty-Minute Spark/ }).click()
  await expect(saved(page)).toBeVisible()
}

test('a ride survives the loss of the database: the second copy is read', async ({ page }) => {
  await openDemo(page)
  await page.getByRole('link', { name: 'all rides' }).click()
  const emptied = await page.evaluate(
    () =>
      new Promise<boolean>((resolve) => {
        const request = indexedDB.deleteDatabase('ridewright')
        request.onsuccess = () => resolve(true)
        request.onerror = () => resolve(false)
      }),
  )
  expect(emptied).toBe(true)
  await page.reload()
  await ready(page)
  await page.getByRole('link', { name: 'Twenty-Minute Spark' }).click()
  await expect(slot(page)).toContainText('19:36')
})

test('a window without any storage says so, and still makes a ride', async ({ page }) => {
  await page.addInitScript(() => {
    IDBFactory.prototype.open = () => {
      throw new DOMException('refused', 'SecurityError')
    }
    StorageManager.prototype.getDirectory = () => Promise.reject(new DOMException('refused', 'SecurityError'))
  })
  await openRidewright(page)
  await expect(page.getByText('Nothing can be saved in this window')).toBeVisible()
  await page.getByRole('button', { name: /^Twenty-Minute Spark/ }).click()
  await expect(slot(page)).toContainText('19:36')
})

test('a ride is there again, as it was, after the browser was killed', async ({ baseURL }) => {
  const profile = await mkdtemp(join(tmpdir(), 'ridewright-profile-'))
  try {
    const first = await launch(profile, baseURL!)
    const page = await first.newPage()
    await openDemo(page)
    await kill(first, page)

    const next = await launch(profile, baseURL!)
    const again = await next.newPage()
    await openRidewright(again)
    await expect(
      slot(again)
        .or(again.getByRole('link', { name: 'Twenty-Minute Spark' }))
        .first(),
    ).toBeVisible()
    await next.close()
  } finally {
    await rm(profile, { recursive: true, force: true })
  }
})

const launch = async (profile: string, baseURL: string): Promise<BrowserContext> =>
  chromium.launchPersistentContext(profile, { ...(await findBrowser()), args: CONTAINER_FLAGS, baseURL })

/** Ends the browser from outside, in the middle of whatever it is doing. */
async function kill(context: BrowserContext, page: Page): Promise<void> {
  const session = await context.browser()!.newBrowserCDPSession()
  const { processInfo } = await session.send('SystemInfo.getProcessInfo')
  const browser = processInfo.find(({ type }) => type === 'browser')!
  const gone = new Promise((resolve) => context.on('close', resolve))
  process.kill(browser.id, 'SIGKILL')
  await gone
  expect(page.isClosed()).toBe(true)
}
