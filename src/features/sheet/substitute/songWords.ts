/** Words that mean something only with the song the class was planned to, or to someone who counts it. */
const SONG_WORDS =
  /\b(?:intro|outro|verses?|choruses|chorus|bridge|pre-?chorus|refrain|hook|drop|break(?:down)?|build(?:-?up)?|solo|lyrics?|songs?|track|vocals?|singer|beats?|on the one|the one|counts?|count(?:ed|ing)?|eights?|sixes|twos|threes|fours|sixteens|thirty-twos|phrases?|bars?|half[- ]time|double[- ]time)\b|\bof each\b|\bon (?:2|4|8|16|32)s?\b/i

/**
 * The sentences of a text that make sense to any music, in the order they stand; empty where none
 * does. A clause between commas goes alone where the rest of its sentence can stay.
 */
export function withoutSongWords(text: string): string {
  const sentences = text.match(/[^.!?]+[.!?]*\s*/g) ?? []
  return sentences.flatMap(keptOf).join(' ').trim()
}

function keptOf(sentence: string): string[] {
  const [, said = '', end = ''] = /^(.*?)([.!?]*)\s*$/s.exec(sentence)!
  const clauses = said.split(/[,;]\s*/).filter((clause) => clause.trim() !== '')
  const kept = clauses.filter((clause) => !SONG_WORDS.test(clause))
  return kept.length === 0 ? [] : [`${capitalised(kept.join(', ').trim())}${end}`]
}

const capitalised = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)
