import type { en } from '#words/en/index.ts'

export const actions: typeof en.actions = {}
