import type { Migration } from './migration.ts'

/**
 * Every step there has been, oldest first, one for each version before the current one.
 * Version 1 is the first, so there is none yet. A new version adds `from1.ts` here, its
 * test, and a saved file and link of the version it leaves behind.
 */
export const MIGRATIONS: readonly Migration[] = []
