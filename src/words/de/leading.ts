import type { en } from '#words/en/index.ts'

export const leading: typeof en.leading = {}
