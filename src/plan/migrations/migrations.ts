import { from1 } from './from1.ts'
import type { Migration } from './migration.ts'

/**
 * Every step there has been, oldest first, one for each version before the current one.
 * A new version adds its `fromN.ts` here, its
 * test, and a saved file and link of the version it leaves behind.
 */
export const MIGRATIONS: readonly Migration[] = [from1]
