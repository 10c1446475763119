import type { en } from '#words/en/index.ts'

export const exports: typeof en.exports = {}
