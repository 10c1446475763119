// What is drawn is held against what the program’s own functions say, in the language of the page.
import '#tests/support/inEnglish.ts'
import { type BrowserContext, test as base, expect, type Page } from '@playwright/test'

export { expect }

interface Fixtures {
  /** A page of another person on another machine: nothing is shared with `page`, and it is watched as closely. */
  secondProfile: Page
}

/** Playwright's `test`, which also fails when a page of the test reports a console warning or error, or throws. */
export const test = base.extend<Fixtures>({
  context: async ({ context }, use) => {
    const complaints = complaintsOf(context)
    await use(context)
    expect(complaints, 'warnings and errors in the console').toEqual([])
  },
  secondProfile: async ({ browser }, use) => {
    const context = await browser.newContext()
    const complaints = complaintsOf(context)
    await use(await context.newPage())
    await context.close()
    expect(complaints, 'warnings and errors in the second profile’s console').toEqual([])
  },
})

/** Fills as the context's pages complain. */
export function complaintsOf(context: BrowserContext, complaints: string[] = []): string[] {
  context.on('console', (message) => {
    if (message.type() === 'warning' || message.type() === 'error') complaints.push(`${message.type()}: ${message.text()}`)
  })
  context.on('weberror', (event) => complaints.push(`thrown: ${event.error().message}`))
  return complaints
}
