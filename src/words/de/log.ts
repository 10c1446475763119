import type { en } from '#words/en/index.ts'

export const log: typeof en.log = {}
