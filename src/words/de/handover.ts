import type { en } from '#words/en/index.ts'

export const handover: typeof en.handover = {}
