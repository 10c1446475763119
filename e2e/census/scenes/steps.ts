import type { Page } from '@playwright/test'
import { openRidewright } from '#e2e/support/openRidewright.ts'
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
  /** Where something moves by itself, only those are: the rest is operated where it stands still. */
  ownOnly?: true
  /** Time stands still but for what the test lets pass. */
  clock?: string
  /** A window narrower than a large tablet's. */
  width?: number
}

export const LIST = [
  'Low Tide, Salt Lantern, 3:45, 128',
  'Ninth Wave, Salt Lantern, 4:10, 84',
  'Copper Wire, The Odd Hours, 3:20, 140',
].join('\n')

export const start = (page: Page) => openRidewright(page)
export const demo = (name: RegExp) => async (page: Page) => {
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
/** Its first two songs, which have a block of every kind: every control is as on a whole class, and drawn sooner. */
export const spark = async (page: Page) => {
  await demo(/^Twenty-Minute Spark/)(page)
  for (const song of ['s6', 's5', 's4', 's3']) {
    await stop(page, song).click()
    await page.getByRole('button', { name: 'delete song' }).click()
    await expect(stop(page, song)).toHaveCount(0)
  }
  await page.keyboard.press('Escape')
  await kept(page)
}
export const ridge = demo(/^Ridge and Return/)
export const drafted = (page: Page) => expect(page.locator('[data-curve="intent"]').first()).toBeAttached()
export const kept = (page: Page) => expect(page.locator('.app-saved')).toHaveText(/^saved/i)
export const goTo = async (page: Page, place: string) => {
  await page.locator(`.app-head a[href^="#/${place}"]`).first().click()
  await expect(page).toHaveURL(new RegExp(`#/${place}`))
}
/** A place of the page; the same step for the same place, so that it is gone to once for all its scenes. */
export const at = (place: string, begin: Scene['prepare']): Scene['prepare'] => {
  const known = ways.get(begin)?.get(place)
  if (known) return known
  const way: Scene['prepare'] = async (page) => {
    await begin(page)
    await goTo(page, place)
  }
  ways.set(begin, new Map(ways.get(begin)).set(place, way))
  return way
}
const ways = new Map<Scene['prepare'], Map<string, Scene['prepare']>>()
export const stop = (page: Page, id: string) => page.locator(`[data-stage-stop][data-id="${id}"]`).first()

/** Chooses things on the stage, and unfolds all that is folded in their details. */
export const chosen =
  (...ids: string[]) =>
  async (page: Page) => {
    await drafted(page)
    const [first, ...more] = ids
    if (first === undefined) await page.locator('.app-title-button').click()
    else await stop(page, first).click()
    for (const id of more) await stop(page, id).click({ modifiers: ['ControlOrMeta'] })
    await unfolded(page, '.draft-side')
  }

export async function unfolded(page: Page, within: string): Promise<void> {
  for (let turn = 0; turn < 12; turn++) {
    const fold = page.locator(`${within} details:not([open]) > summary`).first()
    if ((await fold.count()) === 0) return
    await fold.click()
  }
}

export const press = (name: string | RegExp) => (page: Page) => page.getByRole('button', { name }).first().click()
export const inTurn =
  (...steps: ((page: Page) => Promise<unknown>)[]) =>
  async (page: Page) => {
    for (const step of steps) await step(page)
  }
export const unlessSeen = (selector: string, step: (page: Page) => Promise<unknown>) => async (page: Page) => {
  if ((await page.locator(selector).count()) === 0) await step(page)
}

export async function pasted(page: Page): Promise<void> {
  await start(page)
  await page.locator('textarea').first().fill(LIST)
  await page.getByRole('button', { name: /of 3 songs/ }).click()
  await expect(page.locator('.song-head')).toHaveCount(3)
  await kept(page)
}

export async function withSongs(page: Page): Promise<void> {
  await start(page)
  await page.locator('.app-head a[href^="#/songs"]').first().click()
  await page.locator('textarea').first().fill(LIST)
  await page
    .getByRole('button', { name: /3 songs/ })
    .first()
    .click()
  await expect(page.locator('tbody tr')).toHaveCount(3)
}

/** A ride, and songs on the shelf beside it. */
export async function sparkAndSongs(page: Page): Promise<void> {
  await withSongs(page)
  await page.locator('.app-name').click()
  await spark(page)
}
