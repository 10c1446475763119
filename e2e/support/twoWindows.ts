import { type BrowserContext, expect, type Locator, type Page } from '@playwright/test'
import { openRidewright } from './openRidewright.ts'

const saved = (page: Page) => expect(page.locator('.app-saved')).toHaveText('saved')

/** Types over what stands in a field, and leaves it by Enter unless told otherwise. */
export async function setText(field: Locator, text: string, { leave = true } = {}): Promise<void> {
  await field.focus()
  await field.press('ControlOrMeta+a')
  await field.pressSequentially(text)
  if (leave) await field.press('Enter')
}

/** Opens one ride of one's own in this window and in another, each with the ride's fields on the page. */
export async function openInTwo(page: Page, context: BrowserContext): Promise<Page> {
  await openRidewright(page)
  await page.getByRole('button', { name: /^Twenty-Minute Spark/ }).click()
  await page.locator('.app-title-button').click()
  await setText(page.getByLabel('title', { exact: true }), 'Two Windows')
  await saved(page)
  const other = await context.newPage()
  await openRidewright(other, page.url())
  await expect(other.locator('.app-title-button')).toHaveText('Two Windows')
  await other.locator('.app-title-button').click()
  return other
}

/** What came of edits in two windows. */
export interface TwoWindowTotals {
  edits: number
  /** Edits that do not stand in both windows in the end. */
  lost: number
}

/** The field each of the two windows works on. */
export const fieldOf = { first: (page: Page) => page.getByLabel('goal'), second: (page: Page) => page.getByLabel('notes', { exact: true }) }

/**
 * Edits one ride in two windows: each edit adds its number to the words of a field, the aim in
 * one window and the notes in the other, in turn or both at the same moment. A number that a
 * window does not show in the end is a lost edit.
 */
export async function editTogether(
  one: Page,
  two: Page,
  { edits, how }: { edits: number; how: 'in turn' | 'together' },
): Promise<TwoWindowTotals> {
  const [aim, notes] = [fieldOf.first(one), fieldOf.second(two)]
  const each = edits / 2
  await aim.fill('')
  await aim.blur()
  for (let count = 1; count <= each; count++) {
    if (how === 'together') await Promise.all([addNumber(aim, count), addNumber(notes, count)])
    else {
      await addNumber(aim, count)
      await addNumber(notes, count)
    }
  }
  const all = Array.from({ length: each }, (_, index) => index + 1).join(' ')
  const wanted = JSON.stringify([all, all, all, all])
  const shown = async () => Promise.all([one, two].flatMap((page) => [fieldOf.first(page).inputValue(), fieldOf.second(page).inputValue()]))
  await expect
    .poll(async () => JSON.stringify(await shown()), { timeout: 10_000 })
    .toBe(wanted)
    .catch(() => undefined)
  await Promise.all([saved(one), saved(two)])
  const missing = (await shown()).map((text) => {
    const there = new Set(text.split(' '))
    return all.split(' ').filter((number) => !there.has(number)).length
  })
  const [firstHere, secondHere, firstThere, secondThere] = missing as [number, number, number, number]
  return { edits, lost: Math.max(firstHere, firstThere) + Math.max(secondHere, secondThere) }
}

/** The field runs over several lines; leaving it takes its words. */
async function addNumber(field: Locator, count: number): Promise<void> {
  await field.focus()
  await field.press('ControlOrMeta+End')
  await field.pressSequentially(`${count === 1 ? '' : ' '}${count}`)
  await field.blur()
}
