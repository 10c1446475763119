import type { en } from '#words/en/index.ts'

export const songs: typeof en.songs = {}
