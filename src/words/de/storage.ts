import type { en } from '#words/en/index.ts'

export const storage: typeof en.storage = {}
