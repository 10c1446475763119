import type { Page } from '@playwright/test'
import { openRidewright } from '#e2e/support/openRidewright.ts'
import { shownLink } from '#e2e/support/shownLink.ts'
import { expect } from '#e2e/support/test.ts'
import { blocks, button, choose, link, type Row, type Rows } from './row.ts'

const BLOCKS = 42
const counted = (count: number) => (page: Page) => expect(blocks(page)).toHaveCount(count)

const toDraft = async (page: Page) => {
  await link(page, 'plan').click()
  await counted(BLOCKS)(page)
}

const goes = (place: string, back: (page: Page) => Promise<unknown> = toDraft): Row => ({
  sees: (page) => expect.poll(() => page.evaluate(() => location.hash)).toContain(`#/${place}`),
  back,
})

const copied = async (page: Page) => {
  await choose('s1b2')(page)
  await page.keyboard.press('d')
  await counted(BLOCKS + 1)(page)
}

export const SHELL_ROWS: Rows = {
  'ride.undo': { given: copied, sees: counted(BLOCKS), back: async () => {} },
  'ride.redo': {
    given: async (page) => {
      await copied(page)
      await page.keyboard.press('Control+z')
      await counted(BLOCKS)(page)
    },
    sees: counted(BLOCKS + 1),
  },
  'ride.undoList': {
    given: copied,
    sees: (page) => expect(page.getByRole('menu').getByRole('menuitem')).toHaveCount(2),
    back: async (page) => {
      await page.keyboard.press('Escape')
      await expect(page.getByRole('menu')).toHaveCount(0)
      await page.keyboard.press('Control+z')
      await counted(BLOCKS)(page)
    },
  },
  'shell.find': {
    sees: (page) => expect(page.getByRole('combobox', { name: 'find anything' })).toBeFocused(),
    back: async (page) => {
      await page.keyboard.press('Escape')
      await expect(page.getByRole('dialog')).toHaveCount(0)
    },
  },
  'shell.keys': {
    sees: (page) => expect(page.getByRole('dialog', { name: 'shortcuts' })).toBeVisible(),
    back: async (page) => {
      await page.keyboard.press('Escape')
      await expect(page.getByRole('dialog')).toHaveCount(0)
    },
  },
  'ride.details': { given: choose('s1b2'), sees: (page) => expect(page.locator('.draft-side :focus')).toHaveCount(1) },
  'ride.ownBike': {
    given: async (page) => {
      await page.getByLabel('shown on').selectOption({ index: 1 })
      await expect(button(page, 'ride.ownBike')).toBeVisible()
    },
    sees: (page) => expect(page.getByRole('region', { name: 'another bike' })).toHaveCount(0),
  },
  'go.sheet': goes('sheet'),
  'go.handover': goes('handover'),
  'go.setup': goes('setup'),
  'go.songs': goes('songs'),
  'go.log': goes('log'),
  'go.lead': goes('lead', async (page) => {
    await expect(button(page, 'screen.leave')).toBeVisible()
    await page.keyboard.press('Escape')
    await expect(button(page, 'screen.leave')).toHaveText(/press again to leave/)
    await page.keyboard.press('Escape')
    await counted(BLOCKS)(page)
  }),
  'go.draft': { ...goes('draft', async () => {}), given: (page) => link(page, 'print').click() },
  'go.start': goes('start', async (page) => {
    await page.goBack()
    await counted(BLOCKS)(page)
  }),
}

export const LOG_ROWS: Rows = {
  'log.class': { sees: (page) => expect(page.getByRole('button', { name: 'cancel' })).toBeVisible() },
}

export const SHELF_ROWS: Rows = { 'songs.add': { sees: (page) => expect(page.getByRole('dialog')).toBeVisible() } }

export const START_ROWS: Rows = {
  'backup.save': {
    sees: (page) => expect(page.getByRole('status').filter({ hasText: /^Saved ridewright-.*\.backup\.json/ })).toBeVisible(),
  },
}

export const SHEET_ROWS: Rows = {
  'sheet.scan': {
    given: (page) => page.getByText('phone', { exact: true }).click(),
    sees: (page) => expect(page.getByRole('dialog', { name: 'screens' })).toBeVisible(),
    back: (page) => page.keyboard.press('Escape'),
  },
  'sheet.print': { sees: (page) => expect(page.locator('body[data-printed]')).toHaveCount(1) },
}

export const HAND_OVER_ROWS: Rows = {
  'send.copyLink': { sees: (page) => expect(page.getByText('Link copied.').first()).toBeVisible() },
  'send.share': { sees: (page) => expect(page.locator('body[data-shared*="#r"]')).toHaveCount(1) },
  'send.saveFile': { sees: (page) => expect(page.getByRole('status').filter({ hasText: /^Saved .*\.ride\.json/ })).toBeAttached() },
}

const bar = (page: Page) => page.getByRole('region', { name: 'shared ride' })

let sent = ''

/** Opens the ride of one’s own that is open by its link, as somebody who was sent it. */
export async function shareOwn(page: Page): Promise<void> {
  await link(page, 'share').click()
  sent = await shownLink(page)
  await openShared(page)
}

async function openShared(page: Page): Promise<void> {
  await page.goto('about:blank')
  await openRidewright(page, sent)
  await expect(bar(page)).toBeVisible()
}

/** A shared ride that is another version of one’s own. */
export const RECEIVED_ROWS: Rows = {
  'received.changes': {
    sees: (page) => expect(page.getByRole('button', { name: 'cancel' })).toBeVisible(),
    back: async (page) => {
      await page.getByRole('button', { name: 'cancel' }).click()
      await expect(bar(page)).toBeVisible()
    },
  },
  'received.show': { given: (page) => link(page, 'my rides').click(), sees: counted(BLOCKS) },
  'received.close': {
    sees: (page) => expect(bar(page)).toHaveCount(0),
    back: openShared,
  },
  'received.keep': { sees: (page) => expect(bar(page)).toHaveCount(0) },
}
