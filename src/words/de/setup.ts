import type { en } from '#words/en/index.ts'

export const setup: typeof en.setup = {}
