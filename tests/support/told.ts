import { en } from '#words/en/index.ts'
import { type Text, tellIn } from '#words/said.ts'

/** A text as an American instructor reads it. */
export const told = (text: Text): string => tellIn(en, text)
