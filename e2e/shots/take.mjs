/** `npm run shots`: takes the README's pictures of the built page, from the demo ride. Light, dark, the sheet, and while teaching. */
import { execFileSync } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { chromium } from '@playwright/test'
import { preview } from 'vite'
import { CONTAINER_FLAGS, findBrowser } from '#ci/find-browser.mjs'

const ROOT = fileURLToPath(new URL('../..', import.meta.url))
const HERE = fileURLToPath(new URL('.', import.meta.url))

const folder = mkdtempSync(join(tmpdir(), 'ridewright-shots-'))
const words = ['build', '--outDir', folder, '--emptyOutDir', '--logLevel', 'warn']
execFileSync(process.execPath, [join(ROOT, 'node_modules/vite/bin/vite.js'), ...words], { cwd: ROOT, stdio: 'inherit' })
const server = await preview({ root: ROOT, build: { outDir: folder }, preview: { port: 0, host: '127.0.0.1' } })
const browser = await chromium.launch({ ...(await findBrowser()), args: CONTAINER_FLAGS })
try {
  const address = server.resolvedUrls?.local[0] ?? ''
  const light = await openDemo(address, 'light')
  await light.screenshot({ path: join(HERE, 'draft.png') })
  await takeHand(light)
  await light.getByRole('link', { name: 'print', exact: true }).click()
  const paper = light.locator('.sheet-page').first()
  await paper.waitFor()
  await settled(light)
  await paper.screenshot({ path: join(HERE, 'sheet.png') })
  const teaching = await leadDemo(address)
  await teaching.screenshot({ path: join(HERE, 'lead.png') })
  const dark = await openDemo(address, 'dark')
  await dark.screenshot({ path: join(HERE, 'draft-dark.png') })
} finally {
  await browser.close()
  await server.close()
  rmSync(folder, { recursive: true, force: true })
}

/**
 * @param {string} address
 * @param {'light' | 'dark'} colorScheme
 */
async function openDemo(address, colorScheme) {
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 }, colorScheme, reducedMotion: 'reduce', locale: 'en-US' })
  // The sheet carries its date; one day for all pictures, so that an unchanged page gives an unchanged picture.
  await page.clock.setFixedTime('2026-01-15T12:00:00')
  await page.goto(address)
  await page.getByRole('button', { name: /Twenty-Minute Spark/ }).click()
  await page.locator('[data-curve="intent"]').waitFor()
  await page
    .locator('[data-block-id]')
    .nth(6)
    .click({ position: { x: 8, y: 30 } })
  await settled(page)
  return page
}

/** What is typed, what a second button opens, and what the chart tells where it is pointed at. */
async function takeHand(/** @type {import('@playwright/test').Page} */ page) {
  await page.keyboard.press('l')
  await page.getByRole('combobox', { name: 'new block' }).waitFor()
  await page.keyboard.type('seated climb 8 to 2½ effort 8 “Heavy, and smooth.” / recover 4')
  await page.getByRole('button', { name: 'add 2 blocks' }).waitFor()
  await settled(page)
  await page.screenshot({ path: join(HERE, 'line.png') })
  await page.keyboard.press('Escape')
  const card = page.locator('[data-block-id]').nth(6)
  await card.click({ button: 'right', position: { x: 60, y: 60 } })
  await page.getByRole('menu').waitFor()
  await settled(page)
  await page.screenshot({ path: join(HERE, 'menu.png') })
  await page.keyboard.press('Escape')
  const [stage, chart] = [await page.locator('.stage-scroller').boundingBox(), await page.locator('.chart-place').boundingBox()]
  // Two moves, as a hand makes many: the read-out is fetched at the first.
  for (const share of [0.6, 0.61]) if (stage && chart) await page.mouse.move(stage.x + share * stage.width, chart.y + chart.height / 2)
  await page.locator('.read-out').waitFor()
  await settled(page)
  await page.screenshot({ path: join(HERE, 'read-out.png') })
  await page.mouse.move(5, 5)
}

/** The leading screen in the standing run of the third song. */
async function leadDemo(/** @type {string} */ address) {
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 }, reducedMotion: 'reduce', locale: 'en-US' })
  await page.clock.install({ time: '2026-01-15T09:00:00' })
  await page.goto(address)
  await page.getByRole('button', { name: /Twenty-Minute Spark/ }).click()
  await page.getByRole('link', { name: 'teach', exact: true }).click()
  await page.getByRole('button', { name: 'start: beat 1 now' }).waitFor()
  await page.evaluate(() => document.fonts.ready)
  await page.clock.pauseAt('2026-01-15T09:01:00')
  await page.keyboard.press('Space')
  await page.clock.fastForward(389_000)
  await page.clock.runFor(500)
  return page
}

/** Waits for the fonts and for two frames in which nothing is left to draw. */
async function settled(/** @type {import('@playwright/test').Page} */ page) {
  await page.evaluate(() => document.fonts.ready)
  await page.evaluate(() => new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn))))
}
