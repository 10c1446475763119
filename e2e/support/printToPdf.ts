import type { Page } from '@playwright/test'

/** Prints the page as the browser's own print dialog does with its default settings: sizes from the style sheet, no backgrounds. */
export async function printToPdf(page: Page): Promise<Uint8Array> {
  await page.evaluate(() => document.fonts.ready)
  return new Uint8Array(await page.pdf({ preferCSSPageSize: true, printBackground: false }))
}
