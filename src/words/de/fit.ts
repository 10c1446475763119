import type { en } from '#words/en/index.ts'

export const fit: typeof en.fit = {}
