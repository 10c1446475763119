import type { en } from '#words/en/index.ts'

export const plan: typeof en.plan = {}
