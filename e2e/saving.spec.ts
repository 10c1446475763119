import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { type BrowserContext, chromium, type Page } from '@playwright/test'
import { CONTAINER_FLAGS, findBrowser } from '#ci/find-browser.mjs'
import { nextFrame } from './support/drag.ts'
import { openRidewright, ready } from './support/openRidewright.ts'
import { expect, test } from './support/test.ts'

const saved = (page: Page) => page.getByText('saved', { exact: true })
const slot = (page: Page) => page.getByTestId('slot')

/** Opens a demo ride and makes it one's own by a change that is taken back. */
async function openDemo(page: Page): Promise<void> {
  await openRidewright(page)
  await page.getByRole('button', { name: /^Twenty-Minute Spark/ }).click()
  await deleteBlock(page)
  await page.keyboard.press('ControlOrMeta+z')
  await expect(page.getByRole('button', { name: 'redo' })).toBeEnabled()
  await expect(saved(page)).toBeVisible()
}

async function deleteBlock(page: Page): Promise<void> {
  await page.locator('[data-stage-stop]').first().click()
  await page.keyboard.press('ArrowDown')
  await page.keyboard.press('Delete')
  await expect(page.getByRole('button', { name: 'undo' })).toBeEnabled()
}

test('a ride survives the loss of the database: the second copy is read', async ({ page }) => {
  await openDemo(page)
  await page.getByRole('link', { name: 'my rides' }).click()
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

for (const width of [1440, 1024, 390]) {
  test(`nothing in the head moves when a ride is saved, or cannot be, ${width} px`, async ({ page }) => {
    await page.setViewportSize({ width, height: 844 })
    await openRidewright(page)
    await page.getByRole('button', { name: /^Twenty-Minute Spark/ }).click()
    await expect(page.getByText('sample, not saved yet')).toBeVisible()
    const seen = await page.evaluateHandle(watchHead)
    await deleteBlock(page)
    await expect(saved(page)).toBeVisible()
    // A busy machine may draw no frame of it before the next key.
    await nextFrame(page)
    await nextFrame(page)

    // From here on the browser refuses every write.
    await page.evaluate(() => {
      IDBDatabase.prototype.transaction = () => {
        throw new DOMException('refused', 'QuotaExceededError')
      }
      FileSystemFileHandle.prototype.createWritable = () => Promise.reject(new DOMException('refused', 'QuotaExceededError'))
    })
    await page.keyboard.press('ControlOrMeta+z')
    await expect(page.getByText('not saved', { exact: true })).toBeVisible()

    // The frame that shows it is noted by the next one, later on a busy machine.
    await nextFrame(page)
    await nextFrame(page)
    const frames = await seen.evaluate(({ stop }) => stop())
    const words = new Set(frames.map((frame) => frame.words))
    expect([...words]).toEqual(['sample, not saved yet', 'saving…', 'saved', 'not saved'])
    expect(new Set(frames.map(({ boxes }) => boxes)).size).toBe(1)
  })
}

/** Notes, frame by frame, where everything in the head of the page stands, and what it says of saving. */
function watchHead() {
  const frames: { words: string; boxes: string }[] = []
  let isOver = false
  const note = () => {
    const boxes = [...document.querySelectorAll('.app-head, .app-head *')].map((element) => {
      const { x, y, width, height } = element.getBoundingClientRect()
      return [x, y, width, height].join(' ')
    })
    frames.push({ words: document.querySelector('.app-saved')?.textContent ?? '', boxes: boxes.join('\n') })
    if (!isOver) requestAnimationFrame(note)
  }
  note()
  return {
    stop: () => {
      isOver = true
      return frames
    },
  }
}

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
