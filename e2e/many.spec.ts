import type { Locator, Page } from '@playwright/test'
import { button, choose, drawn, stop } from './actions/row.ts'
import { barriers } from './support/barriers.ts'
import { openRidewright } from './support/openRidewright.ts'
import { expect, test } from './support/test.ts'

async function openSpark(page: Page): Promise<void> {
  await openRidewright(page)
  await page.getByRole('button', { name: /^Twenty-Minute Spark/ }).click()
  await expect(page.locator('[data-block-id]')).toHaveCount(42)
}

const selected = (page: Page) => page.locator('[data-stage-stop="block"][aria-selected="true"]')
const panel = (page: Page) => page.locator('.draft-side')
const field = (page: Page, name: string) => panel(page).getByRole('textbox', { name, exact: true })
const list = (page: Page, name: string) => panel(page).getByRole('combobox', { name, exact: true })
const effort = (page: Page) => panel(page).getByRole('slider', { name: 'effort', exact: true })
const box = (page: Page, name: string) => panel(page).getByRole('checkbox', { name })
const chosenOf = (select: Locator) => select.evaluate((one) => (one as HTMLSelectElement).selectedOptions[0]?.textContent)
const steps = (page: Page) => page.getByRole('menu').getByRole('menuitem')

const alike = (page: Page) => page.getByRole('menuitem', { name: /^select all like this/ })

/** A set-up, a climb that travels back, and jumps: of two songs, and alike in little. */
async function chooseThree(page: Page): Promise<void> {
  await choose('s2b1')(page)
  for (const id of ['s2b5', 's3b3']) await stop(page, id).click({ modifiers: ['ControlOrMeta'], position: { x: 12, y: 10 } })
  await expect(selected(page)).toHaveCount(3)
}

/** Types into a field of the details and takes it. */
async function typed(on: Locator, text: string): Promise<void> {
  await on.fill(text)
  await on.press('Enter')
}

/** What is changed of several blocks, how the field shows it, and how it showed that they differ. */
const FIELDS: Readonly<
  Record<
    string,
    { change: (page: Page) => Promise<unknown>; sees: (page: Page) => Promise<unknown>; mixed: (page: Page) => Promise<unknown> }
  >
> = {
  effort: {
    change: async (page) => {
      await effort(page).focus()
      await page.keyboard.press('9')
    },
    sees: (page) => expect(effort(page)).toHaveAttribute('aria-valuenow', '9'),
    mixed: (page) => expect(effort(page)).toHaveAttribute('aria-valuetext', 'mixed'),
  },
  posture: {
    change: (page) => panel(page).getByRole('radio', { name: 'standing' }).check({ force: true }),
    sees: (page) => expect(panel(page).getByRole('radio', { name: 'standing' })).toBeChecked(),
    mixed: (page) => expect(panel(page).getByRole('group', { name: 'posture' }).locator(':checked')).toHaveCount(0),
  },
  to: {
    change: (page) => typed(field(page, 'to'), '2'),
    sees: (page) => expect(field(page, 'to')).toHaveValue('2'),
    mixed: (page) => expect(field(page, 'to')).toHaveAttribute('placeholder', 'mixed'),
  },
  length: {
    change: (page) => typed(field(page, 'length'), '6'),
    sees: (page) => expect(field(page, 'length')).toHaveValue('6'),
    mixed: (page) => expect(field(page, 'length')).toHaveAttribute('placeholder', 'mixed'),
  },
  name: {
    change: (page) => typed(field(page, 'name'), 'together'),
    sees: (page) => expect(field(page, 'name')).toHaveValue('together'),
    mixed: (page) => expect(field(page, 'name')).toHaveAttribute('placeholder', 'mixed'),
  },
  terrain: {
    change: (page) => list(page, 'terrain').selectOption('flat'),
    sees: (page) => expect.poll(() => chosenOf(list(page, 'terrain'))).toBe('flat'),
    mixed: (page) => expect.poll(() => chosenOf(list(page, 'terrain'))).toBe('mixed'),
  },
  move: {
    change: (page) => list(page, 'move').selectOption('press'),
    sees: (page) => expect.poll(() => chosenOf(list(page, 'move'))).toBe('press'),
    mixed: (page) => expect.poll(() => chosenOf(list(page, 'move'))).toBe('mixed'),
  },
}

test('each field says “mixed” where the blocks differ, and changes all of them as one step', async ({ page }) => {
  await openSpark(page)
  await chooseThree(page)
  const before = await drawn(page)
  for (const [name, { change, sees, mixed }] of Object.entries(FIELDS))
    await test.step(name, async () => {
      await mixed(page)
      await change(page)
      await sees(page)
      await expect(selected(page)).toHaveCount(3)
      await button(page, 'ride.undo').click()
      await expect.poll(() => drawn(page)).toBe(before)
      await mixed(page)
    })
  // What differs in the field that was not touched stays each block's own.
  await FIELDS.effort!.change(page)
  for (const [id, said] of [
    ['s2b1', 'set-up'],
    ['s2b5', 'standing climb'],
    ['s3b3', 'jumps on 8'],
  ] as const)
    await expect(stop(page, id)).toHaveAccessibleName(new RegExp(`${said}.*effort 9`))
  expect(await barriers(page)).toEqual([])
})

test('a box that only some have ticked is ticked for all, and the folded fields say that they differ', async ({ page }) => {
  await openSpark(page)
  await choose('s2b1')(page)
  await panel(page).getByText('water, walk, all-out').click()
  await box(page, 'water').check()
  await chooseThree(page)
  const fold = panel(page).locator('details', { hasText: 'water, walk, all-out' })
  if ((await fold.getAttribute('open')) === null) await fold.locator('summary').click()
  const water = box(page, 'water')
  expect(await water.evaluate((one) => (one as HTMLInputElement).indeterminate)).toBe(true)
  await water.focus()
  await page.keyboard.press('Space')
  await expect(water).toBeChecked()
  expect(await water.evaluate((one) => (one as HTMLInputElement).indeterminate)).toBe(false)
  await choose('s3b3')(page)
  await expect(fold.locator('summary')).toContainText('water')
})

test('all of a song, all of the ride, and all that are ridden as this one', async ({ page }) => {
  await openSpark(page)
  await choose('s2b3')(page)
  await page.keyboard.press('Control+Shift+A')
  await expect(selected(page)).toHaveCount(4)
  await expect(stop(page, 's5b8')).toHaveAttribute('aria-selected', 'true')
  await expect(page.getByRole('status').filter({ hasText: 'Selected 4 blocks like standing climb' })).toHaveCount(1)
  await page.keyboard.press('Alt+ArrowUp')
  for (const [id, level] of Object.entries({ s2b3: 8, s2b8: 9, s5b3: 9, s5b8: 10 }))
    await expect(stop(page, id)).toHaveAccessibleName(new RegExp(`effort ${level},`))
  await page.keyboard.press('+')
  for (const id of ['s2b3', 's2b8', 's5b3', 's5b8']) await expect(stop(page, id)).toHaveAccessibleName(/, 9 eights,/)
  await choose('s2b3')(page)
  await page.keyboard.press('Control+A')
  await expect(selected(page)).toHaveCount(9)
  await page.keyboard.press('Control+A')
  await expect(selected(page)).toHaveCount(42)
  await expect(panel(page).getByRole('heading', { name: '42 blocks' })).toBeVisible()
  // A move that nobody else has.
  await choose('s3b4')(page)
  await button(page, 'clipboard.menu').click()
  await expect(alike(page)).toHaveAttribute('aria-disabled', 'true')
})

test('a run is shifted by eights by keys and by its buttons, and what stands beside it makes room', async ({ page }) => {
  await openSpark(page)
  const long = (id: string) => page.locator(`[data-block-id="${id}"]`)
  await choose('s2b4')(page)
  await page.keyboard.press('Shift+ArrowRight')
  const before = await drawn(page)
  await page.keyboard.press('<')
  await page.keyboard.press('<')
  await expect(long('s2b3')).toContainText('6 eights')
  await expect(long('s2b6')).toContainText('6 eights')
  await button(page, 'stage.shiftLater').click()
  await expect(long('s2b3')).toContainText('7 eights')
  await expect(long('s2b6')).toContainText('5 eights')
  // Nothing behind it has another time.
  await expect(stop(page, 's2b7')).toHaveAccessibleName(/at 4:53/)
  for (let step = 0; step < 3; step++) await page.keyboard.press('Control+z')
  await expect.poll(() => drawn(page)).toBe(before)
  // Not the first of a song: nothing before it has time to give.
  await choose('s2b1')(page)
  await page.keyboard.press('Shift+ArrowRight')
  await page.keyboard.press('<')
  await expect(page.getByRole('status').filter({ hasText: 'There is no block before it in this song' })).toHaveCount(1)
})

test('one round is changed by itself, from the stage and from the details', async ({ page }) => {
  await openSpark(page)
  const part = (round: number) => page.locator(`[data-stage-stop="block"][data-round="${round}"]`)
  await choose('s1b2')(page)
  await page.keyboard.press('g')
  await expect(part(2)).toHaveCount(1)
  await part(2).click({ position: { x: 12, y: 10 } })
  await list(page, 'applies to').selectOption('only round 2')
  await expect(page.locator('[data-stage-stop="set"]')).toHaveCount(0)
  await effort(page).focus()
  await page.keyboard.press('8')
  const [first, second] = [page.locator('[data-stage-stop="block"]').nth(1), page.locator('[data-stage-stop="block"]').nth(2)]
  await expect(second).toHaveAccessibleName(/flat.*effort 8/)
  await expect(first).toHaveAccessibleName(/flat.*effort 3/)
  await button(page, 'ride.undo').click()
  await button(page, 'ride.undo').click()
  await expect(part(2)).toHaveCount(1)
  await part(2).click({ position: { x: 12, y: 10 } })
  await page.keyboard.press('o')
  await expect(page.locator('[data-stage-stop="set"]')).toHaveCount(0)
  await expect(page.locator('[data-stage-stop="block"]').nth(2)).toBeFocused()
})

test('the list of changes goes to any of them and back again', async ({ page }) => {
  await openSpark(page)
  await choose('s1b2')(page)
  const now = async (count: number, says: RegExp) => {
    await expect(page.locator('[data-block-id]')).toHaveCount(count)
    await expect(stop(page, 's1b2')).toHaveAccessibleName(says)
  }
  for (const key of ['+', 'Alt+ArrowUp', 'd']) await page.keyboard.press(key)
  await now(43, /17 eights, effort 4/)
  await page.keyboard.press('h')
  await expect(steps(page)).toHaveCount(4)
  // It opens at now.
  await expect(steps(page).first()).toBeFocused()
  expect(await barriers(page)).toEqual([])
  await page.keyboard.press('ArrowDown')
  await page.keyboard.press('ArrowDown')
  await page.keyboard.press('Enter')
  await now(42, /17 eights, effort 3/)
  await expect(page.getByRole('status').filter({ hasText: 'Undid 2 changes' })).toHaveCount(1)
  await button(page, 'ride.undoList').click()
  await expect(steps(page).nth(2)).toBeFocused()
  await steps(page).last().click()
  await now(42, /16 eights, effort 3/)
  await button(page, 'ride.undoList').click()
  await steps(page).first().click()
  await now(43, /17 eights, effort 4/)
})

test.describe('by touch', () => {
  test.use({ hasTouch: true, isMobile: true, viewport: { width: 390, height: 844 } })

  test('all like one are selected, changed, shifted, and taken back with a finger', async ({ page }) => {
    await openSpark(page)
    await stop(page, 's2b3').scrollIntoViewIfNeeded()
    await stop(page, 's2b3').tap()
    await button(page, 'clipboard.menu').tap()
    await alike(page).tap()
    await expect(selected(page)).toHaveCount(4)
    const bounds = (await effort(page).boundingBox())!
    await effort(page).tap({ position: { x: bounds.width * (9.5 / 11), y: bounds.height / 2 } })
    await expect(stop(page, 's5b8')).toHaveAccessibleName(/effort 9/)
    await expect(stop(page, 's2b3')).toHaveAccessibleName(/effort 9/)
    const list = button(page, 'ride.undoList')
    const size = (await list.boundingBox())!
    expect(Math.min(size.width, size.height)).toBeGreaterThanOrEqual(44)
    await list.tap()
    await steps(page).last().tap()
    await expect(stop(page, 's2b3')).toHaveAccessibleName(/effort 7/)
  })
})
