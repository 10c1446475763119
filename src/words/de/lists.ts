import type { en } from '#words/en/index.ts'

export const lists: typeof en.lists = {}
