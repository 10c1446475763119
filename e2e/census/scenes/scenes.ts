import { DRAFT } from './drafting.ts'
import { LOG, SETUP, SHARING, SHEET, SHELL, SONGS, TEACHING } from './places.ts'
import { START } from './start.ts'
import type { Scene } from './steps.ts'

/** Every place and state in which something can be operated. */
export const SCENES: readonly Scene[] = [...START, ...DRAFT, ...SHEET, ...SHARING, ...SETUP, ...SONGS, ...LOG, ...TEACHING, ...SHELL]
