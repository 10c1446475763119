import type { en } from '#words/en/index.ts'

export const drafting: typeof en.drafting = {}
