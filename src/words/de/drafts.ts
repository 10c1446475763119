import type { en } from '#words/en/index.ts'

export const drafts: typeof en.drafts = {}
