import type { Page } from '@playwright/test'
import { clip, dropFiles, textFile } from '#e2e/support/dropFiles.ts'
import { shownLink } from '#e2e/support/shownLink.ts'
import { expect } from '#e2e/support/test.ts'
import { at, drafted, inTurn, kept, press, ridge, type Scene, spark, start, stop, unfolded, unlessSeen, withSongs } from './steps.ts'

const SHEETS = ['compact', 'large', 'cards', 'substitute', 'plain', 'phone', 'checklist'] as const

export const SHEET: readonly Scene[] = [
  ...SHEETS.map(
    (sheet): Scene => ({
      name: `the sheets, ${sheet}`,
      prepare: at('sheet', spark),
      show: async (page) => {
        await page.locator(`label:has(input[value="${sheet}"])`).click()
        await unfolded(page, '.sheet-place')
      },
      own: '.sheet-place',
    }),
  ),
  {
    name: 'the phone scan',
    prepare: at('sheet', spark),
    show: async (page) => {
      await page.locator('label:has(input[value="phone"])').click()
      const open = page
        .locator('.sheet-place button')
        .filter({ hasText: /screen|tap|open/i })
        .first()
      if (await open.isVisible()) await open.click()
    },
    own: '.app',
  },
]

const linkOf = async (page: Page): Promise<string> => {
  await page.locator('.app-head a[href^="#/handover"]').click()
  return shownLink(page)
}

export const SHARING: readonly Scene[] = [
  { name: 'handing over', prepare: at('handover', spark), show: (page) => shownLink(page).then(() => undefined) },
  {
    name: 'handing over, versions kept',
    prepare: async (page) => {
      await at('handover', spark)(page)
      await page.getByLabel('name of this version').fill('before the class')
      await page.keyboard.press('Enter')
      await page.locator('.app-head a[href^="#/draft"]').click()
      await stop(page, 's1b2').focus()
      await page.keyboard.press('Alt+ArrowUp')
      await kept(page)
      await page.locator('.app-head a[href^="#/handover"]').click()
    },
    show: (page) => expect(page.getByRole('button', { name: /before the class/ }).first()).toBeVisible(),
  },
  {
    name: 'versions compared',
    prepare: async (page) => {
      await at('handover', spark)(page)
      await page.getByLabel('name of this version').fill('before the class')
      await page.keyboard.press('Enter')
      await page.locator('.app-head a[href^="#/draft"]').click()
      await stop(page, 's1b2').focus()
      await page.keyboard.press('Alt+ArrowUp')
      await kept(page)
      await page.locator('.app-head a[href^="#/handover"]').click()
    },
    show: unlessSeen('dialog[open], .compare', press(/^compare/)),
    own: '.app',
  },
  {
    name: 'a ride received',
    prepare: async (page) => {
      await spark(page)
      const link = await linkOf(page)
      await page.goto('about:blank')
      await page.goto(link)
      await drafted(page)
    },
  },
  {
    name: 'a ride that comes back changed on both sides',
    prepare: async (page) => {
      await spark(page)
      await linkOf(page)
      await page.getByRole('textbox', { name: 'link', exact: true }).press('ControlOrMeta+c')
      await page.locator('.app-head a[href^="#/draft"]').click()
      await stop(page, 's1b2').focus()
      await page.keyboard.press('Alt+ArrowUp')
      await stop(page, 's1b3').focus()
      await page.keyboard.press('+')
      const theirs = await linkOf(page)
      await page.locator('.app-head a[href^="#/draft"]').click()
      await page.keyboard.press('ControlOrMeta+z')
      await page.keyboard.press('ControlOrMeta+z')
      await stop(page, 's1b2').focus()
      await page.keyboard.press('Alt+ArrowDown')
      await kept(page)
      await page.goto('about:blank')
      await page.goto(theirs)
      await drafted(page)
    },
    show: unlessSeen('.merge', async (page) => {
      await page.getByRole('button', { name: /what changed/ }).click()
      await expect(page.locator('.merge')).toBeVisible()
    }),
    own: 'main',
  },
]

const part = (value: string) => (page: Page) => page.locator(`.setup-head label:has(input[value="${value}"])`).click()

export const SETUP: readonly Scene[] = [
  { name: 'the bike', prepare: at('setup', spark), show: (page) => unfolded(page, '.setup') },
  {
    name: 'the bike, calibrated by watts',
    prepare: at('setup', spark),
    show: unlessSeen('.calibrate', press(/watts/)),
    own: '.setup-body',
  },
  {
    name: 'the bike, calibrated by feel',
    prepare: at('setup', spark),
    show: unlessSeen('.calibrate', press(/by feel/)),
    own: '.setup-body',
  },
  { name: 'the riders', prepare: at('setup', spark), show: part('riders'), own: '.setup-body' },
  { name: 'the rules', prepare: at('setup', spark), show: part('rules'), own: '.setup-body' },
]

const toSongs = async (page: Page) => {
  await start(page)
  await page.locator('.app-head a[href^="#/songs"]').first().click()
}

export const SONGS: readonly Scene[] = [
  { name: 'the songs, none yet', prepare: toSongs },
  {
    name: 'the songs, some chosen, with a ride open',
    prepare: async (page) => {
      await withSongs(page)
      await page.locator('.app-name').click()
      await at('songs', spark)(page)
    },
    show: async (page) => {
      for (const box of (await page.locator('tbody input[type="checkbox"]').all()).slice(0, 2)) await box.check()
    },
  },
  {
    name: 'the songs, one edited',
    prepare: withSongs,
    show: unlessSeen('dialog[open]', press(/^edit/)),
  },
  {
    name: 'the songs, one edited whose file is at hand',
    prepare: toSongs,
    show: unlessSeen('dialog[open]', async (page) => {
      await dropFiles(page, page.locator('main'), [await clip('clip-132.ogg')])
      await expect(page.locator('[data-hearing="heard"], [data-hearing="known"]').first()).toBeVisible({ timeout: 60_000 })
      await press(/^edit/)(page)
    }),
  },
  {
    name: 'the songs, files read',
    prepare: toSongs,
    show: unlessSeen('[data-hearing="failed"]', async (page) => {
      await dropFiles(page, page.locator('main'), [
        await clip('clip-132.ogg'),
        await clip('clip-110.flac'),
        textFile('torn tape.mp3', 'no music'),
      ])
      await expect(page.locator('[data-hearing="failed"]')).toBeVisible({ timeout: 60_000 })
      await expect(page.locator('[data-hearing="heard"], [data-hearing="known"]')).toHaveCount(2, { timeout: 60_000 })
    }),
  },
  {
    name: 'the songs, one taken away',
    prepare: withSongs,
    show: async (page) => {
      if ((await page.locator('.shelf-removed, .shelf-list .ui-notice').count()) === 0) await press(/^remove/)(page)
    },
    own: '.shelf-list',
  },
]

const logged = async (page: Page) => {
  await at('log', spark)(page)
  await page.getByRole('button', { name: /as taught/ }).click()
  await page.locator('.log-actions button').first().click()
  await expect(page.getByRole('button', { name: /^delete/ }).first()).toBeVisible()
}

export const LOG: readonly Scene[] = [
  { name: 'the log, empty', prepare: at('log', spark) },
  { name: 'the log, a class in it', prepare: logged },
  { name: 'an entry of the log', prepare: at('log', spark), show: unlessSeen('.log-entry', press(/as taught/)), own: 'main' },
  {
    name: 'the log, a class deleted',
    prepare: logged,
    show: async (page) => {
      const deletes = page.getByRole('button', { name: /^delete/ })
      if ((await deletes.count()) > 0) await deletes.first().click()
    },
    own: 'main',
  },
]

const CLASS = '2026-01-15T18:26:00Z'
const begun = inTurn(at('lead', ridge), (page) => page.keyboard.press('Space'))

export const TEACHING: readonly Scene[] = [
  { name: 'a class about to begin', prepare: at('lead', ridge), clock: CLASS },
  { name: 'a class under way, late', prepare: begun, clock: CLASS, own: 'main' },
  {
    name: 'a class of another ride under way',
    prepare: async (page) => {
      await begun(page)
      await page.goto('about:blank')
      await spark(page)
      await page.locator('.app-head a[href^="#/lead"]').click()
    },
    clock: CLASS,
    own: 'main',
  },
  {
    name: 'a class that is over',
    prepare: async (page) => {
      await begun(page)
      await page.clock.fastForward('50:00')
    },
    show: async (page) => {
      await page.clock.fastForward('50:00')
      await page.clock.runFor(300)
    },
    clock: CLASS,
    own: 'main',
  },
]

export const SHELL: readonly Scene[] = [
  {
    name: 'the keys',
    prepare: spark,
    show: unlessSeen('dialog[open]', async (page) => {
      await page.locator('.app-keys-button').click()
    }),
  },
  {
    name: 'a notice',
    prepare: spark,
    show: async (page) => {
      if ((await page.locator('.app-notices .ui-notice').count()) > 0) return
      await dropFiles(page, page.locator('main'), [textFile('nothing.ride.json', '{}')])
      await expect(page.locator('.app-notices .ui-notice')).toBeVisible()
    },
    own: '.app-notices',
  },
]
