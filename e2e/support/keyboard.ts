import type { Locator, Page } from '@playwright/test'

/** Presses a key or chord (“Alt+ArrowRight”) a number of times, one after the other as a person would. */
export async function press(page: Page, keys: string, times = 1): Promise<void> {
  for (let count = 0; count < times; count++) await page.keyboard.press(keys)
}

/** Types into whatever has the focus, replacing what it holds. */
export async function retype(page: Page, text: string): Promise<void> {
  await page.keyboard.press('ControlOrMeta+A')
  await page.keyboard.type(text)
}

/**
 * Moves the focus to a thing with Tab alone, as someone without a pointer must.
 *
 * @throws when `limit` presses do not reach it: to such a person it does not exist
 */
export async function tabTo(page: Page, thing: Locator, limit = 200): Promise<void> {
  for (let presses = 0; presses <= limit; presses++) {
    if (await thing.evaluate((element) => element === document.activeElement)) return
    await page.keyboard.press('Tab')
  }
  throw new Error(`${limit} presses of Tab did not reach ${thing}.`)
}
