import type { en } from '#words/en/index.ts'

export const rules: typeof en.rules = {}
