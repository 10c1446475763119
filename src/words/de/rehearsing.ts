import type { en } from '#words/en/index.ts'

export const rehearsing: typeof en.rehearsing = {}
