import type { Page } from '@playwright/test'
import { choose, stop } from './actions/row.ts'
import { barriers } from './support/barriers.ts'
import { openRidewright } from './support/openRidewright.ts'
import { expect, test } from './support/test.ts'

/** As many keys as a ride of twelve blocks may take. */
const MOST_KEYS = 60

const PLAYLIST = [
  'Paper Lanterns – The Odd Hours – 3:00 – 128 bpm',
  'Brickworks – Copper Lane – 3:00 – 132 bpm',
  'Night Market – Ada Fenn – 3:00 – 128 bpm',
].join('\n')

/** Counts every key that goes down, Ctrl and Shift too. */
async function countKeys(page: Page): Promise<() => Promise<number>> {
  await page.addInitScript(() => {
    const counted = window as unknown as { keysDown: number }
    counted.keysDown = 0
    window.addEventListener('keydown', () => counted.keysDown++, true)
  })
  return () => page.evaluate(() => (window as unknown as { keysDown: number }).keysDown)
}

/** Blocks as they stand, by song: what they are called, their eights, their effort. */
const built = (page: Page): Promise<string[]> =>
  page.locator('[data-stage-stop="block"]').evaluateAll((stops) =>
    stops.map((each) => {
      const name = each.getAttribute('aria-label') ?? ''
      const eights = /, (\d+ eights?[^,]*),/.exec(name)?.[1]
      const effort = /, effort ([\d½]+(?: to [\d½]+)?)/.exec(name)?.[1]
      return `${name.split(',')[0]} ${eights}, effort ${effort}`
    }),
  )

const openSpark = async (page: Page) => {
  await openRidewright(page)
  await page.getByRole('button', { name: /^Twenty-Minute Spark/ }).click()
  await expect(page.locator('[data-block-id]')).toHaveCount(42)
}
const field = (page: Page) => page.getByRole('combobox', { name: 'new block' })
const offer = (page: Page, name: string) => page.locator('.typed-words').getByRole('option', { name, exact: true })

test('a ride of twelve blocks on three songs takes no more than sixty keys, from the start page on', async ({ page, context }) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write'])
  const keysDown = await countKeys(page)
  await openRidewright(page)
  await page.evaluate((text) => navigator.clipboard.writeText(text), PLAYLIST)
  const press = async (...keys: string[]) => {
    for (const key of keys) await page.keyboard.press(key)
  }

  // Past the header, to the playlist, and what makes the ride of it.
  const playlist = page.getByLabel('playlist')
  const isThere = () => playlist.evaluate((element) => element === document.activeElement)
  await press('Tab', 'Enter')
  while (!(await isThere())) await press('Tab')
  await press('Control+v')
  const make = page.getByRole('button', { name: 'make a ride from 3 songs' })
  await expect(make).toBeVisible()
  while (!(await make.evaluate((element) => element === document.activeElement))) await press('Tab')
  await press('Enter')
  await expect(page.locator('.song-head')).toHaveCount(3)
  const toStage = await keysDown()

  await press('F6')
  await expect(page.locator('.song-head').first()).toBeFocused()
  await press('1', '2', '3', 'e')
  await press('ArrowUp', 'ArrowRight')
  await expect(page.locator('.song-head').nth(1)).toBeFocused()
  await press('3', '4', 'Alt+ArrowUp', '5', '9', 'e')
  await press('ArrowUp', 'ArrowRight')
  await press('6', '7', '+', '9', '5')
  await press('l')
  await expect(field(page)).toBeFocused()
  await press('f', 'l', 'u')
  await expect(offer(page, 'add flush')).toHaveAttribute('aria-selected', 'true')
  await press('Enter', 'Escape')
  await expect(page.locator('[data-stage-stop="block"]:focus')).toHaveAccessibleName(/^flush/)
  await press('e')

  await expect
    .poll(() => built(page))
    .toEqual([
      'flat 8 eights, effort 4',
      'standing flat 4 eights, effort 5',
      'seated climb 36 eights, effort 6',
      'seated climb 8 eights, effort 6',
      'standing climb 8 eights, effort 8',
      'push 8 eights, effort 9',
      'recover 25 eights, effort 3',
      'standing run 8 eights, effort 7',
      'jumps on 8 9 eights, effort 7',
      'recover 12 eights, effort 3',
      'push 8 eights, effort 9',
      'flush 11 eights, effort 2',
    ])
  const keys = await keysDown()
  console.log(`${keys} keys for a ride of twelve blocks, ${toStage} of them on the start page`)
  expect(keys).toBeLessThanOrEqual(MOST_KEYS)
})

test('a pattern is added by its digit, after what has the focus, which goes along', async ({ page }) => {
  await openSpark(page)
  await choose('s1b2')(page)
  await page.keyboard.press('5')
  await expect(page.locator('[data-block-id]')).toHaveCount(43)
  const added = page.locator('[data-stage-stop="block"]').nth(2)
  await expect(added).toHaveAccessibleName(/^push,/)
  await expect(added).toBeFocused()
  await page.keyboard.press('+')
  await expect(page.locator('[data-stage-stop="block"]').nth(1)).toHaveAccessibleName(/, 16 eights,/)
  // A digit in a field or on the effort is what it was there.
  await page.locator('.draft-side').getByRole('slider', { name: 'effort', exact: true }).focus()
  await page.keyboard.press('7')
  await expect(added).toHaveAccessibleName(/effort 7/)
  await expect(page.locator('[data-block-id]')).toHaveCount(43)
})

test('the beginning of a name is offered as a pattern, by key and by mouse; the page’s and one’s own', async ({ page }) => {
  await openSpark(page)
  await choose('s2b3')(page)
  await page.keyboard.press('Shift+ArrowRight')
  await page.keyboard.press('k')
  await expect(page.getByRole('dialog', { name: 'save as a pattern' })).toBeVisible()
  await page.keyboard.press('Control+a')
  await page.keyboard.type('Rooftop pair')
  await page.keyboard.press('Enter')
  await expect(page.getByRole('dialog')).toHaveCount(0)
  await choose('s1b2')(page)
  await page.keyboard.press('Insert')
  await expect(field(page)).toBeFocused()
  await page.keyboard.type('roof')
  await expect(offer(page, 'add Rooftop pair')).toHaveAttribute('aria-selected', 'true')
  // It is seen before it is taken.
  await expect(page.locator('[data-block-id]')).toHaveCount(44)
  expect(await barriers(page)).toEqual([])
  await page.keyboard.press('Enter')
  await expect(field(page)).toHaveValue('')
  await page.keyboard.type('jumps 4')
  await offer(page, 'add jumps on 4').click()
  await expect(page.locator('[data-block-id]')).toHaveCount(45)
  await expect(field(page)).toBeFocused()
  await page.keyboard.press('Escape')
  await expect(page.locator('[data-stage-stop="block"]:focus')).toHaveAccessibleName(/^jumps on 4/)
})

test('a song is filled with one block, with a set, and with several in turn', async ({ page }) => {
  await openSpark(page)
  const song = async () => (await built(page)).slice(0, 8)
  // 24 of the first song's 52 eights are left.
  await choose('s1b3')(page)
  await page.keyboard.press('Shift+ArrowRight')
  await page.keyboard.press('Shift+ArrowRight')
  await page.keyboard.press('Delete')
  await expect(page.locator('[data-block-id]')).toHaveCount(39)
  await choose('s1b2')(page)
  await page.locator('[data-action="stage.fill"]').click()
  await expect.poll(song).toEqual(expect.arrayContaining(['flat 44 eights, effort 3']))
  await page.keyboard.press('Control+z')
  await choose('s1b1')(page)
  await page.keyboard.press('Shift+ArrowRight')
  await page.keyboard.press('e')
  await expect
    .poll(async () => (await built(page)).slice(0, 5))
    .toEqual([
      'settle 8 eights, effort 2',
      'flat 16 eights, effort 3',
      'settle 8 eights, effort 2',
      'flat 16 eights, effort 3',
      'settle 4 eights, effort 2',
    ])
  await page.keyboard.press('Control+z')
  await choose('s1b2')(page)
  await page.keyboard.press('g')
  await page.keyboard.press('e')
  await expect(page.locator('[data-stage-stop="set"]')).toHaveText(/2 rounds/)
  await expect(page.getByRole('status').filter({ hasText: 'There is no room left for another round.' })).toHaveCount(1)
})

test('F6 goes from part to part, down to the cues and one level out by Escape', async ({ page }) => {
  await openSpark(page)
  await choose('s1b2')(page)
  const inside = (part: string) => expect(page.locator(`${part} :focus`)).toHaveCount(1)
  for (const part of ['.draft-side', '.tray', '.findings', '.stage', '.draft-side']) {
    await page.keyboard.press('F6')
    await inside(part)
  }
  await page.keyboard.press('Shift+F6')
  await expect(stop(page, 's1b2')).toBeFocused()
  // From the tray and the checks too, Escape leads back.
  for (const times of [2, 3]) {
    for (let press = 0; press < times; press++) await page.keyboard.press('F6')
    await page.keyboard.press('Escape')
    await expect(stop(page, 's1b2')).toBeFocused()
  }
  // To its cues, out of the words that are begun, out of the field, to the song, to nothing.
  await page.keyboard.press('ArrowDown')
  const cue = page.locator('.panel-cues textarea').first()
  await expect(cue).toBeFocused()
  const said = await cue.inputValue()
  await page.keyboard.type('never said')
  await page.keyboard.press('Escape')
  await expect(cue).toHaveValue(said)
  await page.keyboard.press('Escape')
  await expect(stop(page, 's1b2')).toBeFocused()
  await page.keyboard.press('Escape')
  await expect(stop(page, 's1')).toBeFocused()
  await expect(stop(page, 's1')).toHaveAttribute('aria-pressed', 'true')
  await page.keyboard.press('Escape')
  await expect(stop(page, 's1')).toHaveAttribute('aria-pressed', 'false')
})

test.describe('by touch', () => {
  test.use({ hasTouch: true, isMobile: true, viewport: { width: 390, height: 844 } })

  test('a song is filled, and a pattern found by its name, with a finger', async ({ page }) => {
    await openSpark(page)
    await stop(page, 's1b5').tap()
    await page.locator('[data-action="stage.delete"]').tap()
    await expect(page.locator('[data-block-id]')).toHaveCount(41)
    await stop(page, 's1b4').tap()
    await page.locator('[data-action="stage.fill"]').tap()
    await expect(stop(page, 's1b4')).toHaveAccessibleName(/, 20 eights,/)
    await page.locator('[data-action="stage.typeLine"]').tap()
    await field(page).fill('hov')
    const size = (await offer(page, 'add hover').boundingBox())!
    expect(size.height).toBeGreaterThanOrEqual(44)
    await offer(page, 'add hover').tap()
    await expect(page.locator('[data-block-id]')).toHaveCount(42)
  })
})
