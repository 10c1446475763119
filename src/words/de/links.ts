import type { en } from '#words/en/index.ts'

export const links: typeof en.links = {}
