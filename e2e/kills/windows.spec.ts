import { expect, test } from '@playwright/test'
import { editTogether, openInTwo } from '#e2e/support/twoWindows.ts'

/** How many edits, half of them in each window. */
const EDITS = Number(process.env.EDITS ?? 200)

for (const how of ['in turn', 'together'] as const) {
  test(`${EDITS} edits of one ride in two windows, ${how}`, async ({ page, context }) => {
    const other = await openInTwo(page, context)
    const { edits, lost } = await editTogether(page, other, { edits: EDITS, how })
    console.log(`two windows, ${how}: ${edits} edits, ${lost} lost`)
    expect(lost).toBe(0)
  })
}
