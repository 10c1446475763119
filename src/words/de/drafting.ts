import type { en } from '#words/en/index.ts'
import { duration } from '#words/forms.ts'

export const drafting: typeof en.drafting = {
  addedPast: ({ change, over }) => `${change}, ${duration(over)} über das Songende hinaus`,
  runsPast: ({ name, over }) => `„${name}“ geht ${duration(over)} über das Songende hinaus.`,
}
