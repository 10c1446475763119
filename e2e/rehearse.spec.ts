import { fileURLToPath } from 'node:url'
import AxeBuilder from '@axe-core/playwright'
import type { Page } from '@playwright/test'
import { openRidewright, ready } from './support/openRidewright.ts'
import { renderedOnsets, soundNow, watchSoundCard } from './support/soundCard.ts'
import { expect, test } from './support/test.ts'

const CLIP = fileURLToPath(new URL('../tests/audio/clips/clip-124.wav', import.meta.url))
/** The clip's beats as its script made them: seconds. */
const BEATS = Array.from({ length: 11 }, (_, i) => 0.3 + (i * 60) / 124)

const bar = (page: Page) => page.getByRole('region', { name: 'rehearse' })
const press = (page: Page, name: string) => bar(page).getByRole('button', { name, exact: true }).click()
const status = (page: Page) => bar(page).locator('.rehearsal-state')
const slot = (page: Page, name: string) => bar(page).locator(`[data-slot="${name}"]`)
const playhead = (page: Page) => page.locator('.playhead')
const hearBeat = (page: Page) => page.getByRole('region', { name: 'hear the beat' })
const panel = (page: Page) => page.getByRole('complementary')

async function openSpark(page: Page): Promise<void> {
  await watchSoundCard(page)
  await openRidewright(page)
  await page.getByRole('button', { name: /Twenty-Minute Spark/ }).click()
  await expect(page.locator('[data-block-id]').first()).toBeAttached()
}

async function rehearse(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'rehearse', exact: true }).click()
  await expect(bar(page)).toBeVisible()
}

/** The first song with the clip's file at hand, its grid as the clip was made. */
async function giveClip(page: Page): Promise<void> {
  await page.locator('.song-head').first().click()
  await page.getByRole('region', { name: 'beat from a file' }).locator('input[type="file"]').first().setInputFiles(CLIP)
  await expect(panel(page).getByLabel('length', { exact: true }).first()).toHaveValue('0:06', { timeout: 30_000 })
  for (const [label, value] of [
    ['tempo', '124'],
    ['first beat', '0.3'],
  ] as const) {
    await panel(page).getByLabel(label, { exact: true }).first().fill(value)
    await panel(page).getByLabel(label, { exact: true }).first().press('Enter')
  }
}

async function axeClean(page: Page): Promise<void> {
  const { violations } = await new AxeBuilder({ page }).analyze()
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`)).toEqual([])
}

/** Seconds of the ride where the line stands, and of the audio clock at the same moment. */
const headAndClock = (page: Page) =>
  page.evaluate(() => {
    const x = new DOMMatrix(getComputedStyle(document.querySelector('.playhead')!).transform).e
    return { x, time: soundCard.contexts.at(-1)!.currentTime }
  })

test('the clicks of a song that is heard lie within two milliseconds of its beats and of its own onsets', async ({ page }) => {
  await openSpark(page)
  await giveClip(page)
  await hearBeat(page).getByRole('button', { name: 'hear the beat' }).click()
  // Those that lie ahead are given to the sound card too, and taken back by the stop.
  const sounded = async () => {
    const { clicks, time } = await soundNow(page)
    return clicks.filter((when) => when < time).length
  }
  await expect.poll(sounded, { timeout: 30_000 }).toBeGreaterThanOrEqual(8)
  await hearBeat(page).getByRole('button', { name: 'stop' }).click()
  const { clickOnsets, songOnsets } = await renderedOnsets(page, BEATS)
  expect(clickOnsets.length).toBeGreaterThanOrEqual(8)
  // A slow stop lets it go past the end of the clip, where no beat is known.
  for (const [i, click] of clickOnsets.slice(0, BEATS.length).entries()) {
    expect(Math.abs(click - BEATS[i]!), `click ${i} from its beat`).toBeLessThan(0.002)
    expect(Math.abs(click - songOnsets[i]!), `click ${i} from the song`).toBeLessThan(0.002)
  }
})

test('the ride plays from any point: its line goes with the audio clock, and its words with the line', async ({ page }) => {
  await openSpark(page)
  await rehearse(page)
  await press(page, 'play')
  await expect(status(page)).toHaveText('Playing the ride.')
  await expect(playhead(page)).toBeVisible()
  await expect.poll(async () => (await headAndClock(page)).x).toBeGreaterThan(2)
  const first = await headAndClock(page)
  await expect.poll(async () => (await headAndClock(page)).time - first.time, { timeout: 20_000 }).toBeGreaterThan(3)
  const second = await headAndClock(page)
  // The stage opens at 4.2 pixels a second; a frame may be late, the clock is not.
  expect(Math.abs((second.x - first.x) / 4.2 - (second.time - first.time))).toBeLessThan(0.5)
  await expect(slot(page, 'name')).toHaveText('settle')
  await expect(slot(page, 'eight')).toContainText('of 8')
  await press(page, 'next')
  await expect(slot(page, 'name')).toHaveText('flat')
  await press(page, 'pause')
  await expect(status(page)).toHaveText('Ready to play the ride.')
  const clock = await slot(page, 'clock').textContent()
  const { clicks, time } = await soundNow(page)
  expect(clicks.filter((when) => when > time)).toEqual([])
  await press(page, 'from the start')
  await expect(slot(page, 'clock')).toContainText('0:00 of')
  expect(clock).not.toContain('0:00 of')
  await page.locator('.chart-place').click({ position: { x: 600, y: 40 } })
  await expect(slot(page, 'clock')).toContainText(/^2:2\d of/)
})

test('songs sound where their file is at hand, and the place is left in silence', async ({ page }) => {
  await openSpark(page)
  await giveClip(page)
  await rehearse(page)
  await press(page, 'from the start')
  await press(page, 'play')
  await expect.poll(async () => (await soundNow(page)).songs.length).toBe(1)
  // Every click lies on a beat of the file that sounds under it, however the section is placed in the ride.
  await expect.poll(async () => (await soundNow(page)).clicks.length, { timeout: 30_000 }).toBeGreaterThanOrEqual(6)
  const { songs, clicks } = await soundNow(page)
  const inFile = clicks.slice(0, 6).map((when) => when - songs[0]!.when + songs[0]!.offset)
  for (const [i, second] of inFile.entries()) expect(Math.abs(second - BEATS[i]!), `click ${i}`).toBeLessThan(0.002)
  await page.getByRole('link', { name: 'print', exact: true }).click()
  await expect.poll(async () => (await soundNow(page)).state).toBe('closed')
})

test('everything has a key, and shaky blocks are marked, rehearsed and kept', async ({ page }) => {
  await openSpark(page)
  await page.keyboard.press('p')
  await expect(status(page)).toHaveText('Playing the ride.')
  await expect(slot(page, 'name')).toHaveText('settle')
  await page.keyboard.press('n')
  await expect(slot(page, 'name')).toHaveText('flat')
  await page.keyboard.press('x')
  await expect(bar(page).getByRole('list', { name: 'blocks that need practice' })).toContainText('flat')
  await expect(page.locator('[data-shaky]')).toContainText('needs practice')
  await page.keyboard.press('r')
  await expect(status(page)).toHaveText('Playing flat in a loop.')
  await page.keyboard.press('r')
  await page.keyboard.press('Space')
  await expect(status(page)).toHaveText('Ready to play the ride.')
  await page.keyboard.press('b')
  await page.keyboard.press('b')
  await expect(slot(page, 'name')).toHaveText('settle')
  await press(page, 'rehearse marked blocks')
  await expect(status(page)).toHaveText('Playing the marked blocks.')
  await page.keyboard.press('p')
  await expect(page.getByText('saved', { exact: true })).toBeVisible()
  await page.reload()
  await ready(page)
  await expect(page.locator('[data-shaky]')).toHaveCount(1)
  await expect(page.locator('[data-shaky]')).toHaveAttribute('aria-label', /, needs practice$/)
  await rehearse(page)
  await bar(page)
    .getByRole('button', { name: /^flat: I’ve got it/ })
    .click()
  await expect(page.locator('[data-shaky]')).toHaveCount(0)
  await page.keyboard.press('Control+z')
  await expect(page.locator('[data-shaky]')).toHaveCount(1)
})

test('cues are spoken where the browser has a voice, and where it has none the page says so', async ({ page, secondProfile }) => {
  await secondProfile.addInitScript(() => {
    Object.defineProperty(globalThis, 'speechSynthesis', { value: undefined })
  })
  await openSpark(secondProfile)
  await rehearse(secondProfile)
  await press(secondProfile, 'sound and voice')
  await expect(secondProfile.getByRole('dialog')).toContainText('This browser has no voice to speak cues with.')

  await page.addInitScript(() => {
    const said: string[] = []
    const stub = {
      said,
      getVoices: () => [{ name: 'Stub', lang: 'en-GB', voiceURI: 'stub' }],
      addEventListener: () => {},
      removeEventListener: () => {},
      speak: ({ text }: { text: string }) => said.push(text),
      cancel: () => said.push('(hush)'),
    }
    Object.defineProperty(globalThis, 'speechSynthesis', { value: stub })
    Object.defineProperty(globalThis, 'SpeechSynthesisUtterance', {
      value: class {
        text: string
        constructor(text: string) {
          this.text = text
        }
      },
    })
  })
  await openSpark(page)
  await rehearse(page)
  await press(page, 'sound and voice')
  await page.getByRole('dialog').getByLabel('speak the cues').check()
  await expect(page.getByRole('dialog').getByLabel('voice')).toHaveValue('')
  await axeClean(page)
  await page.getByRole('dialog').getByRole('button', { name: 'close' }).click()
  await press(page, 'from the start')
  await press(page, 'play')
  const said = () => page.evaluate(() => (speechSynthesis as unknown as { said: string[] }).said)
  await expect.poll(said, { timeout: 20_000 }).toContain('Light base. Never loose.')
  await press(page, 'pause')
  expect((await said()).at(-1)).toBe('(hush)')
})

test('parts of a song are marked while it plays, each as one step', async ({ page }) => {
  await openSpark(page)
  await page.locator('.song-head').first().click()
  const region = hearBeat(page)
  // Nothing is at hand: whoever plays the song elsewhere says when its one is.
  await region.getByRole('button', { name: 'beat 1 is now' }).click()
  await expect(region.getByRole('button', { name: 'stop' })).toBeVisible()
  await expect(region.locator('[data-slot="place"]')).toContainText(/eight (?:[2-9]|\d\d)/)
  await region.getByRole('button', { name: 'verse' }).click()
  await expect(page.getByRole('button', { name: 'undo' })).toBeEnabled()
  await region.getByRole('button', { name: 'that’s a beat 1' }).click()
  await expect(region).toContainText('1 of 16 taps.')
  await axeClean(page)
  await region.getByRole('button', { name: 'stop' }).click()
  await panel(page).getByText('no-talk zones, markers, lyrics').click()
  await expect(panel(page).getByLabel('markers', { exact: true })).toHaveValue(/^\d+ verse$/m)
})

test('the bar stands in the dark and on a phone without a fault', async ({ page }) => {
  await page.emulateMedia({ colorScheme: 'dark' })
  await openSpark(page)
  await page.setViewportSize({ width: 390, height: 844 })
  await rehearse(page)
  await axeClean(page)
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390)
  await bar(page).getByRole('button', { name: 'got it' }).click()
  await expect(bar(page)).not.toContainText('off the bike')
  await page.reload()
  await ready(page)
  await rehearse(page)
  await expect(bar(page)).not.toContainText('off the bike')
})
