import type { Page } from '@playwright/test'
import type { Chord } from '#actions/keys/chord.ts'
import { ALL_PLACES } from '#app/actions/allPlaces.ts'
import type { Ride } from '#plan/model.ts'
import { demoRide } from '#tests/support/demoRides.ts'
import { DRAFT_ROWS, OPEN_SONG_ROWS } from './actions/draftRows.ts'
import { LEAD_ROWS, OTHER_CLASS_ROWS } from './actions/leadRows.ts'
import { REHEARSAL_ROWS } from './actions/rehearsalRows.ts'
import { blocks, button, choose, drawn, link, type Row, type Rows } from './actions/row.ts'
import { HAND_OVER_ROWS, LOG_ROWS, RECEIVED_ROWS, SHEET_ROWS, SHELF_ROWS, SHELL_ROWS, START_ROWS, shareOwn } from './actions/shellRows.ts'
import { openRide } from './support/openRide.ts'
import { openRidewright } from './support/openRidewright.ts'
import { shownLink } from './support/shownLink.ts'
import { watchSoundCard } from './support/soundCard.ts'
import { expect, test } from './support/test.ts'

const ALL = ALL_PLACES.flatMap(({ groups }) => groups.flatMap(({ actions }) => actions))

interface Scene {
  name: string
  rows: Rows
  open: (page: Page) => Promise<unknown>
}

const spark = demoRide('spark')

async function openSpark(page: Page): Promise<void> {
  await openRidewright(page)
  await page.getByRole('button', { name: /^Twenty-Minute Spark/ }).click()
  await expect(blocks(page).first()).toBeAttached()
}

async function openAsFile(page: Page, change: Partial<Ride>): Promise<void> {
  await openRide(page, { ...spark, id: 'changed', ...change })
  await expect(page.locator('.app-title')).toBeVisible()
}

const SCENES: readonly Scene[] = [
  { name: 'the draft', rows: DRAFT_ROWS, open: openSpark },
  {
    name: 'a song that nothing is planned for',
    rows: OPEN_SONG_ROWS,
    open: (page) =>
      openAsFile(page, { sections: spark.sections.map((section, index) => (index === 1 ? { ...section, blocks: [] } : section)) }),
  },
  {
    name: 'a rehearsal',
    rows: REHEARSAL_ROWS,
    open: async (page) => {
      await watchSoundCard(page)
      await openSpark(page)
    },
  },
  { name: 'leading', rows: LEAD_ROWS, open: (page) => openAsFile(page, { briefingSeconds: 60, slotMinutes: 17 }) },
  {
    name: 'while another class is led',
    rows: OTHER_CLASS_ROWS,
    open: async (page) => {
      await openSpark(page)
      await link(page, 'teach').click()
      await expect(button(page, 'beforeClass.start')).toBeVisible()
      await page.keyboard.press('Space')
      await expect(page.locator('.lead-face')).toBeVisible()
      await page.keyboard.press('Escape')
      await page.keyboard.press('Escape')
      await link(page, 'my rides').click()
      await page.getByRole('button', { name: /^Ridge and Return/ }).click()
    },
  },
  { name: 'every place', rows: SHELL_ROWS, open: openSpark },
  {
    name: 'the sheet',
    rows: SHEET_ROWS,
    open: async (page) => {
      await page.addInitScript(() => {
        window.print = () => document.body.setAttribute('data-printed', '')
      })
      await openSpark(page)
      await link(page, 'print').click()
    },
  },
  {
    name: 'handing over',
    rows: HAND_OVER_ROWS,
    open: async (page) => {
      await page.context().grantPermissions(['clipboard-write'])
      await page.addInitScript(() => {
        navigator.share = async (shared) => document.body.setAttribute('data-shared', shared?.url ?? '')
      })
      await openSpark(page)
      await link(page, 'share').click()
      await shownLink(page)
    },
  },
  {
    name: 'the songs',
    rows: SHELF_ROWS,
    open: async (page) => {
      await openRidewright(page)
      await link(page, 'songs').click()
    },
  },
  {
    name: 'the log',
    rows: LOG_ROWS,
    open: async (page) => {
      await openSpark(page)
      await link(page, 'log').click()
    },
  },
  { name: 'the start', rows: START_ROWS, open: (page) => openRidewright(page) },
  {
    name: 'a shared ride',
    rows: RECEIVED_ROWS,
    open: async (page) => {
      await openSpark(page)
      // A demo ride is one's own once it is changed.
      await choose('s1b2')(page)
      await page.keyboard.press('+')
      await expect(page.getByText('saved', { exact: true })).toBeVisible()
      await shareOwn(page)
    },
  },
]

test('every action of the page is tried in one scene', () => {
  expect(SCENES.flatMap(({ rows }) => Object.keys(rows)).sort()).toEqual(ALL.map(({ id }) => id).sort())
})

for (const { name, rows, open } of SCENES)
  test(`what can be done is done by each of its keys and by its button: ${name}`, async ({ page }) => {
    test.setTimeout(600_000)
    await open(page)
    for (const [id, row] of Object.entries(rows)) {
      const { keys = [], keyOnly, writes, byBrowser } = ALL.find((action) => action.id === id)!
      for (const chord of keys.flatMap((chord) => (byBrowser ? [pressed(chord)[0]!] : pressed(chord))))
        await test.step(`${id}: ${chord}`, () => tried(page, row, writes === true, () => page.keyboard.press(chord)))
      if (!keyOnly) await test.step(`${id}: its button`, () => tried(page, row, writes === true, () => button(page, id).click()))
    }
  })

async function tried(page: Page, { given, sees, back }: Row, writes: boolean, act: () => Promise<unknown>): Promise<void> {
  await given?.(page)
  const before = writes && !back ? await drawn(page) : ''
  await act()
  await sees(page)
  if (back) await back(page)
  else if (writes) {
    expect(await drawn(page)).not.toBe(before)
    await button(page, 'ride.undo').click()
    await expect.poll(() => drawn(page)).toBe(before)
  }
}

/** A chord as Playwright presses it; both of those that Mod stands for. */
function pressed(chord: Chord): string[] {
  const named = chord.replace('Ctrl+', 'Control+').replace(/(?<=^|\+)[A-Z]$/, (letter) => letter.toLowerCase())
  return named.startsWith('Mod+') ? [named.replace('Mod', 'Control'), named.replace('Mod', 'Meta')] : [named]
}
