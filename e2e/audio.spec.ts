import { readFile } from 'node:fs/promises'
import { basename } from 'node:path'
import { fileURLToPath } from 'node:url'
import type { Page } from '@playwright/test'
import { openRidewright } from './support/openRidewright.ts'
import { expect, test } from './support/test.ts'

const CLIPS = fileURLToPath(new URL('../tests/audio/clips/', import.meta.url))
/** The project's own song at four tempi, six seconds each; the first beat at 0.3 s. */
const clips = [
  { file: 'clip-124.wav', bpm: 124 },
  { file: 'clip-96.mp3', bpm: 96 },
  { file: 'clip-132.ogg', bpm: 132 },
  { file: 'clip-110.flac', bpm: 110 },
]

const region = (page: Page) => page.getByRole('region', { name: 'beat from a file' })
const hearings = (page: Page) => region(page).locator('[data-hearing]')
const tempo = (page: Page) => page.getByRole('complementary').getByLabel('tempo', { exact: true }).first()
const firstBeat = (page: Page) => page.getByRole('complementary').getByLabel('first beat', { exact: true })

async function openSection(page: Page): Promise<void> {
  await openRidewright(page)
  await page.getByRole('button', { name: /Twenty-Minute Spark/ }).click()
  await page.locator('.song-head').first().click()
  await expect(region(page)).toBeVisible()
}

interface Dropped {
  name: string
  bytes: string
}

const read = async (file: string): Promise<Dropped> => ({
  name: basename(file),
  bytes: (await readFile(`${CLIPS}${file}`)).toString('base64'),
})

/** Files let go over the panel, as a file manager does it. */
async function drop(page: Page, files: readonly Dropped[]): Promise<void> {
  const transfer = await page.evaluateHandle((given) => {
    const data = new DataTransfer()
    for (const { name, bytes } of given) {
      data.items.add(new File([Uint8Array.from(atob(bytes), (letter) => letter.charCodeAt(0))], name))
    }
    return data
  }, files)
  await region(page).dispatchEvent('dragover', { dataTransfer: transfer })
  await region(page).dispatchEvent('drop', { dataTransfer: transfer })
}

for (const { file, bpm } of clips) {
  test(`the beat of ${file} comes to the song it is dropped on, as one step`, async ({ page }) => {
    await openSection(page)
    const before = await tempo(page).inputValue()
    await drop(page, [await read(file)])
    await expect(hearings(page)).toHaveAttribute('data-hearing', 'heard', { timeout: 30_000 })
    await expect(tempo(page)).not.toHaveValue(before)
    const heard = Number(await tempo(page).inputValue())
    expect(Math.abs(heard / bpm - 1), `${heard} bpm`).toBeLessThan(0.01)
    // Within 70 ms, as beat trackers are judged; a compressed file may begin some milliseconds late. Whole beats apart is still on the beat.
    const beats = (Number(await firstBeat(page).inputValue()) - 0.3) / (60 / bpm)
    expect(Math.abs(beats - Math.round(beats)) * (60 / bpm)).toBeLessThan(0.07)
    await page.keyboard.press('Control+z')
    await expect(tempo(page)).toHaveValue(before)
  })
}

test('a broken file says so by name, and the others go on', async ({ page }) => {
  await openSection(page)
  const broken = { name: 'torn tape.mp3', bytes: Buffer.from('no music at all').toString('base64') }
  await drop(page, [broken, await read('clip-124.wav'), await read('clip-132.ogg')])
  await expect(hearings(page)).toHaveCount(3)
  await expect(hearings(page).nth(0)).toContainText('“torn tape.mp3” cannot be read as music by this browser.')
  await expect(hearings(page).nth(1)).toContainText(/“clip-124\.wav”: 12[34]/, { timeout: 30_000 })
  await expect(hearings(page).nth(2)).toContainText(/“clip-132\.ogg”: 13[12]/, { timeout: 30_000 })
  await hearings(page).nth(2).getByRole('button', { name: 'take this one' }).click()
  await expect.poll(async () => Math.abs(Number(await tempo(page).inputValue()) / 132 - 1)).toBeLessThan(0.01)
})

test('a file that is being read can be stopped, and nothing changes', async ({ page }) => {
  await openSection(page)
  const before = await tempo(page).inputValue()
  // So long that it is still being read when the button is found, on any machine.
  const long = { name: 'long.wav', bytes: wave(480).toString('base64') }
  await drop(page, [long, await read('clip-124.wav')])
  await hearings(page).nth(0).getByRole('button', { name: 'stop' }).click()
  await expect(hearings(page).nth(0)).toHaveText('“long.wav” was stopped.')
  await expect(hearings(page).nth(1)).toHaveAttribute('data-hearing', 'heard', { timeout: 30_000 })
  await expect(tempo(page)).toHaveValue(before)
})

/** A wave file of a hum, so many seconds long. */
function wave(seconds: number): Buffer {
  const rate = 8000
  const samples = Buffer.alloc(seconds * rate)
  for (let i = 0; i < samples.length; i++) samples[i] = 128 + Math.round(90 * Math.sin((2 * Math.PI * 110 * i) / rate))
  const head = Buffer.alloc(44)
  head.write('RIFF', 0)
  head.writeUInt32LE(36 + samples.length, 4)
  head.write('WAVEfmt ', 8)
  head.writeUInt32LE(16, 16)
  head.writeUInt16LE(1, 20)
  head.writeUInt16LE(1, 22)
  head.writeUInt32LE(rate, 24)
  head.writeUInt32LE(rate, 28)
  head.writeUInt16LE(1, 32)
  head.writeUInt16LE(8, 34)
  head.write('data', 36)
  head.writeUInt32LE(samples.length, 40)
  return Buffer.concat([head, samples])
}
