import type { en } from '#words/en/index.ts'

export const sheet: typeof en.sheet = {}
