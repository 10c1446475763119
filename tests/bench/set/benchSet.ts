import { mkdtemp, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { chromium, type Page } from '@playwright/test'
import { CONTAINER_FLAGS, findBrowser } from '#ci/find-browser.mjs'
import serveBuild from '#e2e/support/serveBuild.ts'
import { waveBytes } from '#tests/bench/set/waveBytes.ts'
import { composedSong } from '#tests/support/composed/composedSong.ts'

const SONGS = 20
const SECONDS = 240
const FIRST_SEED = 12_000
/** Nobody notices a page that answers within this; milliseconds. */
const UNNOTICED = 100

interface File {
  path: string
  bpm: number
}

/** Gives a set of eighty minutes to the built page's shelf and prints what came of it. */
export async function benchSet(): Promise<void> {
  const folder = await mkdtemp(join(tmpdir(), 'ridewright-set-'))
  const stop = await serveBuild()
  const browser = await chromium.launch({ ...(await findBrowser()), args: CONTAINER_FLAGS })
  try {
    const files = await writeSongs(folder)
    const page = await browser.newPage({ viewport: { width: 1440, height: 900 }, baseURL: process.env.RIDEWRIGHT_URL! })
    await page.goto('./')
    await page.getByRole('link', { name: 'songs' }).click()
    await page.getByRole('heading', { name: 'songs', level: 1 }).waitFor()
    await page.evaluate(recordBusyTimes)
    const start = performance.now()
    await page
      .locator('.shelf-files input[type="file"]')
      .first()
      .setInputFiles(files.map(({ path }) => path))
    await page.waitForFunction(
      (count) => document.querySelectorAll('[data-hearing="heard"], [data-hearing="failed"]').length === count,
      SONGS,
      {
        timeout: 0,
        polling: 500,
      },
    )
    const seconds = (performance.now() - start) / 1000
    print(seconds, await page.evaluate(() => (window as unknown as Recording).busyTimes()), await heardTempi(page), files)
  } finally {
    await browser.close()
    await stop()
    await rm(folder, { recursive: true, force: true })
  }
}

async function writeSongs(folder: string): Promise<File[]> {
  const files: File[] = []
  for (let number = 0; number < SONGS; number++) {
    const { samples, sampleRate, bpm } = composedSong(FIRST_SEED + number, { seconds: SECONDS, sampleRate: 44_100 })
    const path = join(folder, `song ${number}.wav`)
    await writeFile(path, waveBytes(samples, sampleRate))
    files.push({ path, bpm })
  }
  return files
}

interface BusyTimes {
  /** Tasks of more than fifty milliseconds, as the browser counts them. */
  tasks: number[]
  /** From one frame to the next. */
  frames: number[]
}

interface Recording {
  busyTimes: () => BusyTimes
}

/** Runs in the page. */
function recordBusyTimes(): void {
  const tasks: number[] = []
  const frames: number[] = []
  new PerformanceObserver((list) => tasks.push(...list.getEntries().map(({ duration }) => duration))).observe({ type: 'longtask' })
  let last = performance.now()
  const record = (now: number) => {
    frames.push(now - last)
    last = now
    requestAnimationFrame(record)
  }
  requestAnimationFrame(record)
  ;(window as unknown as Recording).busyTimes = () => ({ tasks, frames })
}

/** What each file's line on the shelf says: the tempo that was heard, by the file's number. */
async function heardTempi(page: Page): Promise<Map<number, number>> {
  const lines = await page.locator('[data-hearing="heard"]').allInnerTexts()
  return new Map(lines.map((line) => [Number(/song (\d+)/.exec(line)?.[1]), Number(/([\d.]+) (?:bpm|beats)/.exec(line)?.[1])]))
}

function print(seconds: number, { tasks, frames }: BusyTimes, tempi: Map<number, number>, files: readonly File[]): void {
  const right = files.filter(({ bpm }, number) => Math.abs((tempi.get(number) ?? 0) / bpm - 1) < 0.04).length
  const longest = (times: readonly number[]) => Math.max(0, ...times).toFixed(0)
  const late = frames.filter((time) => time > UNNOTICED).length
  console.log(
    `${SONGS} songs of ${SECONDS / 60} minutes heard in ${seconds.toFixed(0)} s: ${((SONGS * SECONDS) / seconds).toFixed(0)} × real time with reading and decoding`,
  )
  console.log(`tempo right in ${right} of the ${tempi.size} that were heard`)
  console.log(`longest task of the page ${longest(tasks)} ms; ${tasks.length} of more than 50 ms`)
  console.log(`longest wait for a frame ${longest(frames)} ms; ${late} of ${frames.length} longer than ${UNNOTICED} ms`)
}
