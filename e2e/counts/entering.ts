import type { Locator, Page } from '@playwright/test'
import { drag, type Point } from '#e2e/support/drag.ts'
import { expect } from '#e2e/support/test.ts'
import { PATTERNS } from '#plan/patterns/patterns.ts'
import { en } from '#words/en/index.ts'
import type { WantedBlock, WantedClass, WantedSong } from './classes.ts'

/** Nearer to the stage’s border than this a pulled edge scrolls it, in CSS pixels. */
const BORDER = 80

const cards = (page: Page) => page.locator('[data-block-id]')
const panel = (page: Page) => page.getByRole('complementary', { name: 'details of the selection' })
const patternOf = (block: WantedBlock) => PATTERNS.find(({ id }) => id === block.pattern)!
const nameOf = (block: WantedBlock) => en.patterns.name({ pattern: block.pattern })
const tray = (page: Page, block: WantedBlock) => page.getByRole('button', { name: nameOf(block), exact: true })

/** The songs as a playlist is pasted, and the ride that is made of them. */
async function beginWithSongs(page: Page, { songs }: WantedClass): Promise<void> {
  const list = songs.map(({ title, bpm, length }) => `${title}, ${length}, ${bpm}`).join('\n')
  await page.evaluate((text) => navigator.clipboard.writeText(text), list)
  await page.getByLabel('playlist').click()
  await page.keyboard.press('ControlOrMeta+v')
  await page.getByRole('button', { name: `make a ride from ${songs.length} songs` }).click()
  await expect(page.locator('.song-head')).toHaveCount(songs.length)
}

/** Tray, stage, and details, by mouse; words and numbers typed where they stand. */
export async function enterAsNewcomer(page: Page, wanted: WantedClass): Promise<void> {
  await beginWithSongs(page, wanted)
  let count = 0
  for (const [index, song] of wanted.songs.entries()) {
    for (const [place, block] of song.blocks.entries()) {
      if (place === 0) await drag(page, tray(page, block), await openPart(page, index))
      else await tray(page, block).click()
      count += 1
      await expect(cards(page)).toHaveCount(count)
      await shape(page, block)
    }
  }
  await page.locator('.song-head').last().click()
}

/** A place in the open part of a song, after scrolling there where it is out of sight. */
async function openPart(page: Page, song: number): Promise<Point> {
  const id = await page.locator('.song-head').nth(song).getAttribute('data-id')
  const part = page.locator(`[data-open-section="${id}"]`)
  const stage = (await page.locator('.stage-scroller').boundingBox())!
  const seen = async () => (await part.boundingBox())!
  if ((await seen()).x > stage.x + stage.width - BORDER) {
    const { x, y } = await seen()
    await page.mouse.move(stage.x + stage.width / 2, y)
    await page.mouse.wheel(x - stage.x - BORDER, 0)
    await expect.poll(async () => (await seen()).x).toBeLessThan(stage.x + stage.width - BORDER)
  }
  const { x, y, height } = await seen()
  return { x: Math.max(x, stage.x) + BORDER / 4, y: y + height / 2 }
}

/** Gives the block that was just put in what it has otherwise than the tray’s. */
async function shape(page: Page, block: WantedBlock): Promise<void> {
  const { eights: usual, effort } = patternOf(block)
  const card = page.locator('[data-block-id][data-selected]')
  if (block.eights !== undefined && block.eights !== usual) {
    const { x, width } = (await card.boundingBox())!
    const end = x + (width / usual) * block.eights
    const stage = (await page.locator('.stage-scroller').boundingBox())!
    if (end < stage.x + stage.width - BORDER) {
      await drag(page, card.locator('.edge[data-side="end"]'), { by: { x: end - x - width, y: 0 } })
    } else {
      await (await reach(page, panel(page).getByRole('textbox', { name: 'length', exact: true }))).click()
      await page.keyboard.type(`${block.eights}`)
    }
  }
  if (block.effort !== undefined && block.effort !== effort.from) {
    const strip = await reach(page, panel(page).getByRole('slider', { name: 'effort', exact: true }))
    const { x, y, width, height } = (await strip.boundingBox())!
    await page.mouse.click(x + (width * (block.effort + 0.5)) / 11, y + height / 2)
  }
  if (block.to !== undefined) {
    await (await reach(page, panel(page).getByRole('textbox', { name: 'to', exact: true }))).click()
    await page.keyboard.type(block.to)
  }
  if (block.says !== undefined) {
    await (await reach(page, panel(page).getByRole('textbox', { name: 'add a cue' }))).click()
    await page.keyboard.type(block.says)
  }
}

/** A thing in the details, scrolled to by the wheel where it is out of sight: the browser’s own scrolling of a test would not be counted. */
async function reach(page: Page, thing: Locator): Promise<Locator> {
  const side = (await page.locator('.draft-side').boundingBox())!
  const bottom = Math.min(side.y + side.height, page.viewportSize()!.height)
  const top = Math.max(side.y, 70)
  const lies = async () => {
    const { y, height } = (await thing.boundingBox())!
    return y < top ? y - top - height : y + height > bottom ? y + 2 * height - bottom : 0
  }
  const off = await lies()
  if (off !== 0) {
    await page.mouse.move(side.x + side.width / 2, (top + bottom) / 2)
    await page.mouse.wheel(0, off)
    await expect.poll(lies).toBe(0)
  }
  return thing
}

/** A song a line, all its blocks in it. */
export async function enterAsExpert(page: Page, wanted: WantedClass): Promise<void> {
  await beginWithSongs(page, wanted)
  for (const [index, song] of wanted.songs.entries()) {
    await (await inStage(page, page.locator('.song-head').nth(index))).click()
    await page.keyboard.press('l')
    const line = lineOf(song)
    await page.keyboard.type(line)
    await expect(page.getByRole('combobox', { name: 'new block' })).toHaveValue(line)
    await page.keyboard.press('Enter')
    await expect(page.getByRole('combobox', { name: 'new block' })).toHaveValue('')
  }
}

/** A song’s blocks as they are typed: nothing is said that the words for the kind of block already say. */
export const lineOf = ({ blocks }: WantedSong): string => blocks.map(partOf).join(' / ')

function partOf(block: WantedBlock): string {
  const length = block.eights ?? patternOf(block).eights
  const parts = [
    nameOf(block),
    `${length}`,
    block.to !== undefined && `to ${block.to}`,
    block.effort !== undefined && `effort ${block.effort}`,
    // The words that come with the block stay when they are said as they are.
    block.says !== undefined && `“” “${block.says}”`,
  ]
  return parts.filter(Boolean).join(' ')
}

/** A class whose songs have all been planned before: each takes its plan. */
export async function enterFromKept(page: Page, wanted: WantedClass): Promise<void> {
  await beginWithSongs(page, wanted)
  for (const index of wanted.songs.keys()) {
    const before = await cards(page).count()
    await (await inStage(page, page.locator('.song-head').nth(index))).click()
    await (
      await reach(
        page,
        panel(page)
          .getByRole('button', { name: /^use this plan/ })
          .first(),
      )
    ).click()
    await expect(cards(page)).not.toHaveCount(before)
  }
}

/** A song’s head, scrolled to by the wheel where it is out of sight. */
async function inStage(page: Page, head: Locator): Promise<Locator> {
  const stage = (await page.locator('.stage-scroller').boundingBox())!
  const off = async () => {
    const { x } = (await head.boundingBox())!
    return x < stage.x - 1 || x > stage.x + stage.width - BORDER ? x - stage.x : 0
  }
  const far = await off()
  if (far !== 0) {
    await page.mouse.move(stage.x + stage.width / 2, (await head.boundingBox())!.y)
    await page.mouse.wheel(far - BORDER, 0)
    await expect.poll(off).toBe(0)
  }
  return head
}
