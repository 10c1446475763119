import type { en } from '#words/en/index.ts'

export const backup: typeof en.backup = {}
