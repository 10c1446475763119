import type { Locator, Page } from '@playwright/test'
import { everyFinding } from '#e2e/support/everyFinding.ts'
import { barriers } from './support/barriers.ts'
import { drag, nextFrame } from './support/drag.ts'
import { drawLate } from './support/drawLate.ts'
import { press, retype, tabTo } from './support/keyboard.ts'
import { lightness } from './support/lightness.ts'
import { openRidewright } from './support/openRidewright.ts'
import { shownLink } from './support/shownLink.ts'
import { expect, test } from './support/test.ts'

const total = (page: Page) => page.getByTestId('slot').locator('[data-total]')
const blocks = (page: Page) => page.locator('[data-block-id]')
const block = (page: Page, id: string) => page.locator(`[data-block-id="${id}"]`)
const names = (page: Page) =>
  page.locator('[data-stage-stop="block"]').evaluateAll((stops) => stops.map((stop) => stop.getAttribute('data-id')))
const asked = (page: Page) => page.locator('[data-curve="intent"]')
const pathOf = async (curve: Locator) => (await curve.getAttribute('d')) ?? ''

async function openDemo(page: Page, name: RegExp): Promise<void> {
  await openRidewright(page)
  await page.getByRole('button', { name }).click()
  await expect(asked(page)).toBeAttached()
}

/** The whole ride as its link tells it: two rides with one link are the same ride. */
async function linkOf(page: Page): Promise<string> {
  await page.getByRole('link', { name: 'share', exact: true }).click()
  const link = await shownLink(page)
  await page.getByRole('link', { name: 'plan', exact: true }).click()
  await expect(asked(page)).toBeAttached()
  return link
}

test('a ride drafted from nothing by pointer', async ({ page }) => {
  await openRidewright(page)
  await page.getByLabel('title', { exact: true }).fill('Lamp-lit Thirty')
  await page.getByText('30', { exact: true }).click()
  await page.getByRole('button', { name: 'start a blank ride' }).click()
  await expect(page.getByText(/This ride is empty/)).toBeVisible()

  await page.getByRole('button', { name: 'flat', exact: true }).click()
  await page.getByRole('button', { name: 'seated climb', exact: true }).click()
  await expect(blocks(page)).toHaveCount(2)

  // A pattern is dragged to the front of what is there.
  await drag(page, page.getByRole('button', { name: 'recover', exact: true }), blocks(page).first(), { grip: { x: 0.3, y: 0.5 } })
  await expect(blocks(page)).toHaveCount(3)
  await expect(blocks(page).nth(2)).toContainText('seated')

  // The first block's edge is pulled by twenty seconds: the stage opens at 4.2 pixels a second.
  const before = Number(await total(page).getAttribute('data-total'))
  const edge = blocks(page).first().locator('.edge[data-side="end"]')
  await drag(page, edge, { by: { x: 20 * 4.2, y: 0 } })
  await expect.poll(async () => Number(await total(page).getAttribute('data-total'))).toBe(before + 20)
})

test('a ride drafted from nothing by keyboard alone', async ({ page }) => {
  await openRidewright(page)
  await tabTo(page, page.getByLabel('title', { exact: true }))
  await page.keyboard.type('Quiet Hands')
  await tabTo(page, page.getByRole('button', { name: 'start a blank ride' }))
  await press(page, 'Enter')
  await tabTo(page, page.getByRole('button', { name: 'flat', exact: true }))
  await press(page, 'Enter')
  await tabTo(page, page.getByRole('button', { name: 'push', exact: true }))
  await press(page, 'Enter')
  await expect(blocks(page)).toHaveCount(2)
  const spoken = page.getByRole('status')
  await expect(
    spoken.filter({ hasText: /Added push to the end of warm-up\. It starts at 1:00\. The ride is 1:20, 43:40 left\./ }),
  ).toBeAttached()

  // To the stage: the push goes first, grows by five seconds, and eases by one.
  const push = page.getByRole('option', { name: /^push, / })
  await tabTo(page, push)
  await press(page, 'Alt+ArrowLeft')
  await expect(blocks(page).first()).toContainText('push')
  await expect(push).toBeFocused()
  await press(page, '+')
  await expect(spoken.filter({ hasText: 'The ride is 1:25' })).toBeAttached()
  await press(page, 'Alt+ArrowDown')
  await expect(push).toHaveAccessibleName(/effort 8/)

  // Duplicate, select both, group into rounds, take it back.
  await press(page, 'd')
  await expect(blocks(page)).toHaveCount(3)
  // The copy has the focus: the block it was made of stands before it.
  await press(page, 'Shift+ArrowLeft')
  await press(page, 'g')
  await expect(page.locator('[data-stage-stop="set"]')).toHaveText(/2 rounds/)
  await expect(blocks(page)).toHaveCount(5)
  await press(page, 'Control+z')
  await expect(blocks(page)).toHaveCount(3)

  // Details are typed.
  await press(page, 'Home')
  await press(page, 'Enter')
  await tabTo(page, page.getByLabel('name', { exact: true }))
  await retype(page, 'lift-off')
  await press(page, 'Enter')
  await expect(page.getByRole('option', { name: /^lift-off, / })).toBeAttached()
})

test('keys that follow one another quickly all reach the block they are meant for', async ({ page }) => {
  await drawLate(page)
  await openDemo(page, /^Twenty-Minute Spark/)
  await block(page, 's1b2').focus()
  const before = Number(await total(page).getAttribute('data-total'))
  for (const key of ['Alt+ArrowLeft', 'Alt+ArrowRight', 'Alt+ArrowRight', '+', 'Alt+ArrowLeft', 'Alt+ArrowLeft', '+'])
    await press(page, key)
  await expect(block(page, 's1b2')).toBeFocused()
  await expect(page.locator('[data-stage-stop="block"]').first()).toHaveAttribute('data-id', 's1b2')
  await expect(block(page, 's1b2')).toContainText('18 eights')
  await expect.poll(async () => Number(await total(page).getAttribute('data-total'))).toBeGreaterThan(before)
  await press(page, 'Delete')
  await press(page, 'Delete')
  await expect(block(page, 's1b1')).toHaveCount(0)
  await expect(block(page, 's1b2')).toHaveCount(0)
})

test('keys are about the block under the focus, also where something else is chosen', async ({ page }) => {
  await openDemo(page, /^Twenty-Minute Spark/)
  await page.locator('.song-head').nth(1).click()
  await expect(page.getByRole('heading', { name: 'Brickworks Elevator' })).toBeAttached()
  await tabTo(page, block(page, 's1b1'))
  await press(page, 'Enter')
  await expect(page.getByRole('heading', { name: 'settle' })).toBeAttached()
  await expect(page.getByLabel('knob', { exact: true })).toBeFocused()

  await page.locator('.song-head').nth(1).click()
  await tabTo(page, block(page, 's1b1'))
  await press(page, 'Shift+ArrowRight')
  await expect(page.locator('[data-block-id][data-selected]')).toHaveCount(2)
  // A locked capital key changes no letter's meaning.
  await press(page, 'Shift+G')
  await expect(page.locator('[data-stage-stop="set"]')).toHaveText(/2 rounds/)
  await press(page, 'ArrowUp')
  await press(page, 'ArrowDown')
  await expect(block(page, 's1b1').first()).toBeFocused()

  // Out of the set over its edge, and into it again.
  await press(page, 'Alt+ArrowLeft')
  await expect(page.locator('[data-stage-stop="set"]')).toBeAttached()
  await expect(block(page, 's1b1')).toHaveCount(1)
  await expect(block(page, 's1b2')).toHaveCount(2)
  await press(page, 'Alt+ArrowRight')
  await expect(block(page, 's1b1')).toHaveCount(2)
  expect((await names(page)).slice(0, 4)).toEqual(['s1b1', 's1b2', 's1b1', 's1b2'])
  for (let place = 0; place < 2; place++) await press(page, 'Alt+ArrowRight')
  await expect(block(page, 's1b1')).toHaveCount(1)
  expect((await names(page)).slice(0, 3)).toEqual(['s1b2', 's1b2', 's1b1'])
  // From a set into the next song.
  await press(page, 'Alt+ArrowLeft')
  await expect(block(page, 's1b1')).toHaveCount(2)
  await press(page, 'Alt+Shift+ArrowRight')
  await expect(page.getByRole('status').filter({ hasText: /^Moved settle before set-up in Brickworks Elevator/ })).toBeAttached()
})

test('the curve is another one from step to step of a drag, and is the old one when Escape lets go', async ({ page }) => {
  await openDemo(page, /^Twenty-Minute Spark/)
  const first = await pathOf(asked(page))
  const order = await names(page)
  const seen: string[] = []
  await drag(
    page,
    block(page, 's1b1'),
    { by: { x: 700, y: 20 } },
    {
      steps: 36,
      release: false,
      onStep: async () => {
        seen.push(await pathOf(asked(page)))
      },
    },
  )
  expect(new Set(seen).size).toBeGreaterThan(5)
  await press(page, 'Escape')
  await expect(asked(page)).toHaveAttribute('d', first)
  await page.mouse.up()
  await nextFrame(page)
  await expect(asked(page)).toHaveAttribute('d', first)
  expect(await names(page)).toEqual(order)
  await expect(page.getByRole('button', { name: 'undo' })).toBeDisabled()
})

test('undo after a drag restores the exact ride, redo the dragged one', async ({ page }) => {
  await openDemo(page, /^Twenty-Minute Spark/)
  const before = await linkOf(page)
  await drag(page, block(page, 's1b2'), block(page, 's2b1'), { steps: 30 })
  await expect(page.getByRole('button', { name: 'undo' })).toBeEnabled()
  const after = await linkOf(page)
  expect(after).not.toBe(before)
  await page.getByRole('button', { name: 'undo' }).click()
  expect(await linkOf(page)).toBe(before)
  await page.getByRole('button', { name: 'redo' }).click()
  expect(await linkOf(page)).toBe(after)
})

test('a whole section is dragged, and moved from the keyboard', async ({ page }) => {
  await openDemo(page, /^Twenty-Minute Spark/)
  await page.getByRole('button', { name: 'whole ride' }).click()
  const heads = page.locator('.song-head')
  await drag(page, heads.nth(0), { by: { x: 330, y: 0 } }, { grip: { x: 0.5, y: 0.5 } })
  await expect(heads.nth(1)).toContainText('Paper Comets')
  await heads.nth(1).focus()
  await press(page, 'Alt+ArrowRight')
  await expect(heads.nth(2)).toContainText('Paper Comets')
  await expect(heads.nth(2)).toBeFocused()
})

test('a block is split, joined again, and deleted', async ({ page }) => {
  await openDemo(page, /^Twenty-Minute Spark/)
  const count = await blocks(page).count()
  const before = (await total(page).getAttribute('data-total'))!
  await block(page, 's1b2').click()
  await press(page, 's')
  await expect(blocks(page)).toHaveCount(count + 1)
  await expect(total(page)).toHaveAttribute('data-total', before)
  await press(page, 'j')
  await expect(blocks(page)).toHaveCount(count)
  await expect(block(page, 's1b2')).toContainText('16 eights')
  await press(page, 'Delete')
  await expect(block(page, 's1b2')).toHaveCount(0)
})

test('a section is cut in two before a block, by key and by button, and the song goes on with the same foot', async ({ page }) => {
  await openDemo(page, /^Twenty-Minute Spark/)
  const heads = page.locator('.song-head')
  const count = await heads.count()
  const before = (await total(page).getAttribute('data-total'))!
  await block(page, 's1b3').click()
  await press(page, 'c')
  await expect(heads).toHaveCount(count + 1)
  await expect(heads.nth(1)).toContainText(/2\. Paper Comets.*right foot/)
  await expect(block(page, 's1b3')).toBeFocused()
  await expect(total(page)).toHaveAttribute('data-total', before)
  await expect(page.getByRole('button', { name: 'split song here' })).toBeDisabled()
  await page.getByRole('button', { name: 'undo' }).click()
  await expect(heads).toHaveCount(count)
  await block(page, 's1b4').click()
  await page.getByRole('button', { name: 'split song here' }).click()
  await expect(heads).toHaveCount(count + 1)
})

test('what keys do to a block and a section, buttons do as well', async ({ page }) => {
  await openDemo(page, /^Twenty-Minute Spark/)
  const count = await blocks(page).count()
  const button = (name: string) => page.getByRole('button', { name, exact: true })
  await block(page, 's1b2').click()
  await button('duplicate').click()
  await expect(blocks(page)).toHaveCount(count + 1)
  await button('repeat').click()
  await expect(page.locator('[data-stage-stop="set"]')).toBeFocused()
  await page.getByLabel('rounds', { exact: true }).fill('3')
  await page.keyboard.press('Enter')
  await expect(blocks(page)).toHaveCount(count + 3)
  await button('delete').click()
  await expect(blocks(page)).toHaveCount(count)
  await expect(page.locator('[data-block-id][data-selected]')).toBeFocused()
  await page.locator('.song-head').first().click()
  await button('delete song').click()
  await expect(page.locator('.song-head').first()).toContainText('Brickworks Elevator')
})

test('what is dragged hangs beside the pointer all the way, and pulling an edge selects no words', async ({ page }) => {
  await openDemo(page, /^Twenty-Minute Spark/)
  const away: number[] = []
  const { x, width } = (await block(page, 's1b2').boundingBox())!
  const onStep = async (step: number) => {
    if (step < 3) return
    const name = (await page.locator('.drag-overlay').boundingBox())!
    away.push(Math.abs(name.x - (x + width / 2 - (600 * step) / 24)))
  }
  await drag(page, block(page, 's1b2'), { by: { x: -600, y: 0 } }, { steps: 24, release: false, onStep })
  expect(Math.max(...away)).toBeLessThan(30)
  await press(page, 'Escape')
  await page.mouse.up()

  await drag(page, block(page, 's1b1').locator('.edge[data-side="end"]'), { by: { x: 80, y: 0 } })
  expect(await page.evaluate(() => String(getSelection()))).toBe('')
})

test('a block held at the edge of the stage scrolls it, and is dropped far away', async ({ page }) => {
  await openDemo(page, /^Ridge and Return/)
  const scroller = page.locator('.stage-scroller')
  const { x, width } = (await scroller.boundingBox())!
  const { y, height } = (await block(page, 's1b1').boundingBox())!
  await drag(page, block(page, 's1b1'), { x: x + width - 40, y: y + height / 2 }, { release: false })
  // Three songs on: what is dragged stays in the hand while the ride goes by under it.
  await expect.poll(() => scroller.evaluate((box) => box.scrollLeft)).toBeGreaterThan(2500)
  await page.mouse.move(x + width / 2, y + height / 2)
  await nextFrame(page)
  await page.mouse.up()
  await expect(page.getByRole('status').filter({ hasText: /^Moved settle / })).toBeAttached()
  expect((await names(page)).indexOf('s1b1')).toBeGreaterThan(8)
})

test('a finding leads to its place, shows its repair while pointed at, and the repair takes it away', async ({ page }) => {
  await openDemo(page, /^Twenty-Minute Spark/)
  const row = (await everyFinding(page)).filter({ hasText: '15 s of recovery' }).filter({ hasText: '4:09' })
  await row.getByRole('button', { name: '4:09' }).click()
  await expect(page.locator('[data-block-id][data-selected]')).toBeInViewport()
  const path = await pathOf(asked(page))
  const repair = row.getByRole('button', { name: /^(Extend|Give)/ })
  await repair.hover()
  await expect(asked(page)).not.toHaveAttribute('d', path)
  await page.mouse.move(10, 400)
  await expect(asked(page)).toHaveAttribute('d', path)
  await repair.click()
  await expect(row).toHaveCount(0)
})

test('a finding far down the list leads back up to the stage, beside the panel and in one column', async ({ page }) => {
  await page.setViewportSize({ width: 1440, height: 640 })
  await openDemo(page, /^Twenty-Minute Spark/)
  const stage = page.locator('.stage')
  const last = (await everyFinding(page)).last().getByRole('button').first()
  await last.scrollIntoViewIfNeeded()
  await expect(stage).not.toBeInViewport({ ratio: 0.5 })
  await last.click()
  await expect(stage).toBeInViewport({ ratio: 0.95 })
  await expect(page.locator('[data-block-id][data-selected], .song[data-selected]').first()).toBeInViewport()

  // In one column the details come before the findings.
  await page.setViewportSize({ width: 390, height: 844 })
  const top = async (place: string) => (await page.locator(place).boundingBox())!.y
  await expect.poll(async () => (await top('.panel')) < (await top('.findings'))).toBe(true)
  await everyFinding(page)
  await last.scrollIntoViewIfNeeded()
  await expect(stage).not.toBeInViewport()
  await last.click()
  await expect(stage).toBeInViewport({ ratio: 0.95 })
})

test('what has no room beside a block’s leader or length is left out, not cut', async ({ page }) => {
  await page.setViewportSize({ width: 768, height: 1024 })
  await openDemo(page, /^Twenty-Minute Spark/)
  await expect(block(page, 's1b2').locator('.block-facts')).toBeVisible()
  const seen = await page.locator('.block-facts').evaluateAll((all) =>
    all.flatMap((facts) => {
      const line = facts.getBoundingClientRect()
      return [...facts.children].slice(1).map((fact) => {
        const { top, right } = fact.getBoundingClientRect()
        return top >= line.bottom - 1 ? 'left out' : right <= line.right && fact.scrollWidth <= fact.clientWidth ? 'whole' : 'cut'
      })
    }),
  )
  expect(new Set(seen)).toEqual(new Set(['whole', 'left out']))
})

test('the place of the draft is as high as the window: nothing hidden makes the page longer', async ({ page }) => {
  await page.setViewportSize({ width: 1024, height: 640 })
  await openDemo(page, /^Twenty-Minute Spark/)
  await block(page, 's1b3').click()
  await expect(page.getByLabel('name', { exact: true })).toBeAttached()
  expect(await page.evaluate(() => document.documentElement.scrollHeight - innerHeight)).toBe(0)
})

test.describe('by finger', () => {
  test.use({ hasTouch: true, isMobile: true, viewport: { width: 1024, height: 768 } })

  test('what is done to a block is large enough to be met', async ({ page }) => {
    await openDemo(page, /^Twenty-Minute Spark/)
    await block(page, 's1b2').tap({ position: { x: 40, y: 60 } })
    const size = async (thing: Locator) => (await thing.boundingBox())!
    expect((await size(block(page, 's1b2').locator('.edge[data-side="end"]'))).width).toBeGreaterThanOrEqual(24)
    expect((await size(page.getByRole('button', { name: 'duplicate', exact: true }))).height).toBeGreaterThanOrEqual(44)
    await page.getByRole('button', { name: 'delete', exact: true }).tap()
    await expect(block(page, 's1b2')).toHaveCount(0)
  })
})

for (const theme of ['light', 'dark'] as const) {
  test(`the draft has no accessibility faults that can be found by machine, ${theme}`, async ({ page }) => {
    await page.emulateMedia({ colorScheme: theme })
    await openDemo(page, /^Twenty-Minute Spark/)
    await block(page, 's1b2').click()
    expect(await barriers(page)).toEqual([])
    // The grid of the chart stays close to the paper, the curves away from it.
    const [grid, curve] = [page.locator('.chart-grid').first(), page.locator('.curve-demand').first()]
    const [near, far] = [await grid.evaluate(lightness, 'stroke'), await curve.evaluate(lightness, 'stroke')]
    if (theme === 'light') expect([near > 0.85, far < 0.3]).toEqual([true, true])
    else expect([near < 0.3, far > 0.8]).toEqual([true, true])
  })
}
