import type { Page } from '@playwright/test'
import { expect } from '#e2e/support/test.ts'
import { button, choose, type Rows } from './row.ts'

const bar = (page: Page) => page.getByRole('region', { name: 'rehearse' })
const status = (words: string) => (page: Page) => expect(bar(page).locator('.rehearsal-state')).toHaveText(words)
const name = (words: string) => (page: Page) => expect(bar(page).locator('[data-slot="name"]')).toHaveText(words)

/** The bar is open at the start of the ride and nothing plays; no button has the focus. */
async function ready(page: Page): Promise<void> {
  if (!(await bar(page).isVisible())) await button(page, 'rehearse.open').click()
  await button(page, 'rehearse.fromStart').click()
  await status('Ready to play the ride.')(page)
  await name('settle')(page)
  await page.evaluate(() => (document.activeElement as HTMLElement).blur())
}

const atSecondBlock = async (page: Page) => {
  await ready(page)
  await page.keyboard.press('n')
  await name('flat')(page)
}

/** A song is heard by itself from its details; the same button stops it. */
const heard = {
  given: choose('s1'),
  sees: (page: Page) => expect(button(page, 'hear.beat')).toHaveText('stop'),
  back: async (page: Page) => {
    await button(page, 'hear.beat').click()
    await expect(button(page, 'hear.beat')).toHaveText('hear the beat')
  },
}

export const REHEARSAL_ROWS: Rows = {
  'hear.beat': heard,
  'hear.fromInPoint': heard,
  'rehearse.open': {
    sees: (page) => expect(bar(page)).toBeVisible(),
    back: async (page) => {
      await button(page, 'rehearse.open').click()
      await expect(bar(page)).toHaveCount(0)
    },
  },
  'rehearse.play': {
    given: ready,
    sees: status('Playing the ride.'),
    back: async (page) => {
      await page.keyboard.press('p')
      await status('Ready to play the ride.')(page)
    },
  },
  'rehearse.next': { given: ready, sees: name('flat') },
  'rehearse.back': { given: atSecondBlock, sees: name('settle') },
  'rehearse.repeat': {
    given: ready,
    sees: status('Ready to play settle in a loop.'),
    back: (page) => page.keyboard.press('r'),
  },
  'rehearse.shaky': { given: ready, sees: (page) => expect(page.locator('[data-shaky]')).toHaveCount(1) },
  'rehearse.mark': { given: atSecondBlock, sees: (page) => expect(button(page, 'ride.undo')).toHaveAttribute('title', /^undo: .*mark/i) },
  'rehearse.shakyOnes': {
    given: async (page) => {
      await ready(page)
      await page.keyboard.press('x')
      await expect(page.locator('[data-shaky]')).toHaveCount(1)
    },
    sees: status('Playing the marked blocks.'),
    back: async (page) => {
      await page.keyboard.press('p')
      await page.keyboard.press('Control+z')
      await expect(page.locator('[data-shaky]')).toHaveCount(0)
    },
  },
  'rehearse.fromSelection': {
    given: async (page) => {
      await ready(page)
      await choose('s1b2')(page)
    },
    sees: name('flat'),
  },
  'rehearse.fromStart': { given: atSecondBlock, sees: name('settle') },
  'rehearse.habits': {
    given: ready,
    sees: (page) => expect(page.getByRole('dialog', { name: 'sound and voice' })).toBeVisible(),
    back: (page) => page.keyboard.press('Escape'),
  },
  'rehearse.close': { given: ready, sees: (page) => expect(bar(page)).toHaveCount(0) },
}
