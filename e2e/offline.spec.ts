import { cp, mkdtemp, readdir, readFile, rename, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Page } from '@playwright/test'
import { openRidewright, ready } from './support/openRidewright.ts'
import { type StaticServer, serveFolder } from './support/staticServer.ts'
import { expect, test } from './support/test.ts'

/** A copy of the build on a server of its own, so that a test can change the one and stop the other. */
let folder: string
let server: StaticServer

test.beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'ridewright-offline-'))
  await cp(process.env.RIDEWRIGHT_BUILD!, folder, { recursive: true })
  server = await serveFolder(folder)
})

test.afterEach(async () => {
  await server.stop()
  await rm(folder, { recursive: true, force: true })
})

test('after one visit the page opens with the server gone: again with a ride drafted, in a new tab, and by a link', async ({
  page,
  context,
}) => {
  await visit(page)
  await server.stop()
  await page.reload()
  await ready(page)
  await page.getByRole('button', { name: /Twenty-Minute Spark/ }).click()
  await expect(page.locator('[data-curve="intent"]')).toBeVisible()
  const tab = await context.newPage()
  await openRidewright(tab, server.url)
  await openRidewright(tab, `${server.url}?from=a-friend`)
  await expect(tab).toHaveTitle(/Ridewright/)
})

test('everything the page may need later is kept at the first visit', async ({ page }) => {
  await visit(page)
  await server.stop()
  const files = (await filesOf(folder)).filter((path) => path !== 'sw.js').map((path) => (path === 'index.html' ? './' : path))
  const answers = await page.evaluate((paths) => Promise.all(paths.map(async (path) => (await fetch(path)).ok)), files)
  expect(files.filter((_, index) => !answers[index])).toEqual([])
})

test('a new build is shown at once, works offline, and takes the old one’s place', async ({ page, context }) => {
  await visit(page)
  await publishNextBuild()
  await page.reload()
  await ready(page)
  await expect(page).toHaveTitle('Next build')
  await waitUntilKept(page, 2)
  await page.close()

  // The old build goes once the browser has noticed that its last page is gone, which may be a visit later.
  const next = await context.newPage()
  await expect(async () => {
    await next.goto('about:blank')
    await openRidewright(next, server.url)
    expect(await buildsKept(next)).toBe(1)
  }).toPass()
  await server.stop()
  await next.reload()
  await ready(next)
  await expect(next).toHaveTitle('Next build')
})

test('a visitor caught in the middle of a publishing keeps the build that works', async ({ page }) => {
  await visit(page)
  const former = await readFile(join(folder, 'index.html'), 'utf8')
  await publishNextBuild()
  await writeFile(join(folder, 'index.html'), former.replace('<title>Ridewright', '<title>Half published'))
  await page.evaluate(async () => {
    const worker = await navigator.serviceWorker.ready
    await worker.update()
    await new Promise<void>((settled) => {
      const { installing } = worker
      if (!installing) settled()
      installing?.addEventListener('statechange', () => settled())
    })
  })
  await waitUntilKept(page, 1)
  await server.stop()
  await page.reload()
  await ready(page)
  await expect(page).toHaveTitle('Ridewright')
})

async function visit(page: Page): Promise<void> {
  await openRidewright(page, server.url)
  await page.evaluate(async () => {
    const { active } = await navigator.serviceWorker.ready
    if (active?.state !== 'activated') await new Promise((resolve) => active?.addEventListener('statechange', resolve, { once: true }))
  })
}

/** Waits until the browser keeps so many builds. */
async function waitUntilKept(page: Page, builds: number): Promise<void> {
  await expect.poll(() => buildsKept(page)).toBe(builds)
}

function buildsKept(page: Page): Promise<number> {
  return page.evaluate(async () => (await caches.keys()).length)
}

/** Puts another build in the place of this one: other names for the page's own scripts, the old ones gone. */
async function publishNextBuild(): Promise<void> {
  const scripts = (await filesOf(folder)).filter((path) => path.endsWith('.js') && path !== 'sw.js')
  const renamed = new Map(scripts.map((path, index) => [path, path.replace(/-[\w-]+\.js$/, `-Next${index}.js`)]))
  for (const path of await filesOf(folder)) {
    if (!/\.(js|html)$/.test(path)) continue
    let text = await readFile(join(folder, path), 'utf8')
    for (const [from, to] of renamed) text = text.replaceAll(baseName(from), baseName(to))
    await writeFile(
      join(folder, path),
      text.replace('<title>Ridewright', '<title>Next build').replace(/"version":".*?"/, '"version":"next"'),
    )
  }
  for (const [from, to] of renamed) await rename(join(folder, from), join(folder, to))
}

const baseName = (path: string) => path.slice(path.lastIndexOf('/') + 1)

async function filesOf(root: string): Promise<string[]> {
  const entries = await readdir(root, { recursive: true, withFileTypes: true })
  return entries.filter((entry) => entry.isFile()).map((entry) => join(entry.parentPath, entry.name).slice(root.length + 1))
}
