import { setTimeout } from 'node:timers/promises'
import { type CDPSession, chromium, type Page } from '@playwright/test'
import { CONTAINER_FLAGS, findBrowser } from '#ci/find-browser.mjs'
import serveBuild from '#e2e/support/serveBuild.ts'
import { manyBlocks } from '#tests/support/manyBlocks.ts'
import { type Row, spread } from './row.ts'

const BLOCKS = 120
const CHANGES = 60
const MOVES = 240
/** A pointer that reports sixty times a second. */
const MOVE_EVERY_MS = 1000 / 60
/** Each way to slow the processor, with what a change and a drag's frame should stay within, in milliseconds. */
const SPEEDS = [
  { words: 'full speed', slowdown: 1, change: 16, frame: 17 },
  { words: 'a quarter of the speed', slowdown: 4, change: 50, frame: 34 },
]

/** The built page in a real browser: how long a change takes to be seen, and how evenly a drag runs, with 120 blocks. */
export default async function benchBrowser(): Promise<Row[]> {
  const stop = await serveBuild()
  const browser = await chromium.launch({ ...(await findBrowser()), args: CONTAINER_FLAGS })
  try {
    const rows: Row[] = []
    for (const speed of SPEEDS) {
      const page = await browser.newPage({ viewport: { width: 1440, height: 900 }, baseURL: process.env.RIDEWRIGHT_URL! })
      await openManyBlocks(page)
      const session = await page.context().newCDPSession(page)
      await session.send('Emulation.setCPUThrottlingRate', { rate: speed.slowdown })
      rows.push({ what: `change to painted frame, ${speed.words}`, ...spread(await timeChanges(page)), aim: speed.change })
      const { frames, curves } = await timeDrag(page, session)
      rows.push({
        what: `frames of a drag, ${speed.words}`,
        ...spread(frames),
        aim: speed.frame,
        note: `${curves} curves in ${frames.length} frames`,
      })
      await page.close()
    }
    return rows
  } finally {
    await browser.close()
    await stop()
  }
}

async function openManyBlocks(page: Page): Promise<void> {
  const ride = manyBlocks(BLOCKS)
  await page.goto('./')
  await page
    .locator('input[type="file"]')
    .first()
    .setInputFiles({
      name: 'many.ride.json',
      mimeType: 'application/json',
      buffer: Buffer.from(JSON.stringify(ride)),
    })
  await page.locator('[data-curve="intent"]').waitFor()
  await page
    .locator('[data-block-id]')
    .nth(BLOCKS - 1)
    .waitFor({ state: 'attached' })
  await page.evaluate(() => document.fonts.ready)
}

/**
 * Lengthens and shortens the first block by turns, so everything after it moves. Each change is made at the start of a frame,
 * by a key as a person would, and ends when a frame that shows another curve has been painted.
 */
function timeChanges(page: Page): Promise<number[]> {
  return page.evaluate(async (changes) => {
    const curve = () => document.querySelector('[data-curve="intent"]')?.getAttribute('d')
    const frameStart = () => new Promise(requestAnimationFrame)
    // A message posted while a frame is being made arrives when it has been painted.
    const painted = () =>
      new Promise<void>((done) => {
        const { port1, port2 } = new MessageChannel()
        port1.onmessage = () => done()
        port2.postMessage(null)
      })
    const times: number[] = []
    for (let change = 0; change < changes; change++) {
      await new Promise((later) => window.setTimeout(later, 50))
      const before = curve()
      await frameStart()
      const start = performance.now()
      const key = change % 2 === 0 ? '+' : '-'
      document
        .querySelector('[data-stage-stop="block"]')
        ?.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true }))
      await painted()
      while (curve() === before) {
        if (performance.now() - start > 5000) throw new Error('A change did not reach the curve within five seconds.')
        await frameStart()
        await painted()
      }
      times.push(performance.now() - start)
    }
    return times
  }, CHANGES)
}

/**
 * Drags one block back and forth over its neighbours and records the time from frame to frame. The moves are sent at the
 * pace of a pointer, whether the page keeps up or not.
 */
async function timeDrag(page: Page, session: CDPSession): Promise<{ frames: number[]; curves: number }> {
  const box = await page.locator('[data-block-id]').nth(2).boundingBox()
  if (!box) throw new Error('The block to drag is not on the page.')
  const x = box.x + box.width / 2
  const y = box.y + box.height / 2
  await page.mouse.move(x, y)
  await page.mouse.down()
  await page.mouse.move(x + 20, y, { steps: 5 })
  await page.evaluate(recordFrames)
  const sent: Promise<unknown>[] = []
  for (let move = 1; move <= MOVES; move++) {
    const way = 20 + 300 * (1 - Math.cos((move / MOVES) * 4 * Math.PI))
    sent.push(session.send('Input.dispatchMouseEvent', { type: 'mouseMoved', x: x + way, y, button: 'left', buttons: 1 }))
    await setTimeout(MOVE_EVERY_MS)
  }
  await Promise.all(sent)
  const recorded = await page.evaluate(() => (window as unknown as Recording).stopRecording())
  await page.keyboard.press('Escape')
  await page.mouse.up()
  return recorded
}

interface Recording {
  stopRecording: () => { frames: number[]; curves: number }
}

/** Runs in the page. */
function recordFrames(): void {
  const frames: number[] = []
  let curves = 0
  let last = 0
  let drawn: string | null | undefined
  let running = true
  const record = (now: number) => {
    if (last > 0) frames.push(now - last)
    last = now
    const curve = document.querySelector('[data-curve="intent"]')?.getAttribute('d')
    if (curve !== drawn) curves++
    drawn = curve
    if (running) requestAnimationFrame(record)
  }
  requestAnimationFrame(record)
  ;(window as unknown as Recording).stopRecording = () => {
    running = false
    return { frames, curves }
  }
}
