import type { en } from '#words/en/index.ts'

export const patterns: typeof en.patterns = {}
