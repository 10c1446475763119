import { expect, type Page } from '@playwright/test'

/** The link that the hand-over place shows for the ride on the screen, once it is there. */
export async function shownLink(page: Page): Promise<string> {
  const link = page.getByRole('textbox', { name: 'link', exact: true })
  await expect(link).toHaveValue(/#r\d+\./)
  return link.inputValue()
}
