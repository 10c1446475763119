import { readFileSync } from 'node:fs'
import type { Page } from '@playwright/test'
import type { Ride } from '#plan/model.ts'
import { LANGUAGES, type Language } from '#words/language.ts'
import { badlySet } from './support/badlySet.ts'
import { openRide } from './support/openRide.ts'
import { openRidewright, ready } from './support/openRidewright.ts'
import { expect, test } from './support/test.ts'

/*
 * Every place in every language, as wide as a laptop, a tablet, and a phone: nothing is cut,
 * nothing lies over anything else, and nothing is said in the other language.
 */

const DEMO = JSON.parse(readFileSync('public/demo/twenty-minute-spark.ride.json', 'utf8')) as Ride

const WIDTHS = [
  { width: 1440, height: 900 },
  { width: 1024, height: 768 },
  { width: 390, height: 844 },
]

/** Chooses the language before the page is first drawn, as an earlier visit did. */
async function speak(page: Page, language: Language): Promise<void> {
  await page.addInitScript((chosen) => localStorage.setItem('ridewright.language', chosen), language)
}

const goTo = async (page: Page, place: string) => {
  await page.evaluate((fragment) => location.assign(`#/${fragment}`), place)
  await page.locator('.app-waiting').waitFor({ state: 'detached' })
}

/** Opens the demo ride as a file, and waits until it is there: a way to another place before would be taken back. */
async function openDemo(page: Page): Promise<void> {
  await openRide(page, DEMO)
  await page.locator('[data-curve="intent"]').waitFor()
}

/** One thing after another that can be looked at in a place. */
type Scenes = (page: Page, look: (scene: string) => Promise<void>) => Promise<void>

const SCENES: Readonly<Record<string, Scenes>> = {
  start: async (page, look) => {
    await look('no ride yet')
    await page.locator('textarea').first().fill('Paper Lanterns – The Odd Hours – 3:42 – 128 bpm\nBrickworks 3:75 132\nNight Market 3:05')
    await look('a list with a line that is not understood')
    await page.keyboard.press('Escape')
    await page.locator('h1').click()
    await page.keyboard.press('?')
    await page.getByRole('dialog').waitFor()
    await look('the key map')
  },
  draft: async (page, look) => {
    await openDemo(page)
    await look('nothing chosen')
    await page
      .locator('[data-block-id]')
      .nth(6)
      .click({ position: { x: 8, y: 30 } })
    await look('a block')
    await page
      .locator('[data-section-id]')
      .nth(1)
      .click({ position: { x: 30, y: 8 } })
    await look('a song')
  },
  sheet: async (page, look) => {
    await openDemo(page)
    await goTo(page, 'sheet')
    const kinds = page.locator('.sheet-bar-of-choices .ui-segmented').first().locator('label')
    await kinds.first().waitFor()
    for (let index = 0; index < (await kinds.count()); index++) {
      await kinds.nth(index).click()
      await page.evaluate(() => new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn))))
      await look(`sheet ${index + 1}`)
    }
  },
  lead: async (page, look) => {
    await openDemo(page)
    await goTo(page, 'lead')
    await look('before')
    await page.keyboard.press('Space')
    await look('running')
  },
  handover: async (page, look) => {
    await openDemo(page)
    await goTo(page, 'handover')
    await page.locator('svg, textarea').first().waitFor()
    await look('a ride to share')
  },
  setup: async (page, look) => {
    await openDemo(page)
    await goTo(page, 'setup')
    const parts = page.locator('.setup-head label')
    await parts.first().waitFor()
    for (let index = 0; index < (await parts.count()); index++) {
      await parts.nth(index).click()
      await look(`part ${index + 1}`)
    }
  },
  songs: async (page, look) => {
    await openDemo(page)
    await goTo(page, 'songs')
    await look('no songs')
  },
  log: async (page, look) => {
    await openDemo(page)
    await goTo(page, 'log')
    await look('no classes')
    await page.locator('.log-head [data-action]').click()
    await look('a class to log')
  },
}

for (const language of Object.keys(LANGUAGES) as Language[]) {
  for (const viewport of WIDTHS) {
    for (const [place, scenes] of Object.entries(SCENES)) {
      test(`${place} in ${language} at ${viewport.width} px: nothing cut, nothing over anything else`, async ({ page }) => {
        await page.setViewportSize(viewport)
        await speak(page, language)
        await openRidewright(page)
        const wrong: string[] = []
        await scenes(page, async (scene) => {
          await ready(page)
          wrong.push(...(await badlySet(page)).map((fault) => `${scene}: ${fault}`))
          await page.screenshot({ path: test.info().outputPath(`${scene.replaceAll(' ', '-')}.png`), fullPage: true })
        })
        expect(wrong).toEqual([])
      })
    }
  }
}

test('the language is proposed from the browser, chosen in the head, and kept', async ({ browser, baseURL }) => {
  const context = await browser.newContext({ locale: 'de-AT', baseURL: baseURL! })
  const page = await context.newPage()
  await openRidewright(page)
  await expect(page.locator('html')).toHaveAttribute('lang', 'de')
  await expect(page.getByRole('link', { name: 'Songs' })).toBeVisible()
  await page.getByLabel('Sprache').selectOption('English')
  await expect(page.locator('html')).toHaveAttribute('lang', 'en')
  await expect(page.getByRole('link', { name: 'songs', exact: true })).toBeVisible()
  await page.reload()
  await ready(page)
  await expect(page.locator('html')).toHaveAttribute('lang', 'en')
  await context.close()
})

test('another language leaves the ride, the way back, and the words in a field as they are', async ({ page }) => {
  await openRidewright(page)
  await page.locator('textarea').first().fill('Paper Lanterns 3:42 128')
  await page.getByLabel('language').selectOption('Deutsch')
  await expect(page.locator('html')).toHaveAttribute('lang', 'de')
  await expect(page.locator('textarea').first()).toHaveValue('Paper Lanterns 3:42 128')
})
