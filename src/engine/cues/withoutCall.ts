import { english } from '#engine/speech/english/english.ts'
import type { Speech } from '#engine/speech/speech.ts'

/**
 * Cue words without the clauses that only say the derived call, which stands written small right
 * before them: "Half turn on. Heavy, but smooth." after "half a turn on" → "Heavy, but smooth."
 * A clause that says anything more is kept whole. Empty where the call was all there was to say.
 */
export function withoutCall(words: string, call: string, { names: { fillers } }: Speech = english): string {
  const wanted = bare(call, fillers)
  if (wanted === '') return words
  const sentences = words.match(/[^.!?;]+[.!?;]*\s*/g) ?? []
  return sentences
    .map((sentence) => withoutClause(sentence, wanted, fillers))
    .join('')
    .trim()
}

function withoutClause(sentence: string, wanted: string, fillers: ReadonlySet<string>): string {
  const [, said = '', end = ''] = /^(.*?)([.!?;]*\s*)$/s.exec(sentence)!
  const clauses = said.split(/,\s*/)
  const kept = clauses.filter((clause) => bare(clause, fillers) !== wanted)
  if (kept.length === clauses.length) return sentence
  return kept.length === 0 ? '' : capitalised(kept.join(', ')) + end
}

const bare = (text: string, fillers: ReadonlySet<string>): string =>
  (text.toLowerCase().match(/[\p{L}\p{N}½¼¾]+/gu) ?? []).filter((word) => !fillers.has(word)).join(' ')

const capitalised = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)
