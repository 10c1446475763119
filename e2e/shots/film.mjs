/** `npm run film`: half a minute of the built page as a moving picture for the README, from a pasted list to the class. */
import { execFileSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { chromium } from '@playwright/test'
import UPNG from 'upng-js'
import { preview } from 'vite'
import { CONTAINER_FLAGS, findBrowser } from '#ci/find-browser.mjs'

const ROOT = fileURLToPath(new URL('../..', import.meta.url))
const FILM = fileURLToPath(new URL('film.png', import.meta.url))

const WIDTH = 1200
const HEIGHT = 760
/** Colours of the picture; few enough to keep it small, enough for the curve's shades. */
const COLORS = 128

/** Invented, like everything in the demo. */
const PLAYLIST = [
  'Paper Lanterns – The Odd Hours – 4:02 – 92 bpm',
  'Brickworks – Ferry Lights – 3:45 – 128 bpm',
  'Long Way Up – The Odd Hours – 4:30 – 136 bpm',
  'Signal Hill – Marl & Reed – 3:38 – 128 bpm',
  'Quarry Song – Ferry Lights – 3:20 – 140 bpm',
  'Night Market – Marl & Reed – 3:52 – 132 bpm',
  'Harbor Steps – The Odd Hours – 4:10 – 84 bpm',
]

/** @type {{ picture: Buffer, milliseconds: number }[]} */
const frames = []

const folder = mkdtempSync(join(tmpdir(), 'ridewright-film-'))
const words = ['build', '--outDir', folder, '--emptyOutDir', '--logLevel', 'warn']
execFileSync(process.execPath, [join(ROOT, 'node_modules/vite/bin/vite.js'), ...words], { cwd: ROOT, stdio: 'inherit' })
const server = await preview({ root: ROOT, build: { outDir: folder }, preview: { port: 0, host: '127.0.0.1' } })
const browser = await chromium.launch({ ...(await findBrowser()), args: CONTAINER_FLAGS })
try {
  const page = await browser.newPage({
    viewport: { width: WIDTH, height: HEIGHT },
    reducedMotion: 'reduce',
    locale: 'en-US',
    colorScheme: 'light',
  })
  await page.clock.install({ time: '2026-01-15T09:00:00' })
  await page.addInitScript(drawHand)
  await page.goto(server.resolvedUrls?.local[0] ?? '')
  await page.evaluate(() => document.fonts.ready)
  await film(page)
} finally {
  await browser.close()
  await server.close()
  rmSync(folder, { recursive: true, force: true })
}
const pixels = frames.map(({ picture }) => {
  const { buffer, byteOffset, byteLength } = picture
  const [rgba] = UPNG.toRGBA8(UPNG.decode(/** @type {ArrayBuffer} */ (buffer.slice(byteOffset, byteOffset + byteLength))))
  if (!rgba) throw new Error('a frame without a picture')
  return rgba
})
const delays = frames.map(({ milliseconds }) => milliseconds)
const film32 = Buffer.from(UPNG.encode(pixels, WIDTH, HEIGHT, COLORS, delays))
writeFileSync(FILM, film32)
const seconds = delays.reduce((sum, delay) => sum + delay, 0) / 1000
console.log(`${frames.length} frames, ${seconds} s, ${Math.round(film32.length / 1000)} kB`)

/** @param {import('@playwright/test').Page} page */
async function film(page) {
  const { mouse } = page
  /** @param {number} milliseconds */
  const shoot = async (milliseconds) => {
    await page.clock.runFor(100)
    frames.push({ picture: await page.screenshot(), milliseconds })
  }
  /** @param {string} caption */
  const say = (caption) => page.evaluate((text) => Object.assign(document.querySelector('#caption') ?? {}, { textContent: text }), caption)
  /** @param {import('@playwright/test').Locator} target */
  const pointAt = async (target) => {
    await target.scrollIntoViewIfNeeded()
    const box = await target.boundingBox()
    if (!box) throw new Error('nothing to point at')
    await mouse.move(box.x + box.width / 2, box.y + box.height / 2, { steps: 4 })
    return box
  }
  /** @param {import('@playwright/test').Locator} target */
  const press = async (target) => {
    await pointAt(target)
    await shoot(600)
    await target.click()
  }

  await say('Paste a playlist')
  await shoot(1500)
  await page.locator('form .ui-segmented label').nth(1).click()
  const list = page.locator('textarea').first()
  for (const upTo of [2, 5, PLAYLIST.length]) {
    await list.fill(PLAYLIST.slice(0, upTo).join('\n'))
    await shoot(upTo === PLAYLIST.length ? 1600 : 500)
  }
  await press(page.locator('form button[type="submit"]').first())
  await page.locator('[data-action="offer.roughIn"]').waitFor()
  await shoot(1400)

  await say('Draft it for me')
  await press(page.locator('[data-action="offer.roughIn"]'))
  await page.locator('[data-curve="intent"]').waitFor()
  await shoot(2800)
  await press(page.locator('.ui-button[data-tone="solid"]').last())
  await shoot(1400)

  await say('Drag a block; everything follows')
  const card = page.locator('[data-block-id]').nth(12)
  const box = await pointAt(card)
  await shoot(500)
  await mouse.down()
  for (let step = 1; step <= 6; step++) {
    await mouse.move(box.x + box.width / 2 + step * 14, box.y + box.height / 2, { steps: 3 })
    await shoot(step === 6 ? 900 : 160)
  }
  await mouse.up()
  await shoot(1400)

  await say('Read the checks, fix with one press')
  const fix = page.locator('.finding-fixes .ui-button').first()
  if ((await fix.count()) > 0) {
    await pointAt(fix)
    await shoot(1600)
    await fix.click()
    await shoot(1600)
  }

  await say('Print the cue sheet')
  await page.evaluate(() => location.assign(location.hash.replace('/draft', '/sheet')))
  await page.locator('.sheet-page').first().waitFor()
  await shoot(3000)

  await say('Teach')
  await page.evaluate(() => location.assign(location.hash.replace('/sheet', '/lead')))
  await page.locator('.app-waiting').waitFor({ state: 'detached' })
  await shoot(1500)
  await page.keyboard.press('Space')
  await page.clock.fastForward(520_000)
  for (let second = 0; second < 5; second++) {
    await page.clock.runFor(900)
    await shoot(1000)
  }
}

/** A hand and a caption on the page, since a screenshot shows neither. */
function drawHand() {
  addEventListener('DOMContentLoaded', () => {
    const caption = Object.assign(document.createElement('div'), { id: 'caption' })
    caption.style.cssText =
      'position:fixed;z-index:99;left:50%;bottom:18px;transform:translateX(-50%);padding:10px 18px;border-radius:6px;background:#16202b;color:#fff;font:600 22px/1.2 "Atkinson Hyperlegible Next Variable",sans-serif;pointer-events:none'
    const hand = document.createElement('div')
    hand.style.cssText =
      'position:fixed;z-index:100;width:18px;height:18px;margin:-9px;border-radius:50%;background:rgb(22 32 43 / .35);border:2px solid #fff;box-shadow:0 0 0 1px #16202b;pointer-events:none;left:-50px'
    document.documentElement.append(caption, hand)
    addEventListener(
      'pointermove',
      ({ clientX, clientY }) => Object.assign(hand.style, { left: `${clientX}px`, top: `${clientY}px` }),
      true,
    )
  })
}
