import type { en } from '#words/en/index.ts'

export const documents: typeof en.documents = {}
