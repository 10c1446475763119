import AxeBuilder from '@axe-core/playwright'
import type { Page } from '@playwright/test'

/**
 * What the accessibility checker complains of, each as its rule and the elements it means.
 *
 * @param without selectors of what is left out
 */
export async function barriers(page: Page, without: readonly string[] = []): Promise<string[]> {
  // The page has no frames, so it is checked in one go, and only what is complained of is written out: a third of the time.
  const checker = new AxeBuilder({ page }).setLegacyMode().options({ resultTypes: ['violations'] })
  for (const selector of without) checker.exclude(selector)
  const { violations } = await checker.analyze()
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' | ')}`)
}
