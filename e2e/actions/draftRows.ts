import type { Page } from '@playwright/test'
import { expect } from '#e2e/support/test.ts'
import { LINES } from '#features/drafting/actions/view/lines.ts'
import { addBlock } from '#features/drafting/actions/whole/add.ts'
import { PATTERNS } from '#plan/patterns/patterns.ts'
import { blocks, button, choose, order, type Row, type Rows, sections, stop } from './row.ts'

/** Blocks and sections of Twenty-Minute Spark. */
const BLOCKS = 42
const SECTIONS = 6

const focused = (id: string) => (page: Page) => expect(stop(page, id)).toBeFocused()
const selected = (count: number) => (page: Page) => expect(page.locator('[role="option"][aria-selected="true"]')).toHaveCount(count)
const counted = (count: number) => (page: Page) => expect(blocks(page)).toHaveCount(count)
const inOrder = (page: Page, from: number, ...ids: string[]) =>
  expect.poll(async () => (await order(page)).slice(from, from + ids.length)).toEqual(ids)
const long = (words: string) => (page: Page) => expect(page.locator('[data-block-id="s1b2"]')).toContainText(words)
const inDetails = (page: Page) => expect(page.locator('.draft-side :focus')).toHaveCount(1)

/** The third and fourth block of the first song, which the second gives to and takes from. */
const chooseTwo = async (page: Page) => {
  await choose('s1b3')(page)
  await page.keyboard.press('Shift+ArrowRight')
  await selected(2)(page)
}

const STRETCH = { name: 'part of the ride on the stage' }
const stretch = (page: Page) => page.getByRole('slider', STRETCH)
/** Sees another stretch than the one that `given` left. */
function anotherStretch(before: (page: Page) => Promise<unknown>): Row {
  let was = ''
  return {
    given: async (page) => {
      await before(page)
      was = (await stretch(page).getAttribute('style')) ?? ''
    },
    sees: (page) => expect(stretch(page)).not.toHaveAttribute('style', was),
  }
}

const wholeRide = async (page: Page) => {
  await button(page, 'stage.fitRide').click()
  await expect(stretch(page)).toHaveAttribute('aria-valuetext', /^0 to (?:19|2\d) minutes$/)
}

/** A line that is drawn or not; pressed again it is as before. */
function switched(id: string): Row {
  let was: string | null = null
  return {
    given: async (page) => {
      was = await button(page, id).getAttribute('aria-pressed')
    },
    sees: (page) => expect(button(page, id)).toHaveAttribute('aria-pressed', was === 'true' ? 'false' : 'true'),
    back: (page) => button(page, id).click(),
  }
}

/** Something offered beside the stage; asked for again it is left. */
const offered = (id: string, title: string): Row => ({
  sees: (page) => expect(page.getByRole('dialog', { name: title })).toBeVisible(),
  back: async (page) => {
    await button(page, id).click()
    await expect(page.getByRole('dialog')).toHaveCount(0)
  },
})

const menu = (page: Page) => page.getByRole('menu')
const shut = async (page: Page) => {
  await page.keyboard.press('Escape')
  await expect(menu(page)).toHaveCount(0)
}

/** Pasting in part has no keys of its own and no button: it is tried in e2e/clipboard.spec.ts, from the menu. */
const fromMenu: Row = { sees: (page) => expect(menu(page)).toHaveCount(0) }

export const DRAFT_ROWS: Rows = {
  'clipboard.copy': {
    given: choose('s1b2'),
    sees: (page) => expect(page.getByRole('status').filter({ hasText: 'Copied' })).toHaveCount(1),
  },
  'clipboard.paste': { given: choose('s1b2'), sees: counted(BLOCKS + 1) },
  'clipboard.cut': { given: choose('s1b2'), sees: counted(BLOCKS - 1) },
  'clipboard.pasteOnly': {
    given: choose('s1b2'),
    sees: (page) => expect(menu(page).getByRole('menuitem')).toHaveCount(3),
    back: shut,
  },
  'clipboard.onlyBlocks': fromMenu,
  'clipboard.onlyCues': fromMenu,
  'clipboard.onlyResistance': fromMenu,
  'stage.selectAll': {
    given: choose('s1b2'),
    sees: selected(5),
    back: async (page) => {
      await page.keyboard.press('Control+a')
      await selected(BLOCKS)(page)
    },
  },
  'clipboard.menu': {
    given: choose('s1b2'),
    sees: (page) => expect(menu(page)).toBeVisible(),
    back: shut,
  },

  'stage.selectAlike': { given: choose('s2b3'), sees: selected(4) },
  'stage.shiftEarlier': { given: chooseTwo, sees: long('15 eights') },
  'stage.shiftLater': { given: chooseTwo, sees: long('17 eights') },
  'stage.onlyRound': {
    given: async (page) => {
      await choose('s1b2')(page)
      await page.keyboard.press('g')
      await expect(page.locator('[data-stage-stop="set"]')).toBeFocused()
      await page.locator('[data-stage-stop="block"][data-round="2"]').click({ position: { x: 12, y: 10 } })
    },
    sees: (page) => expect(page.locator('[data-stage-stop="set"]')).toHaveCount(0),
    back: async (page) => {
      await page.keyboard.press('Control+z')
      await page.keyboard.press('Control+z')
      await counted(BLOCKS)(page)
    },
  },

  'stage.typeLine': {
    given: choose('s1b2'),
    sees: (page) => expect(page.getByRole('combobox', { name: 'new block' })).toBeFocused(),
    back: async (page) => {
      await page.keyboard.press('Escape')
      await expect(page.locator('.typed-line')).toHaveCount(0)
    },
  },
  'stage.editLine': {
    given: choose('s1b2'),
    sees: (page) => expect(page.getByRole('combobox', { name: /as a line$/ })).toHaveValue(/^(seated )?flat 16/),
    back: async (page) => {
      await page.keyboard.press('Escape')
      await expect(page.locator('.typed-line')).toHaveCount(0)
    },
  },
  'stage.writeCue': {
    given: choose('s1b2'),
    sees: (page) => expect(page.getByRole('combobox', { name: /^cue for “/ })).toBeFocused(),
    back: async (page) => {
      await page.keyboard.press('Escape')
      await expect(page.locator('.cue-line')).toHaveCount(0)
    },
  },

  'stage.rename': {
    given: choose('s1b2'),
    sees: (page) => expect(page.getByRole('textbox', { name: 'name of “flat”' })).toBeFocused(),
    back: async (page) => {
      await page.keyboard.press('Escape')
      await focused('s1b2')(page)
    },
  },

  'stage.goBefore': { given: choose('s1b2'), sees: focused('s1b1') },
  'stage.goAfter': { given: choose('s1b2'), sees: focused('s1b3') },
  'stage.goUp': { given: choose('s1b2'), sees: focused('s1') },
  'stage.goDown': { given: choose('s1'), sees: focused('s1b1') },
  'stage.goFirst': { given: choose('s1b2'), sees: focused('s1b1') },
  'stage.goLast': {
    given: choose('s1b2'),
    sees: focused('s6b2'),
    back: async (page) => {
      await page.keyboard.press('Home')
      await focused('s1b1')(page)
    },
  },
  'stage.selectBefore': { given: choose('s1b2'), sees: selected(2) },
  'stage.selectAfter': { given: choose('s1b2'), sees: selected(2) },
  'stage.toggle': { given: choose('s1b2'), sees: selected(0) },
  'stage.details': { given: choose('s1b2'), sees: inDetails },
  'details.leave': {
    given: async (page) => {
      await choose('s1b2')(page)
      await page.keyboard.press('Enter')
      await inDetails(page)
    },
    sees: focused('s1b2'),
  },
  'stage.goOut': {
    given: choose('s1b2'),
    sees: focused('s1'),
    back: async (page) => {
      await page.keyboard.press('Escape')
      await expect(stop(page, 's1')).toHaveAttribute('aria-pressed', 'false')
    },
  },
  'draft.nextRegion': { given: choose('s1b2'), sees: inDetails },
  'draft.regionBefore': {
    given: choose('s1b2'),
    sees: (page) => expect(page.locator('.findings :focus')).toHaveCount(1),
  },
  'stage.moveBefore': { given: choose('s1b2'), sees: (page) => inOrder(page, 0, 's1b2', 's1b1') },
  'stage.moveAfter': { given: choose('s1b2'), sees: (page) => inOrder(page, 0, 's1b1', 's1b3', 's1b2') },
  'stage.moveToSongBefore': { given: choose('s2b2'), sees: (page) => inOrder(page, 4, 's1b5', 's2b2', 's2b1') },
  'stage.moveToSongAfter': { given: choose('s1b2'), sees: (page) => inOrder(page, 3, 's1b5', 's1b2', 's2b1') },
  'stage.longer': { given: choose('s1b2'), sees: long('17 eights') },
  'stage.shorter': { given: choose('s1b2'), sees: long('15 eights') },
  'stage.littleLonger': { given: choose('s1b2'), sees: long('16 eights + 1') },
  'stage.littleShorter': { given: choose('s1b2'), sees: long('15 eights + 7') },
  'stage.startEarlier': { given: choose('s1b2'), sees: long('17 eights') },
  'stage.startLater': { given: choose('s1b2'), sees: long('15 eights') },
  'stage.startLittleEarlier': { given: choose('s1b2'), sees: long('16 eights + 1') },
  'stage.startLittleLater': { given: choose('s1b2'), sees: long('15 eights + 7') },
  'stage.moreEffort': { given: choose('s1b2'), sees: (page) => expect(stop(page, 's1b2')).toHaveAccessibleName(/effort 4/) },
  'stage.lessEffort': { given: choose('s1b2'), sees: (page) => expect(stop(page, 's1b2')).toHaveAccessibleName(/effort 2/) },
  'stage.duplicate': { given: choose('s1b2'), sees: counted(BLOCKS + 1) },
  'stage.keepPattern': {
    given: choose('s1b2'),
    sees: (page) => expect(page.getByRole('dialog', { name: 'save as a pattern' })).toBeVisible(),
    back: (page) => page.keyboard.press('Escape'),
  },
  'stage.split': { given: choose('s1b2'), sees: counted(BLOCKS + 1) },
  'stage.join': { given: choose('s1b2'), sees: counted(BLOCKS - 1) },
  'stage.group': { given: choose('s1b2'), sees: (page) => expect(page.locator('[data-stage-stop="set"]')).toHaveCount(1) },
  'stage.ungroup': {
    given: async (page) => {
      await choose('s1b2')(page)
      await page.keyboard.press('g')
      await expect(page.locator('[data-stage-stop="set"]')).toBeFocused()
    },
    sees: (page) => expect(page.locator('[data-stage-stop="set"]')).toHaveCount(0),
    back: async (page) => {
      await page.keyboard.press('Control+z')
      await page.keyboard.press('Control+z')
      await counted(BLOCKS)(page)
    },
  },
  'stage.fill': {
    given: async (page) => {
      await choose('s1b5')(page)
      await page.keyboard.press('Delete')
      await counted(BLOCKS - 1)(page)
      await choose('s1b4')(page)
    },
    sees: (page) => expect(stop(page, 's1b4')).toHaveAccessibleName(/, 20 eights,/),
    back: async (page) => {
      await page.keyboard.press('Control+z')
      await page.keyboard.press('Control+z')
      await counted(BLOCKS)(page)
    },
  },
  'stage.cutSection': { given: choose('s1b2'), sees: (page) => expect(sections(page)).toHaveCount(SECTIONS + 1) },
  'stage.delete': { given: choose('s1b2'), sees: counted(BLOCKS - 1) },
  'stage.zoomIn': anotherStretch(choose('s1b2')),
  'stage.zoomOut': anotherStretch(choose('s1b2')),
  'stage.fitSection': anotherStretch(async (page) => {
    await wholeRide(page)
    await choose('s2b2')(page)
  }),
  'stage.fitRide': {
    given: async (page) => {
      await button(page, 'stage.zoomIn').click({ clickCount: 3 })
      await choose('s1b2')(page)
      await expect(stretch(page)).not.toHaveAttribute('aria-valuetext', /to (?:19|2\d) minutes$/)
    },
    sees: (page) => expect(stretch(page)).toHaveAttribute('aria-valuetext', /^0 to (?:19|2\d) minutes$/),
  },
  ...Object.fromEntries(LINES.map(({ action }) => [action.id, switched(action.id)])),
  'offer.fitSlot': offered('offer.fitSlot', 'fit to class length'),
  'offer.otherLength': offered('offer.otherLength', 'shorter or longer version'),
  'offer.replaceWords': offered('offer.replaceWords', 'find and replace'),
  'offer.newFromThis': {
    sees: (page) => expect(page.getByRole('dialog', { name: 'a new ride from this one' })).toBeVisible(),
    back: (page) => page.keyboard.press('Escape'),
  },
  ...Object.fromEntries(PATTERNS.map((pattern) => [addBlock(pattern).id, { given: choose('s1b2'), sees: counted(BLOCKS + 1) }])),
  'add.section': { given: choose('s1'), sees: (page) => expect(sections(page)).toHaveCount(SECTIONS + 1) },
}

/** On a ride with a song that nothing is planned for. */
export const OPEN_SONG_ROWS: Rows = { 'offer.roughIn': offered('offer.roughIn', 'draft it for me') }
