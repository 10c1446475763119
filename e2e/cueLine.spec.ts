import type { Page } from '@playwright/test'
import type { Cue } from '#plan/model.ts'
import { demoRide } from '#tests/support/demoRides.ts'
import { button, choose } from './actions/row.ts'
import { barriers } from './support/barriers.ts'
import { keepRides } from './support/keptRides.ts'
import { openRidewright } from './support/openRidewright.ts'
import { expect, test } from './support/test.ts'

const line = (page: Page) => page.locator('.cue-line')
const field = (page: Page) => page.getByRole('combobox', { name: /^(cue for “|Ansage für „)/ })
const moment = (page: Page) => line(page).getByRole('status')
const name = (page: Page) => line(page).locator('.cue-place').first()
const offers = (page: Page) => line(page).getByRole('option')
const panelCues = (page: Page) => page.locator('.panel-cue textarea')
const lastStep = (page: Page) => button(page, 'ride.undo').getAttribute('title')

async function openSpark(page: Page): Promise<void> {
  await openRidewright(page)
  await page.getByRole('button', { name: /^Twenty-Minute Spark/ }).click()
  await expect(page.locator('[data-curve="intent"]')).toBeAttached()
}

/** Opens the line for a block by its key. */
async function write(page: Page, id: string): Promise<void> {
  await choose(id)(page)
  await page.keyboard.press('w')
  await expect(field(page)).toBeFocused()
}

test('cue after cue is written without leaving the keys, each as one step', async ({ page }) => {
  await openSpark(page)
  await write(page, 's1b2')
  const count = await panelCues(page).count()
  const before = await moment(page).textContent()
  await page.keyboard.type('Long spine, quiet hands.')
  // It is on the page before it is kept.
  await expect(panelCues(page)).toHaveCount(count + 1)
  await expect(line(page)).toContainText('needs')
  await page.keyboard.press('Enter')
  await expect(field(page)).toHaveValue('')
  await expect(field(page)).toBeFocused()
  await expect(moment(page)).not.toHaveText(before!)
  expect(await lastStep(page)).toContain('Added “Long spine, quiet hands.”')
  await page.keyboard.type('Breathe low.')
  await page.keyboard.press('Enter')
  await expect(panelCues(page)).toHaveCount(count + 2)
  expect(await barriers(page)).toEqual([])
  await page.keyboard.press('Escape')
  await expect(line(page)).toHaveCount(0)
  await expect(page.locator('[data-stage-stop="block"][data-id="s1b2"]')).toBeFocused()
  await page.keyboard.press('Control+z')
  await expect(panelCues(page)).toHaveCount(count + 1)
  await page.keyboard.press('Control+z')
  await expect(panelCues(page)).toHaveCount(count)
})

test('words typed go along to another moment, and a cue that is there is changed, moved, and removed', async ({ page }) => {
  await openSpark(page)
  await write(page, 's1b2')
  await page.keyboard.type('Here we are.')
  for (let step = 0; step < 9; step++) await page.keyboard.press('Alt+ArrowDown')
  await expect(moment(page)).toContainText('at the end')
  await expect(field(page)).toHaveValue('Here we are.')
  await page.keyboard.press('Enter')
  await page.keyboard.press('Alt+ArrowUp')
  // Back to it: it is the last one.
  await page.keyboard.press('Alt+ArrowDown')
  await expect(field(page)).toHaveValue('Here we are.')
  await page.keyboard.press('Alt+Shift+ArrowUp')
  await expect(moment(page)).toContainText('at the last eight')
  expect(await lastStep(page)).toContain('Moved the cue “Here we are.”')
  await page.keyboard.press('Control+a')
  await page.keyboard.type('There we are.')
  await page.keyboard.press('Alt+ArrowUp')
  expect(await lastStep(page)).toContain('Changed the cue to “There we are.”')
  await page.keyboard.press('Alt+ArrowDown')
  await expect(field(page)).toHaveValue('There we are.')
  await expect(field(page)).toBeFocused()
  await page.keyboard.press('Control+a')
  await page.keyboard.press('Delete')
  await page.keyboard.press('Enter')
  await expect(moment(page)).toContainText('at the last eight')
  expect(await lastStep(page)).toContain('Removed the cue “There we are.”')
})

test('the next block’s cue is a key away, at the same moment, and what is typed is kept on the way', async ({ page }) => {
  await openSpark(page)
  await write(page, 's1b2')
  for (let step = 0; step < 12; step++) await page.keyboard.press('Alt+ArrowDown')
  await expect(moment(page)).toContainText('at the end')
  await page.keyboard.type('Breathe out.')
  const first = await name(page).textContent()
  await page.keyboard.press('PageDown')
  await expect(page.locator('[data-stage-stop="block"][data-id="s1b3"]')).toHaveAttribute('aria-selected', 'true')
  await expect(name(page)).not.toHaveText(first!)
  await expect(moment(page)).toContainText('at the end')
  await expect(field(page)).toBeFocused()
  expect(await lastStep(page)).toContain('Added “Breathe out.”')
  await page.keyboard.press('PageUp')
  await expect(field(page)).toHaveValue('Breathe out.')
  // The line is about the block that is chosen on the stage.
  await page.locator('[data-block-id="s1b4"]').click()
  await expect(name(page)).not.toHaveText(first!)
  await expect(line(page)).toBeVisible()
})

test('what was said before comes first: the most often, from other rides too; the trade has the rest', async ({ page }) => {
  await openRidewright(page)
  const spark = demoRide('spark')
  const says = (id: string, texts: readonly string[]) => {
    const cues = texts.map((text, at): Cue => ({ id: `own${at}`, moment: 'form', lead: { counts: 8 }, text }))
    const [first, ...rest] = spark.sections
    return {
      ...spark,
      id,
      sections: [{ ...first!, blocks: first!.blocks.map((item, at) => (at === 1 && 'cues' in item ? { ...item, cues } : item)) }, ...rest],
    }
  }
  await keepRides(page, [says('old', ['Quilted shoulders.', 'Quilted elbows.']), says('new', ['Quilted elbows.'])])
  await openSpark(page)
  await write(page, 's1b2')
  await page.keyboard.type('quil')
  await expect(offers(page)).toHaveText([/^Quilted elbows\./, /^Quilted shoulders\./])
  await page.keyboard.press('ArrowDown')
  await expect(offers(page).first()).toHaveAttribute('aria-selected', 'true')
  await expect(panelCues(page).filter({ hasText: 'Quilted elbows.' })).toHaveCount(1)
  await page.keyboard.press('Enter')
  await expect(field(page)).toHaveValue('')
  expect(await lastStep(page)).toContain('Added “Quilted elbows.”')
  // Tab takes the words into the line, to be changed.
  await page.keyboard.type('quil')
  await expect(offers(page)).toHaveText([/^Quilted shoulders\./])
  await page.keyboard.press('ArrowDown')
  await page.keyboard.press('Tab')
  await expect(field(page)).toHaveValue('Quilted shoulders.')
  await expect(field(page)).toBeFocused()
  await page.keyboard.press('Control+a')
  await page.keyboard.type('shoul')
  await expect(offers(page).filter({ hasText: /shoulders/i })).not.toHaveCount(0)
})

test('a count-in is completed, and goes where count-ins go', async ({ page }) => {
  await openSpark(page)
  await write(page, 's2b2')
  await page.keyboard.type('count')
  await page.keyboard.press('ArrowDown')
  await page.keyboard.press('Enter')
  expect(await lastStep(page)).toContain('Added a count-in')
  await expect(page.locator('.panel-cue-when').getByRole('combobox', { name: /count-in$/ })).toHaveCount(1)
})

test('a cue that is too long stays in the line and says so', async ({ page }) => {
  await openSpark(page)
  await write(page, 's1b2')
  await field(page).fill('word '.repeat(101))
  await page.keyboard.press('Enter')
  await expect(line(page).getByRole('alert')).toContainText('500')
  await expect(field(page)).toHaveValue(/^word word/)
  await page.keyboard.press('Escape')
  await expect(line(page)).toHaveCount(0)
})

test('by mouse: opened beside the cues, gone through and written by its buttons', async ({ page }) => {
  await openSpark(page)
  await page.locator('[data-block-id="s1b2"]').click()
  await page.locator('.panel-cues-head').getByRole('button', { name: 'write a cue' }).click()
  await expect(field(page)).toBeFocused()
  const first = await moment(page).textContent()
  await page.getByRole('button', { name: 'later moment' }).click()
  await expect(moment(page)).not.toHaveText(first!)
  await page.getByRole('button', { name: 'earlier moment' }).click()
  await expect(moment(page)).toHaveText(first!)
  const count = await panelCues(page).count()
  await offers(page).first().click()
  await expect(panelCues(page)).toHaveCount(count + 1)
  await page.keyboard.type('Half said')
  await line(page).getByText('keys', { exact: true }).click()
  await expect(line(page).locator('kbd').first()).toBeVisible()
  await expect(field(page)).toHaveValue('Half said')
  await field(page).fill('Quiet hands.')
  await page.getByRole('button', { name: 'add the cue' }).click()
  await expect(panelCues(page)).toHaveCount(count + 2)
  await expect(field(page)).toBeFocused()
  await page.getByRole('button', { name: 'next block' }).click()
  await page.getByRole('button', { name: 'previous block' }).click()
  await expect(line(page)).toBeVisible()
  await line(page).getByRole('button', { name: 'close' }).click()
  await expect(line(page)).toHaveCount(0)
})

test('from the menu at the pointer', async ({ page }) => {
  await openSpark(page)
  await page.locator('[data-block-id="s1b2"]').click({ button: 'right' })
  await page.getByRole('menuitem', { name: /^write a cue/ }).click()
  await expect(field(page)).toBeFocused()
})

test.describe('on a phone', () => {
  test.use({ hasTouch: true, viewport: { width: 390, height: 844 } })
  test('a finger writes, goes on, and takes what is offered', async ({ page }) => {
    await openSpark(page)
    await page.locator('[data-block-id="s1b2"]').tap()
    await page.locator('[data-action="stage.writeCue"]').tap()
    await field(page).fill('Quiet hands.')
    await page.getByRole('button', { name: 'add the cue' }).tap()
    await expect(field(page)).toHaveValue('')
    await page.getByRole('button', { name: 'next block' }).tap()
    await expect(page.locator('[data-stage-stop="block"][data-id="s1b3"]')).toHaveAttribute('aria-selected', 'true')
    const offered = await offers(page).first().locator('span').textContent()
    await offers(page).first().tap()
    expect(await lastStep(page)).toContain(offered!)
    for (const each of await line(page).locator('button, [role="option"]').all()) {
      const box = await each.boundingBox()
      if (box) expect(box.height).toBeGreaterThanOrEqual(44)
    }
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390)
  })
})
