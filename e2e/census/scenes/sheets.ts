import { at, press, type Scene, spark, unfolded, unlessSeen } from './steps.ts'

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
    show: unlessSeen('dialog[open]', async (page) => {
      await page.locator('label:has(input[value="phone"])').click()
      await press('show on this screen')(page)
      // From the second screen there is a way back and a way on.
      await page.keyboard.press('ArrowRight')
    }),
  },
]
