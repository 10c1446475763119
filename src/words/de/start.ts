import type { en } from '#words/en/index.ts'

export const start: typeof en.start = {}
