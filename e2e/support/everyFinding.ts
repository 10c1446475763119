import { expect, type Locator, type Page } from '@playwright/test'

/** Unfolds the list of findings: all kinds, and all places of each. The rows of single places are returned. */
export async function everyFinding(page: Page): Promise<Locator> {
  await expect(page.locator('.findings li').first()).toBeVisible()
  const more = page.getByRole('button', { name: /^show all \d/ })
  if (await more.isVisible()) await more.click()
  const folded = page.locator('.finding-count[aria-expanded="false"]')
  while ((await folded.count()) > 0) await folded.first().click()
  return page.locator('.findings li:not([data-kind])')
}
