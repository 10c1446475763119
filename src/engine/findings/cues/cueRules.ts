import type { Rule } from '#engine/findings/finding.ts'
import { breathlessWords } from './breathlessWords.ts'
import { cueCollisions } from './cueCollisions.ts'
import { cueLate } from './cueLate.ts'
import { cueNumbers } from './cueNumbers.ts'
import { cuePlace } from './cuePlace.ts'
import { cueRoom } from './cueRoom.ts'
import { hardBoutWords } from './hardBoutWords.ts'
import { moveWithoutForm } from './moveWithoutForm.ts'
import { quietKept } from './quietKept.ts'
import { resistanceFirst } from './resistanceFirst.ts'
import { tooMuchTalk } from './tooMuchTalk.ts'
import { unannounced } from './unannounced.ts'

/** All that is noticed about what is said. */
export const CUE_RULES: readonly Rule[] = [
  cueNumbers,
  cueLate,
  cuePlace,
  cueRoom,
  cueCollisions,
  unannounced,
  hardBoutWords,
  moveWithoutForm,
  resistanceFirst,
  quietKept,
  tooMuchTalk,
  breathlessWords,
]
