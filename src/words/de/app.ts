import type { en } from '#words/en/index.ts'

export const app: typeof en.app = {}
