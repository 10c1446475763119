import { cp, mkdir, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import type { Locator, Page } from '@playwright/test'
import { barriers } from './support/barriers.ts'
import { CLIPS, clip, type Dropped, dropFiles, hum, textFile } from './support/dropFiles.ts'
import { tabTo } from './support/keyboard.ts'
import { openRidewright, ready } from './support/openRidewright.ts'
import { expect, test } from './support/test.ts'

const LIST = [128, 170, 132, 150, 140, 176, 90, 126, 160].map((bpm, i) => `Song ${i + 1}, Salt Lantern, 3:3${i}, ${bpm}`).join('\n')

async function axeClean(page: Page): Promise<void> {
  expect(await barriers(page)).toEqual([])
}

test('a playlist becomes a class by a rough draft, chosen among several and undone in one step', async ({ page }) => {
  await openRidewright(page)
  await page.getByLabel('title', { exact: true }).fill('Tuesday')
  await page.getByText('30', { exact: true }).click()
  await page.getByLabel('playlist', { exact: true }).fill(LIST)
  await page.getByRole('button', { name: 'make a ride from 9 songs' }).click()
  await page.getByRole('button', { name: 'draft it for me' }).click()
  const offer = page.getByRole('dialog', { name: 'draft it for me' })
  await expect(offer).toContainText('a first draft of 9 songs')
  await expect(offer).toContainText('This draft: ')
  const first = await offer.getByRole('listitem').allInnerTexts()
  await axeClean(page)
  await offer.getByRole('button', { name: 'try another' }).click()
  await expect(offer.getByLabel('draft', { exact: true })).toHaveValue('2')
  await expect(offer.getByRole('listitem')).not.toHaveText(first)
  await offer.getByRole('button', { name: 'use this draft' }).click()
  await expect(page.locator('[data-block-id]').first()).toBeAttached()
  await expect(page.getByRole('button', { name: 'draft it for me' })).toHaveCount(0)
  await page.getByRole('button', { name: 'undo' }).click()
  await expect(page.locator('[data-block-id]')).toHaveCount(0)
})

test('a tempo is tapped along with the song and taken', async ({ page }) => {
  await openRidewright(page)
  await page.getByLabel('playlist', { exact: true }).fill('Low Tide, Salt Lantern, 3:45')
  await page.getByRole('button', { name: 'make a ride from this song' }).click()
  await page.locator('[data-stage-stop="section"]').first().click()
  await page.getByRole('button', { name: 'tap the tempo' }).click()
  const dialog = page.getByRole('dialog', { name: 'tap the tempo of Low Tide' })
  await expect(dialog.getByRole('button', { name: /on every beat/ })).toBeFocused()
  await tap(page, 9, 450)
  // 60 / 0.45; browsers round the times of keys to a tenth of a millisecond.
  await expect(dialog.getByText(/^133\.3[34]$/)).toBeVisible()
  await expect(dialog.getByText(/^bpm, ±/)).toBeVisible()
  await axeClean(page)
  await dialog.getByRole('button', { name: /^use [\d.]+ bpm$/ }).click()
  await expect(dialog).toHaveCount(0)
  await expect(page.getByLabel('tempo', { exact: true })).toHaveValue(/^133\.3[234]$/)
})

test.describe('with a finger too', () => {
  test.use({ hasTouch: true })

  test('each press of the pad counts once, by whatever hand', async ({ page }) => {
    await openRidewright(page)
    await page.getByLabel('playlist', { exact: true }).fill('Low Tide, Salt Lantern, 3:45')
    await page.getByRole('button', { name: 'make a ride from this song' }).click()
    await page.locator('[data-stage-stop="section"]').first().click()
    await page.getByRole('button', { name: 'tap the tempo' }).click()
    const pad = page.getByRole('dialog').locator('.tap-pad')
    const hands = [() => pad.click(), () => pad.tap(), () => page.keyboard.press('Enter'), () => page.keyboard.press('Space')]
    for (const [index, hand] of hands.entries()) {
      await hand()
      await expect(pad).toContainText(`${index + 1} of at least 5 taps`)
    }
    await page.keyboard.press('x')
    await expect(pad).toContainText('5 taps')
  })
})

test('songs are kept over a reload and found again', async ({ page }) => {
  await openRidewright(page)
  await page.getByRole('link', { name: 'songs' }).click()
  await page
    .getByLabel('songs', { exact: true })
    .fill('#EXTM3U\n#EXTINF:215,Nine Tin Kites - Brickworks Elevator\na.mp3\n#EXTINF:198,Salt Lantern - Low Tide\nb.mp3')
  await page.getByRole('button', { name: 'add 2 songs' }).click()
  await expect(page.getByRole('row')).toHaveCount(3)
  await page.getByRole('button', { name: 'edit Low Tide' }).click()
  await page.getByLabel('tempo', { exact: true }).fill('128')
  await page.getByLabel('energy').selectOption('4')
  await page.getByRole('button', { name: 'save to my songs' }).click()
  await expect(page.getByRole('row', { name: /Low Tide/ })).toContainText('4 of 5')
  await axeClean(page)
  await page.reload()
  await page.getByLabel('find', { exact: true }).fill('lantern')
  await expect(page.getByRole('row')).toHaveCount(2)
  await expect(page.getByRole('row', { name: /Low Tide/ })).toContainText('32 · 64 · 128')
})

/**
 * Taps the space bar evenly, each press at its own moment whatever the machine is busy with.
 *
 * @param apart milliseconds from tap to tap
 */
async function tap(page: Page, times: number, apart: number): Promise<void> {
  const session = await page.context().newCDPSession(page)
  const first = Date.now()
  const key = { key: ' ', code: 'Space', windowsVirtualKeyCode: 32 }
  for (let beat = 0; beat < times; beat++) {
    const timestamp = (first + beat * apart) / 1000
    await session.send('Input.dispatchKeyEvent', { type: 'keyDown', text: ' ', timestamp, ...key })
    await session.send('Input.dispatchKeyEvent', { type: 'keyUp', timestamp: timestamp + 0.05, ...key })
  }
}

const hearings = (page: Page): Locator => page.locator('.shelf-queue [data-hearing]')
const row = (page: Page, name: RegExp): Locator => page.getByRole('row', { name })

const fourClips = (): Promise<Dropped[]> =>
  Promise.all([clip('clip-96.mp3'), clip('clip-132.ogg'), clip('clip-110.flac'), clip('clip-124.wav', 'Brass Otter - Quay.wav')])

async function openSongs(page: Page): Promise<void> {
  await openRidewright(page)
  await page.getByRole('link', { name: 'songs' }).click()
  await expect(page.getByRole('heading', { name: 'songs', level: 1 })).toBeVisible()
}

/** Drops files anywhere on the page. */
const drop = (page: Page, files: readonly Dropped[]): Promise<void> => dropFiles(page, page.locator('main'), files)

test('dropped files become songs under the names of their tags; what cannot be read says so, and the next time all are linked', async ({
  page,
}) => {
  await openSongs(page)
  const [first, ...others] = await fourClips()
  await drop(page, [first!, textFile('torn tape.mp3', 'no music at all'), textFile('notes.txt', 'no music'), ...others])
  await expect(hearings(page)).toHaveCount(5)
  await axeClean(page)
  await expect(page.locator('[data-hearing="heard"]')).toHaveCount(4, { timeout: 60_000 })
  await expect(page.locator('[data-hearing="failed"]')).toHaveText('This browser can’t read “torn tape.mp3” as music.')
  await expect(page.locator('.shelf-queue')).toContainText('4 files read, 1 can’t be read. Skipped 1 file (not audio).')
  for (const [title, artist, bpm] of [
    ['Brickworks Elevator', 'Nine Tin Kites', 96],
    ['Low Tide', 'Salt Lantern', 132],
    ['Slate Roof', 'Salt Lantern', 110],
    ['Quay', 'Brass Otter', 124],
  ] as const) {
    await expect(row(page, new RegExp(title))).toContainText(artist)
    const heard = Number(await row(page, new RegExp(title)).locator('[data-head="tempo"]').textContent())
    expect(Math.abs(heard / bpm - 1), `${title}: ${heard} bpm`).toBeLessThan(0.01)
    await expect(row(page, new RegExp(title)).getByRole('img', { name: `loudness of ${title} over time` })).toBeVisible()
  }
  await axeClean(page)

  await page.reload()
  await ready(page)
  await expect(row(page, /Low Tide/)).not.toContainText('file at hand')
  await drop(page, await fourClips())
  await expect(page.locator('[data-hearing="known"]')).toHaveCount(4, { timeout: 30_000 })
  await expect(page.getByRole('row')).toHaveCount(5)
  await expect(row(page, /Low Tide/)).toContainText('file at hand')
})

test('a folder is read with the folders in it, and what is no music stays out', async ({ page }) => {
  const folder = await mkdtemp(join(tmpdir(), 'ridewright-songs-'))
  await mkdir(join(folder, 'Side B'))
  await cp(join(CLIPS, 'clip-132.ogg'), join(folder, 'clip-132.ogg'))
  await cp(join(CLIPS, 'clip-110.flac'), join(folder, 'Side B/clip-110.flac'))
  await writeFile(join(folder, 'cover.jpg'), 'no picture')
  await openSongs(page)
  const chooser = page.waitForEvent('filechooser')
  await page.getByRole('button', { name: 'add a folder…' }).click()
  await (await chooser).setFiles(folder)
  await expect(page.locator('[data-hearing="heard"]')).toHaveCount(2, { timeout: 60_000 })
  await expect(page.locator('.shelf-queue')).toContainText('Skipped 1 file (not audio).')
  await expect(row(page, /Slate Roof/)).toBeVisible()
  await rm(folder, { recursive: true })
})

test('reading two dozen files goes on in every place; one or all can be stopped, by key as well', async ({ page }) => {
  await openRidewright(page)
  const files = Array.from({ length: 24 }, (_, i) => hum(`take ${i + 1}.wav`, 60 + i))
  await drop(page, files)
  await expect(page.getByRole('status').filter({ hasText: '24 songs go to my songs as they’re read.' })).toBeVisible()
  await expect(page.getByRole('button', { name: /^reading \d+ songs$/ })).toBeVisible()
  await page.getByRole('button', { name: 'open my songs' }).click()
  await expect(hearings(page)).toHaveCount(24)
  await page.getByRole('button', { name: 'stop reading take 24.wav' }).click()
  await expect(hearings(page).filter({ hasText: 'take 24.wav' })).toHaveAttribute('data-hearing', 'aborted')
  await expect(page.locator('[data-hearing="heard"]').first()).toBeVisible({ timeout: 30_000 })
  await page.getByRole('button', { name: 'add a folder…' }).focus()
  await tabTo(page, page.getByRole('button', { name: 'stop all' }), 5)
  await page.keyboard.press('Enter')
  await expect(page.getByRole('button', { name: /^reading/ })).toHaveCount(0)
  await expect(hearings(page).filter({ hasText: 'take 23.wav' })).toHaveAttribute('data-hearing', 'aborted')
  const heard = await page.locator('[data-hearing="heard"]').count()
  await expect(page.locator('[data-hearing="aborted"]')).toHaveCount(24 - heard)
  await expect(page.getByRole('row')).toHaveCount(heard + 1)
  await page.getByRole('button', { name: 'clear the list' }).click()
  await expect(hearings(page)).toHaveCount(0)
})

test('a song’s file is kept when asked, is there after a reload, and goes and comes back with its song', async ({ page }) => {
  await openSongs(page)
  await drop(page, [await clip('clip-132.ogg')])
  await expect(row(page, /Low Tide/)).toContainText('file at hand', { timeout: 30_000 })
  const dialog = page.getByRole('dialog', { name: 'edit Low Tide' })
  const box = dialog.getByLabel('save its file on this device (33 kB)')
  await page.getByRole('button', { name: 'edit Low Tide', exact: true }).click()
  await expect(box).not.toBeChecked()
  await box.check()
  await axeClean(page)
  await dialog.getByLabel('markers').fill('1 intro\n2 chorus')
  await dialog.getByLabel('first beat').focus()
  await dialog.getByRole('button', { name: 'save to my songs' }).click()
  await expect(row(page, /Low Tide/)).toContainText('2 markers, file saved')

  await page.reload()
  await ready(page)
  await expect(row(page, /Low Tide/)).toContainText('file saved')
  await page.getByRole('button', { name: 'remove Low Tide from my songs' }).click()
  await expect(page.getByText('Removed “Low Tide” and its saved file.')).toBeVisible()
  await expect(page.getByRole('button', { name: 'restore', exact: true })).toBeFocused()
  await page.keyboard.press('Enter')
  await expect(row(page, /Low Tide/)).toContainText('file saved')
  await page.getByRole('button', { name: 'edit Low Tide', exact: true }).click()
  await box.uncheck()
  await dialog.getByRole('button', { name: 'cancel' }).click()
  await expect(row(page, /Low Tide/)).toContainText('file at hand')
})

test('a ride and music dropped together each go their way, and the ride is offered the songs that fit, with the reasons', async ({
  page,
}) => {
  const ride = await readFile(fileURLToPath(new URL('../public/demo/twenty-minute-spark.ride.json', import.meta.url)), 'utf8')
  await openRidewright(page)
  await drop(page, [textFile('spark.ride.json', ride), ...(await fourClips())])
  await expect(page.locator('[data-curve="intent"]')).toBeVisible()
  await expect(page.getByRole('button', { name: 'open my songs' })).toBeVisible()
  await expect(page.getByRole('button', { name: /^reading/ })).toHaveCount(0, { timeout: 60_000 })
  await page.locator('.song-head').first().click()
  await page.getByText('replace the song', { exact: true }).click()
  const offers = page.locator('.panel-shelf li')
  await expect(offers).toHaveCount(4)
  await expect(offers.first()).toContainText(/(the same cadence|rpm (faster|slower)), .*eights? (shorter|longer), (same|more|less) energy/)
  await axeClean(page)
})

test('a playlist’s file dropped on the page is a list: of the new ride at the start, of the shelf among the songs and from elsewhere', async ({
  page,
}) => {
  const m3u = textFile('set.m3u', '#EXTM3U\n#EXTINF:225,Salt Lantern - Low Tide\nlow-tide.mp3\n#EXTINF:190,Brass Otter - Quay\nquay.mp3\n')
  await openRidewright(page)
  await drop(page, [m3u])
  await expect(page.getByLabel('playlist', { exact: true })).toBeFocused()
  await expect(page.getByRole('table', { name: 'what was read' })).toContainText('Low Tide')
  await page.getByRole('button', { name: 'make a ride from 2 songs' }).click()
  await expect(page.locator('.song-head')).toHaveCount(2)

  await drop(page, [textFile('set.csv', 'title,artist,bpm,length\nSlate Roof,Salt Lantern,110,3:30'), textFile('notes.pdf', 'no list')])
  await expect(page.locator('.ui-notice')).toContainText('“set.csv” is a list of 1 song; it’s waiting in my songs.')
  await axeClean(page)
  await page.getByRole('button', { name: 'open my songs' }).click()
  await page.getByRole('button', { name: 'add 1 song' }).click()
  await expect(row(page, /Slate Roof/)).toBeVisible()

  await drop(page, [m3u])
  await page.getByRole('button', { name: 'add 2 songs' }).click()
  await expect(row(page, /Low Tide/)).toBeVisible()
})

test('leaving a tempo few songs have for a button presses that button: what is said of it moves none', async ({ page }) => {
  await openRidewright(page)
  await page.getByLabel('playlist', { exact: true }).fill('Low Tide, Salt Lantern, 3:45, 128')
  await page.getByRole('button', { name: 'make a ride from this song' }).click()
  await page.locator('.song-head').first().click()
  await page.getByLabel('tempo', { exact: true }).fill('40')
  await page.getByRole('button', { name: 'tap the tempo' }).click()
  await page.getByRole('dialog', { name: 'tap the tempo of Low Tide' }).getByRole('button', { name: 'cancel' }).click()
  await expect(page.getByText('40 bpm is slower than songs are usually counted (48 to 215 bpm); is it 80?')).toBeVisible()
  await page.getByText('replace the song', { exact: true }).click()
  await page.getByLabel('new title').fill('Quay')
  await page.getByLabel('new tempo').fill('250')
  await page.getByRole('button', { name: 'replace the song' }).click()
  await expect(page.locator('.song-head')).toContainText('Quay')
})
