import type { en } from '#words/en/index.ts'

export const calibrating: typeof en.calibrating = {}
