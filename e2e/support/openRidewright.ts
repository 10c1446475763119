import { expect, type Page } from '@playwright/test'

/** Opens the page (`address`: a fragment such as a ride link, or a whole address) and waits until it is drawn in its own font. */
export async function openRidewright(page: Page, address = './'): Promise<void> {
  await page.goto(address)
  await ready(page)
}

/** Waits until the page is drawn in its own font, after an opening or a reload. */
export async function ready(page: Page): Promise<void> {
  await expect(page.locator('#root > *').first()).toBeAttached()
  await page.evaluate(() => document.fonts.ready)
}
