import type { Locator, Page } from '@playwright/test'
import { LEVEL_HEIGHT } from '#features/drafting/stage/chartFrame.ts'
import type { Point } from './drag.ts'
import { openRidewright } from './openRidewright.ts'
import { expect } from './test.ts'

export const block = (page: Page, id: string) => page.locator(`[data-block-id="${id}"]`)
export const scroller = (page: Page) => page.locator('.stage-scroller')
export const selected = (page: Page) =>
  page.locator('[role="option"][aria-selected="true"]').evaluateAll((all) => all.map((each) => (each as HTMLElement).dataset.id))
export const undo = (page: Page) => page.locator('[data-action="ride.undo"]')
export const scrolled = (page: Page) => scroller(page).evaluate((box) => box.scrollLeft)
export const handle = (page: Page, part: 'from' | 'level' | 'to') => page.locator(`.curve-grip[data-part="${part}"]`)
export const value = (page: Page, part: 'from' | 'level' | 'to') => handle(page, part).getAttribute('aria-valuenow')

export async function openSpark(page: Page): Promise<void> {
  await openRidewright(page)
  await page.getByRole('button', { name: /^Twenty-Minute Spark/ }).click()
  await expect(page.locator('[data-curve="intent"]')).toBeAttached()
}

export async function select(page: Page, id: string): Promise<void> {
  await block(page, id).locator('.block-body').click()
  await expect(handle(page, 'level')).toBeVisible()
}

export const middleOf = async (thing: Locator): Promise<Point> => {
  const { x, y, width, height } = (await thing.boundingBox())!
  return { x: x + width / 2, y: y + height / 2 }
}

/** A point of the curve over a block, at a share of its width. */
export async function onCurve(page: Page, id: string, share: number, level: number): Promise<Point> {
  const card = (await block(page, id).boundingBox())!
  const chart = (await page.locator('.chart-place').boundingBox())!
  return { x: card.x + card.width * share, y: chart.y + 10 + (10 - level) * LEVEL_HEIGHT }
}

/** The second of the class at a place on the screen. */
export const secondAt = (page: Page, x: number) =>
  page.evaluate((at) => {
    const box = document.querySelector('.stage-scroller')!
    const stretch = [...document.querySelectorAll<HTMLElement>('[data-block-id]')]
    const last = stretch.at(-1)!
    const perSecond = (last.offsetLeft + last.offsetWidth) / Number(document.querySelector<HTMLElement>('[data-total]')!.dataset.total)
    return { second: (box.scrollLeft + at - box.getBoundingClientRect().left) / perSecond, perSecond }
  }, x)
