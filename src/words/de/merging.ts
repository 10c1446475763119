import type { en } from '#words/en/index.ts'

export const merging: typeof en.merging = {}
