import type { en } from '#words/en/index.ts'

export const panels: typeof en.panels = {}
