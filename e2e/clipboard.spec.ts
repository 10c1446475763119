import type { Page } from '@playwright/test'
import { demoRide } from '#tests/support/demoRides.ts'
import { blocks, choose, link, order, sections, stop } from './actions/row.ts'
import { openRidewright } from './support/openRidewright.ts'
import { expect, test } from './support/test.ts'

const BLOCKS = 42
const spark = demoRide('spark')

async function openSpark(page: Page): Promise<void> {
  await openRidewright(page)
  await page.getByRole('button', { name: /^Twenty-Minute Spark/ }).click()
  await expect(blocks(page)).toHaveCount(BLOCKS)
}

const status = (page: Page) => page.locator('[aria-live="polite"]').first()
const named = (page: Page, id: string) => stop(page, id).getAttribute('aria-label')
/** What a block is, without where it stands and how its total is called from there. */
const whatItIs = (name: string | null) => name?.replace(/ at [0-9:]+,/, '').replace(/(effort [^,]+),.*/, '$1')

test('a block is copied, cut, and pasted by the browser’s own keys, each one step', async ({ page }) => {
  await openSpark(page)
  await choose('s1b2')(page)
  await page.keyboard.press('Control+c')
  await choose('s2b2')(page)
  await page.keyboard.press('Control+v')
  await expect(blocks(page)).toHaveCount(BLOCKS + 1)
  const ids = await order(page)
  const made = ids[ids.indexOf('s2b2') + 1]!
  await expect(stop(page, made)).toBeFocused()
  await expect(stop(page, made)).toHaveAttribute('aria-selected', 'true')
  expect(whatItIs(await named(page, made))).toBe(whatItIs(await named(page, 's1b2')))
  await page.keyboard.press('Control+x')
  await expect(blocks(page)).toHaveCount(BLOCKS)
  await page.keyboard.press('Control+z')
  await expect(blocks(page)).toHaveCount(BLOCKS + 1)
  await page.keyboard.press('Control+z')
  await expect(blocks(page)).toHaveCount(BLOCKS)
  expect(await order(page)).not.toContain(made)
})

test('a whole song goes to another ride in another window, with its blocks', async ({ page, context }) => {
  await openSpark(page)
  await choose('s2')(page)
  await page.keyboard.press('Control+c')
  const other = await context.newPage()
  await openRidewright(other)
  await link(other, 'my rides').click()
  await other.getByRole('button', { name: /^Ridge and Return/ }).click()
  await expect(sections(other).first()).toBeVisible()
  const [songs, all] = [await sections(other).count(), await blocks(other).count()]
  await sections(other)
    .first()
    .click({ position: { x: 12, y: 10 } })
  await other.keyboard.press('Control+v')
  await expect(sections(other)).toHaveCount(songs + 1)
  const copied = spark.sections[1]!
  await expect(sections(other).nth(1)).toContainText(copied.song!.title)
  await expect(sections(other).nth(1)).toBeFocused()
  await expect(blocks(other)).toHaveCount(all + copied.blocks.length)
  await other.keyboard.press('Control+z')
  await expect(sections(other)).toHaveCount(songs)
})

test('what is copied is lines of text for other programs, and what they copy is refused with a sentence', async ({ page, context }) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write'])
  await openSpark(page)
  await choose('s1b2')(page)
  await page.keyboard.press('Control+c')
  expect(await page.evaluate(() => navigator.clipboard.readText())).toMatch(/^seated flat 16 .*effort 3/)
  for (const html of ['<p>A shopping list</p>', '<div data-ridewright="AAAA">x</div>', '<div data-ridewright="">']) {
    await page.evaluate(async (text) => {
      const part = (type: string) => ({ [type]: new Blob([text], { type }) })
      await navigator.clipboard.write([new ClipboardItem({ ...part('text/html'), ...part('text/plain') })])
    }, html)
    await page.keyboard.press('Control+v')
    await expect(
      page.getByText('The clipboard holds nothing to paste into a ride. Lines like “climb 8 effort 7” can be pasted.'),
    ).toBeVisible()
    await page.locator('.app-notices').getByRole('button').first().click()
    await expect(blocks(page)).toHaveCount(BLOCKS)
  }
})

test('text fields keep the browser’s own copy and paste', async ({ page }) => {
  await openSpark(page)
  await choose('s1b2')(page)
  await page.keyboard.press('Control+c')
  const field = page.locator('.panel-cue textarea').first()
  await field.fill('Light hands, heavy legs.')
  await field.selectText()
  await page.keyboard.press('Control+c')
  await page.keyboard.press('End')
  await page.keyboard.press('Control+v')
  await expect(field).toHaveValue('Light hands, heavy legs.Light hands, heavy legs.')
  await expect(blocks(page)).toHaveCount(BLOCKS)
})

test('a cue is copied by its button and pasted onto another block', async ({ page }) => {
  await openSpark(page)
  await choose('s1b2')(page)
  const words = await page.locator('.panel-cue textarea').first().inputValue()
  await page.getByRole('button', { name: 'copy cue 1' }).click()
  await choose('s3b2')(page)
  const before = await page.locator('.panel-cue').count()
  await page.keyboard.press('Control+v')
  await expect(page.locator('.panel-cue')).toHaveCount(before + 1)
  const said = await page.locator('.panel-cue textarea').evaluateAll((fields) => fields.map((each) => (each as HTMLTextAreaElement).value))
  expect(said).toContain(words)
})

test('pasting only the blocks, the cues, or the resistance is in the menu and under its key', async ({ page }) => {
  await openSpark(page)
  const only = async (what: RegExp) => {
    await page.keyboard.press('Control+Shift+v')
    await page.getByRole('menu').getByRole('menuitem', { name: what }).click()
    await expect(page.getByRole('menu')).toHaveCount(0)
  }
  await choose('s2')(page)
  await page.keyboard.press('Control+c')
  await choose('s1')(page)
  await only(/only the blocks/)
  await expect(page.locator('.song-head').first()).toContainText(spark.sections[0]!.song!.title)
  const two = spark.sections[1]!.blocks.length
  await expect(blocks(page)).toHaveCount(BLOCKS - spark.sections[0]!.blocks.length + two)
  await page.keyboard.press('Control+z')
  await expect(blocks(page)).toHaveCount(BLOCKS)

  await choose('s2b2')(page)
  await page.keyboard.press('Control+c')
  const cues = await page.locator('.panel-cue textarea').evaluateAll((fields) => fields.map((each) => (each as HTMLTextAreaElement).value))
  const total = await page.locator('.panel-total b').textContent()
  await choose('s4b2')(page)
  await only(/only the cues/)
  await expect
    .poll(() => page.locator('.panel-cue textarea').evaluateAll((fields) => fields.map((each) => (each as HTMLTextAreaElement).value)))
    .toEqual(cues)
  await only(/only the resistance/)
  await expect(page.locator('.panel-total b')).toHaveText(total!)
})

test('a ride that is read-only can be copied from, and says why it takes nothing', async ({ page }) => {
  await openSpark(page)
  await page.getByRole('link', { name: 'share', exact: true }).click()
  const address = await page.getByRole('textbox', { name: 'link', exact: true }).inputValue()
  await page.goto('about:blank')
  await page.goto(address)
  await expect(blocks(page)).toHaveCount(BLOCKS)
  await choose('s1b2')(page)
  await page.keyboard.press('Control+v')
  await expect(status(page)).toHaveText('This ride is read-only. Keep a copy to change it.')
  await page.keyboard.press('Control+x')
  await page.keyboard.press('Control+c')
  await expect(status(page)).toHaveText(/^Copied /)
  await expect(blocks(page)).toHaveCount(BLOCKS)
  await page.getByRole('button', { name: 'keep a copy' }).first().click()
  await choose('s1b2')(page)
  await page.keyboard.press('Control+v')
  await expect(blocks(page)).toHaveCount(BLOCKS + 1)
})

test('with the focus in a cue, beside its words, the cue is what is cut and copied', async ({ page }) => {
  await openSpark(page)
  await choose('s1b2')(page)
  const cues = page.locator('.panel-cue')
  const before = await cues.count()
  const words = await cues.first().locator('textarea').inputValue()
  await page.getByRole('button', { name: 'copy cue 1' }).focus()
  await page.keyboard.press('Control+x')
  await expect(cues).toHaveCount(before - 1)
  await expect(blocks(page)).toHaveCount(BLOCKS)
  await choose('s1b3')(page)
  await page.keyboard.press('Control+v')
  await expect(page.locator('.panel-cue textarea').filter({ hasText: words })).toHaveCount(1)
})

test('a copy is told where it can be seen, until something is changed', async ({ page }) => {
  await openSpark(page)
  await choose('s1b2')(page)
  await page.keyboard.press('Control+c')
  await expect(page.locator('.tray-note')).toHaveText('Copied flat')
  await page.keyboard.press('+')
  await expect(page.locator('.tray-note')).toHaveCount(0)
})

test('Ctrl+A selects all of the song, and then all of the ride', async ({ page }) => {
  await openSpark(page)
  await choose('s1b2')(page)
  const selected = page.locator('[data-stage-stop="block"][aria-selected="true"]')
  await page.keyboard.press('Control+a')
  await expect(selected).toHaveCount(spark.sections[0]!.blocks.length)
  await page.keyboard.press('Control+a')
  await expect(selected).toHaveCount(BLOCKS)
  await page.keyboard.press('Control+d')
  await expect(blocks(page)).toHaveCount(2 * BLOCKS)
})
