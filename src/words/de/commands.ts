import type { en } from '#words/en/index.ts'

export const commands: typeof en.commands = {}
