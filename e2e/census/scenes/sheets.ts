import { at, type Scene, spark, unfolded } from './steps.ts'

const SHEETS = ['compact', 'large', 'cards', 'substitute', 'plain', 'phone', 'checklist'] as const

export const SHEET: readonly Scene[] = [
  ...SHEETS.map(
    (sheet): Scene => ({
      name: `the sheets, ${sheet}`,
      prepare: at('sheet', spark),
      show: async (page) => {
        await page.locator(`label:has(input[value="${sheet}"])`).click()
        await unfolded(page, '.sheet-place')
      },
    }),
  ),
  {
    name: 'the phone scan',
    prepare: at('sheet', spark),
    show: async (page) => {
      await page.locator('label:has(input[value="phone"])').click()
      const open = page
        .locator('.sheet-place button')
        .filter({ hasText: /screen|tap|open/i })
        .first()
      if (await open.isVisible()) await open.click()
    },
  },
]
