import type { Page } from '@playwright/test'
import { clip, dropFiles, hum, textFile } from './support/dropFiles.ts'
import { openRidewright } from './support/openRidewright.ts'
import { expect, test } from './support/test.ts'

/**
 * The project's own song at four tempi, six seconds each; the first beat at 0.3 s. The section they are dropped on has a
 * song at 172, so that the one at 96 is read at its double.
 */
const clips = [
  { file: 'clip-124.wav', bpm: 124 },
  { file: 'clip-96.mp3', bpm: 192 },
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

for (const { file, bpm } of clips) {
  test(`the beat of ${file} comes to the song it is dropped on, as one step`, async ({ page }) => {
    await openSection(page)
    const before = await tempo(page).inputValue()
    await dropFiles(page, region(page), [await clip(file)])
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

test('half and double stand beside what was heard, and a press reads the song so', async ({ page }) => {
  await openSection(page)
  await dropFiles(page, region(page), [await clip('clip-124.wav')])
  await expect(hearings(page)).toHaveAttribute('data-hearing', 'heard', { timeout: 30_000 })
  await hearings(page)
    .getByRole('button', { name: /^half: / })
    .click()
  await expect.poll(async () => Math.abs(Number(await tempo(page).inputValue()) / 62 - 1)).toBeLessThan(0.01)
  // The same file again is known, and changes nothing.
  await dropFiles(page, region(page), [await clip('clip-124.wav', 'another name.wav')])
  await expect(hearings(page)).toHaveText(/“another name.wav” was recognized and linked again/)
  expect(Math.abs(Number(await tempo(page).inputValue()) / 62 - 1)).toBeLessThan(0.01)
  await expect(region(page).getByLabel(/keep it on this device \(\d+ kB\)/)).not.toBeChecked()
})

test('a broken file says so by name, and the others go on', async ({ page }) => {
  await openSection(page)
  const broken = textFile('torn tape.mp3', 'no music at all')
  await dropFiles(page, region(page), [broken, await clip('clip-124.wav'), await clip('clip-132.ogg')])
  await expect(hearings(page)).toHaveCount(3)
  await expect(hearings(page).nth(0)).toContainText('This browser can’t read “torn tape.mp3” as music.')
  await expect(hearings(page).nth(1)).toContainText(/“clip-124\.wav”: 12[34]/, { timeout: 30_000 })
  await expect(hearings(page).nth(2)).toContainText(/“clip-132\.ogg”: 13[12]/, { timeout: 30_000 })
  await hearings(page).nth(2).getByRole('button', { name: 'use this' }).click()
  await expect.poll(async () => Math.abs(Number(await tempo(page).inputValue()) / 132 - 1)).toBeLessThan(0.01)
})

test('a file that is being read can be stopped, and nothing changes', async ({ page }) => {
  await openSection(page)
  const before = await tempo(page).inputValue()
  // So long that it is still being read when the button is found, on any machine.
  await dropFiles(page, region(page), [hum('long.wav', 480), await clip('clip-124.wav')])
  await hearings(page).nth(0).getByRole('button', { name: 'stop' }).click()
  await expect(hearings(page).nth(0)).toHaveText('“long.wav” was stopped.')
  await expect(hearings(page).nth(1)).toHaveAttribute('data-hearing', 'heard', { timeout: 30_000 })
  await expect(tempo(page)).toHaveValue(before)
})
