import { DRAFT } from './drafting.ts'
import { LOG } from './log.ts'
import { PANELS } from './panels.ts'
import { SETUP } from './setup.ts'
import { SHARING } from './sharing.ts'
import { SHEET } from './sheets.ts'
import { SHELL } from './shell.ts'
import { SONGS } from './songs.ts'
import { START } from './start.ts'
import type { Scene } from './steps.ts'
import { TEACHING } from './teaching.ts'

/** Every place and state in which something can be operated, in parts for workers beside each other. */
export const SCENES: Readonly<Record<string, readonly Scene[]>> = {
  'the draft': DRAFT,
  'what only some of the draft has': PANELS,
  'the sheets and sharing': [...SHEET, ...SHARING],
  'setting up, songs, and the log': [...SETUP, ...SONGS, ...LOG],
  'the start, the class, and the shell': [...START, ...TEACHING, ...SHELL],
}
