import type { Page } from '@playwright/test'
import type { KeptRide } from '#e2e/support/leading.ts'
import { expect } from '#e2e/support/test.ts'
import { button, link, type Row, type Rows } from './row.ts'

const kept = (page: Page): Promise<KeptRide['class']> =>
  page.evaluate(() => JSON.parse(localStorage.getItem('ridewright.class') ?? 'null')?.class ?? null)
/** What has happened in the class; null before its first one. */
const events = async (page: Page): Promise<string[] | null> => (await kept(page))?.log?.events.map(({ kind }) => kind) ?? null

const card = (page: Page) => expect(button(page, 'beforeClass.start')).toBeVisible()
const face = (page: Page) => expect(page.locator('.lead-face')).toBeVisible()

async function toLead(page: Page): Promise<void> {
  if (!(await page.locator('.lead').isVisible())) await link(page, 'teach').click()
}

async function onCard(page: Page): Promise<void> {
  await toLead(page)
  await card(page)
}

/** The class is under way and nothing has happened in it. */
async function started(page: Page): Promise<void> {
  await toLead(page)
  if (await button(page, 'beforeClass.start').isVisible()) await page.keyboard.press('Space')
  await expect.poll(() => events(page)).toEqual([])
}

async function startedOver(page: Page): Promise<void> {
  await page.keyboard.press('Backspace')
  await page.keyboard.press('Backspace')
  await card(page)
}

/** A press that is noted, and taken back. */
const noted = (kind: string, given: (page: Page) => Promise<unknown> = started): Row => ({
  given,
  sees: (page) => expect.poll(() => events(page)).toEqual([kind]),
  back: async (page) => {
    await page.keyboard.press('Backspace')
    await expect.poll(() => events(page)).toEqual([])
  },
})

const left = (page: Page) => expect(link(page, 'plan')).toHaveAttribute('aria-current', 'page')

/** On a ride with a briefing, and longer than its slot. */
export const LEAD_ROWS: Rows = {
  'beforeClass.start': { given: onCard, sees: face, back: startedOver },
  'beforeClass.brief': {
    given: onCard,
    sees: (page) => expect(button(page, 'beforeClass.brief')).toHaveText(/restart the welcome/),
    back: async (page) => {
      await page.keyboard.press('Space')
      await face(page)
      await startedOver(page)
    },
  },
  'screen.full': {
    given: onCard,
    sees: (page) => expect.poll(() => page.evaluate(() => document.fullscreenElement !== null)).toBe(true),
    back: async (page) => {
      await page.evaluate(() => document.exitFullscreen())
      await expect(button(page, 'screen.full')).toHaveText(/^full screen/)
    },
  },
  'screen.leave': {
    given: onCard,
    sees: async (page) => {
      await expect(button(page, 'screen.leave')).toHaveText(/press again to leave/)
      await page.keyboard.press('Escape')
      await left(page)
    },
  },
  'lead.one': noted('one'),
  'lead.hold': noted('hold'),
  'lead.back': noted('back'),
  'lead.next': noted('next'),
  'lead.again': noted('again'),
  'lead.skipSong': {
    ...noted('skipSong'),
    sees: async (page) => {
      await expect(button(page, 'lead.skipSong')).toHaveText(/press again to skip/)
      expect(await events(page)).toEqual([])
      await page.keyboard.press('n')
      await expect.poll(() => events(page)).toEqual(['skipSong'])
    },
  },
  'lead.breakOff': noted('breakOff', async (page) => {
    await started(page)
    await page.keyboard.press('Escape')
    await expect(button(page, 'lead.breakOff')).toBeVisible()
  }),
  'lead.undo': {
    given: async (page) => {
      await started(page)
      await page.keyboard.press('h')
      await expect.poll(() => events(page)).toEqual(['hold'])
    },
    sees: (page) => expect.poll(() => events(page)).toEqual([]),
  },
  'lead.otherCut': {
    given: async (page) => {
      await started(page)
      await expect(button(page, 'lead.otherCut')).toBeVisible()
      proposed = (await page.locator('.lead-proposal p').textContent())!
    },
    sees: (page) => expect(page.locator('.lead-proposal p')).not.toHaveText(proposed),
  },
  'lead.cut': noted('cut', async (page) => {
    await started(page)
    await expect(button(page, 'lead.cut')).toBeVisible()
  }),
  'lead.end': {
    given: async (page) => {
      await started(page)
      await page.keyboard.press('e')
      await expect(button(page, 'lead.breakOff')).toBeVisible()
      await page.keyboard.press('e')
      await expect(button(page, 'lead.end')).toBeVisible()
    },
    sees: async (page) => {
      await expect(button(page, 'lead.end')).toHaveText(/press again to end/)
      await button(page, 'lead.end').click()
      await left(page)
      await expect.poll(() => kept(page)).toBeNull()
    },
  },
}

let proposed = ''

/** While a class of another ride is under way. */
export const OTHER_CLASS_ROWS: Rows = {
  'otherClass.goOn': {
    given: async (page) => {
      await toLead(page)
      await expect(page.getByText('You’re still teaching')).toBeVisible()
    },
    sees: face,
    back: async (page) => {
      await page.keyboard.press('Escape')
      await expect(button(page, 'screen.leave')).toHaveText(/press again to leave/)
      await page.keyboard.press('Escape')
      await left(page)
    },
  },
  'otherClass.end': {
    given: toLead,
    sees: async (page) => {
      await button(page, 'otherClass.end').click()
      await card(page)
    },
  },
}
