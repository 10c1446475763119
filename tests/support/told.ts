import { en } from '#words/en/index.ts'
import { type Text, tellIn } from '#words/said.ts'

/** A text as an American instructor reads it. */
export function told(text: Text): string
/** Nothing stays nothing, for what may not have been found. */
export function told(text: Text | undefined): string | undefined
export function told(text: Text | undefined): string | undefined {
  return text === undefined ? undefined : tellIn(en, text)
}
