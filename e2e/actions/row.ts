import type { Locator, Page } from '@playwright/test'
import { expect } from '#e2e/support/test.ts'

/** How one action is tried in a state of the page in which it can be done. */
export interface Row {
  /** Brings the page into that state. */
  given?: (page: Page) => Promise<unknown>
  /** Sees what the action has done. */
  sees: (page: Page) => Promise<unknown>
  /** Brings the page back. Without it a change of the ride is undone, and anything else stays as it is. */
  back?: (page: Page) => Promise<unknown>
}

/** Rows by the id of their action, in the order in which they are tried on one page. */
export type Rows = Readonly<Record<string, Row>>

export const stop = (page: Page, id: string): Locator => page.locator(`[data-stage-stop][data-id="${id}"]`)
export const blocks = (page: Page): Locator => page.locator('[data-block-id]')
export const sections = (page: Page): Locator => page.locator('.song-head')
export const button = (page: Page, id: string): Locator => page.locator(`[data-action="${id}"]`)
export const link = (page: Page, name: string): Locator => page.getByRole('link', { name, exact: true })

/** Selects a block or a song by hand; it has the focus then. */
export const choose = (id: string) => async (page: Page) => {
  await page.keyboard.press('Escape')
  await stop(page, id).click({ position: { x: 12, y: 10 } })
  await expect(stop(page, id)).toBeFocused()
}

/** Ids of the blocks as they stand. */
export const order = (page: Page): Promise<string[]> =>
  page.locator('[data-stage-stop="block"]').evaluateAll((stops) => stops.map((each) => (each as HTMLElement).dataset.id!))

/** The ride as it is drawn: what every block is called and says, and the last step that can be undone. */
export const drawn = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const stops = [...document.querySelectorAll('[data-stage-stop]')].map((each) => each.getAttribute('aria-label') ?? each.textContent)
    return [...stops, document.querySelector('[data-action="ride.undo"]')?.getAttribute('title')].join('\n')
  })
