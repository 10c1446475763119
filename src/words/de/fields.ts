import type { en } from '#words/en/index.ts'

export const fields: typeof en.fields = {}
