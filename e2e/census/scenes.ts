import type { Page } from '@playwright/test'
import { openRidewright } from '#e2e/support/openRidewright.ts'
import { shownLink } from '#e2e/support/shownLink.ts'
import { expect } from '#e2e/support/test.ts'

/** A state of the page in which everything that can be operated is operated. */
export interface Scene {
  name: string
  /** From an empty page to the ride and the place; done once, and kept as what the browser stores and the address. */
  prepare: (page: Page) => Promise<void>
  /** What no address brings back: what is chosen, unfolded or asked for. Done after every loading, and again between two hands. */
  show?: (page: Page) => Promise<void>
  /** The part of the page this scene is about: its controls are operated here also where others like them were before. */
  own?: string
  /** Time stands still but for what the test lets pass. */
  clock?: string
}

const LIST = ['Low Tide, Salt Lantern, 3:45, 128', 'Ninth Wave, Salt Lantern, 4:10, 84', 'Copper Wire, The Odd Hours, 3:20, 140'].join('\n')

const start = (page: Page) => openRidewright(page)
const demo = (name: RegExp) => async (page: Page) => {
  await start(page)
  await page.getByRole('button', { name }).click()
  await drafted(page)
  // A ride of one's own, with something to undo.
  await page.locator('[data-stage-stop="block"]').first().focus()
  await page.keyboard.press('Alt+ArrowUp')
  await page.keyboard.press('Alt+ArrowDown')
  await page.keyboard.press('Escape')
  await kept(page)
}
const spark = demo(/^Twenty-Minute Spark/)
const ridge = demo(/^Ridge and Return/)
const drafted = (page: Page) => expect(page.locator('[data-curve="intent"]').first()).toBeAttached()
const kept = (page: Page) => expect(page.locator('.app-saved')).toHaveText(/^saved/i)
const goTo = async (page: Page, place: string) => {
  await page.locator(`.app-head a[href^="#/${place}"]`).first().click()
  await expect(page).toHaveURL(new RegExp(`#/${place}`))
}
const at = (place: string, begin: (page: Page) => Promise<void>) => async (page: Page) => {
  await begin(page)
  await goTo(page, place)
}
const stop = (page: Page, id: string) => page.locator(`[data-stage-stop][data-id="${id}"]`).first()

/** Chooses things on the stage, and unfolds all that is folded in their details. */
const chosen =
  (...ids: string[]) =>
  async (page: Page) => {
    await drafted(page)
    const [first, ...more] = ids
    if (first === undefined) await page.locator('.app-title-button').click()
    else await stop(page, first).click()
    for (const id of more) await stop(page, id).click({ modifiers: ['ControlOrMeta'] })
    await unfolded(page, '.draft-side')
  }

async function unfolded(page: Page, within: string): Promise<void> {
  for (let turn = 0; turn < 12; turn++) {
    const fold = page.locator(`${within} details:not([open]) > summary`).first()
    if ((await fold.count()) === 0) return
    await fold.click()
  }
}

const press = (name: string | RegExp) => (page: Page) => page.getByRole('button', { name }).first().click()
const inTurn =
  (...steps: ((page: Page) => Promise<unknown>)[]) =>
  async (page: Page) => {
    for (const step of steps) await step(page)
  }
const unlessSeen = (selector: string, step: (page: Page) => Promise<unknown>) => async (page: Page) => {
  if ((await page.locator(selector).count()) === 0) await step(page)
}

async function pasted(page: Page): Promise<void> {
  await start(page)
  await page.locator('textarea').first().fill(LIST)
  await page.getByRole('button', { name: /of 3 songs/ }).click()
  await expect(page.locator('.song-head')).toHaveCount(3)
  await kept(page)
}

async function withSongs(page: Page): Promise<void> {
  await start(page)
  await page.locator('.app-head a[href^="#/songs"]').first().click()
  await page.locator('textarea').first().fill(LIST)
  await page
    .getByRole('button', { name: /3 songs/ })
    .first()
    .click()
  await expect(page.locator('tbody tr')).toHaveCount(3)
}

const CLASS = '2026-01-15T18:26:00Z'

export const SCENES: readonly Scene[] = [
  { name: 'the start, empty', prepare: start },
  {
    name: 'the start, a list pasted and rides kept',
    prepare: async (page) => {
      await spark(page)
      await page.locator('.app-name').click()
    },
    show: async (page) => {
      await page.locator('textarea').first().fill(`${LIST}\nBrickworks 3:75 132`)
      await expect(page.getByRole('table')).toBeVisible()
    },
  },
  { name: 'the draft, its ride', prepare: spark, show: chosen(), own: '.draft-side' },
  { name: 'the draft, a block', prepare: spark, show: chosen('s2b2'), own: '.draft-side' },
  {
    name: 'the draft, a block that ramps',
    prepare: async (page) => {
      await spark(page)
      await stop(page, 's2b2').click()
      await page.locator('.panel-effort button').click()
      await kept(page)
    },
    show: chosen('s2b2'),
    own: '.panel-effort',
  },
  { name: 'the draft, several blocks', prepare: spark, show: chosen('s2b2', 's2b3', 's2b4'), own: '.draft-side' },
  {
    name: 'the draft, a set',
    prepare: async (page) => {
      await spark(page)
      await stop(page, 's2b2').focus()
      await page.keyboard.press('g')
      await expect(page.locator('.set-head')).toBeAttached()
      await kept(page)
    },
    show: async (page) => {
      await drafted(page)
      await page.locator('.set-head').first().click()
    },
    own: '.draft-side',
  },
  { name: 'the draft, a song', prepare: spark, show: chosen('s2'), own: '.draft-side' },
  {
    name: 'the draft, a stretch without a song',
    prepare: async (page) => {
      await start(page)
      await page.locator('.start-new button[type="submit"], .start-new .ui-button').last().click()
      await page.locator('.tray-pattern').first().click()
      await kept(page)
    },
    show: async (page) => {
      await drafted(page)
      await page.locator('.song-head').first().click()
      await unfolded(page, '.draft-side')
    },
    own: '.draft-side',
  },
  {
    name: 'the draft, what is noticed',
    prepare: spark,
    show: async (page) => {
      await drafted(page)
      for (const count of await page.locator('.finding-count[aria-expanded="false"]').all()) await count.click()
      await unfolded(page, '.findings')
    },
    own: '.findings',
  },
  {
    name: 'the draft, a first draft offered',
    prepare: pasted,
    show: unlessSeen('.proposal', async (page) => {
      await page.locator('.draft-link').first().click()
      await expect(page.locator('.draft-side [role="dialog"], .proposal').first()).toBeVisible()
    }),
    own: '.draft-side',
  },
  {
    name: 'the draft, another length offered',
    prepare: spark,
    show: unlessSeen('.proposal', async (page) => {
      await drafted(page)
      await page.locator('.draft-link').last().click()
    }),
    own: '.draft-side',
  },
  {
    name: 'the draft, the slot fitted',
    prepare: spark,
    show: unlessSeen('.proposal', async (page) => {
      await drafted(page)
      await page.locator('.draft-link').first().click()
    }),
    own: '.draft-side',
  },
  ...(['compact', 'large type', 'cards', 'substitute', 'no music', 'phone', 'before class'] as const).map(
    (sheet): Scene => ({
      name: `the sheets, ${sheet}`,
      prepare: at('sheet', spark),
      show: async (page) => {
        await page.getByText(sheet, { exact: true }).first().click()
        await unfolded(page, '.sheet-place')
      },
      own: '.sheet-place',
    }),
  ),
  { name: 'handing over', prepare: at('handover', spark), show: (page) => shownLink(page).then(() => undefined) },
  {
    name: 'a ride received',
    prepare: async (page) => {
      await at('handover', spark)(page)
      const link = await shownLink(page)
      await page.goto('about:blank')
      await page.goto(link)
      await drafted(page)
    },
  },
  { name: 'the bike', prepare: at('setup', spark), show: (page) => unfolded(page, '.setup') },
  {
    name: 'the riders',
    prepare: at('setup', spark),
    show: (page) => page.getByText('riders', { exact: true }).first().click(),
    own: '.setup-body',
  },
  {
    name: 'the rules',
    prepare: at('setup', spark),
    show: (page) => page.getByText('house rules', { exact: true }).first().click(),
    own: '.setup-body',
  },
  {
    name: 'the songs, none yet',
    prepare: async (page) => {
      await start(page)
      await page.locator('.app-head a[href^="#/songs"]').first().click()
    },
  },
  {
    name: 'the songs, some chosen',
    prepare: withSongs,
    show: async (page) => {
      for (const box of (await page.locator('tbody input[type="checkbox"]').all()).slice(0, 2)) await box.check()
    },
  },
  { name: 'the log, empty', prepare: at('log', spark) },
  { name: 'an entry of the log', prepare: at('log', spark), show: unlessSeen('form, .entry', press(/as taught/)), own: 'main' },
  {
    name: 'the keys',
    prepare: spark,
    show: unlessSeen('dialog[open]', async (page) => {
      await page.locator('.app-keys-button').click()
    }),
  },
  { name: 'a class about to begin', prepare: at('lead', ridge), clock: CLASS },
  {
    name: 'a class under way',
    prepare: inTurn(at('lead', ridge), (page) => page.keyboard.press('Space')),
    clock: CLASS,
    own: 'main',
  },
]
