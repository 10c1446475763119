/** Words that announce a block and say nothing of it: "Push next." */
const ANNOUNCING = new Set(['next', 'now'])

/**
 * Cue words without an opening that only says what the block is called, where its name stands right before them:
 * "Seated hill. Heavy, but smooth." after "seated hill" → "Heavy, but smooth."; "Jumps next. Up slow." after "jumps on
 * 8" → "Up slow." An opening that says anything more is kept whole. Empty where the name was all there was to say.
 */
export function withoutName(words: string, name: string): string {
  const [, opening = '', rest = ''] = /^\s*([^.!?;:,–—]*)[.!?;:,–—]*\s*(.*)$/s.exec(words)!
  const said = wordsOf(opening).filter((word) => !ANNOUNCING.has(word))
  const named = wordsOf(name)
  const saysName = said.length > 0 && said.every((word, i) => word === named[i])
  if (!saysName || /^(?:and|but|or|then)\b/i.test(rest)) return words
  return rest.charAt(0).toUpperCase() + rest.slice(1)
}

const wordsOf = (text: string): string[] => text.toLowerCase().match(/[\p{L}\p{N}½¼¾]+/gu) ?? []
