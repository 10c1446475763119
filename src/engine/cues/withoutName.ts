import { english } from '#engine/speech/english/english.ts'
import type { Speech } from '#engine/speech/speech.ts'

/**
 * Cue words without an opening that only says what the block is called, where its name stands right before them:
 * "Seated hill. Heavy, but smooth." after "seated hill" → "Heavy, but smooth."; "Jumps next. Up slow." after "jumps on
 * 8" → "Up slow." An opening that says anything more is kept whole. Empty where the name was all there was to say.
 */
export function withoutName(words: string, name: string, { names: { announcing, goesOn } }: Speech = english): string {
  const [, opening = '', rest = ''] = /^\s*([^.!?;:,–—]*)[.!?;:,–—]*\s*(.*)$/s.exec(words)!
  const said = wordsOf(opening).filter((word) => !announcing.has(word))
  const named = wordsOf(name)
  const saysName = said.length > 0 && said.every((word, i) => word === named[i])
  if (!saysName || goesOn.test(rest)) return words
  return rest.charAt(0).toUpperCase() + rest.slice(1)
}

const wordsOf = (text: string): string[] => text.toLowerCase().match(/[\p{L}\p{N}½¼¾]+/gu) ?? []
