import type { Language } from '#words/language.ts'

/** Words that mean something only with the song the class was planned to, or to someone who counts it, in the language a ride is spoken in. */
const SONG_WORDS: Readonly<Record<Language, RegExp>> = {
  en: /\b(?:intro|outro|verses?|choruses|chorus|bridge|pre-?chorus|refrain|hook|drop|break(?:down)?|build(?:-?up)?|solo|lyrics?|songs?|track|vocals?|singer|beats?|on the one|the one|counts?|count(?:ed|ing)?|eights?|sixes|twos|threes|fours|sixteens|thirty-twos|phrases?|bars?|half[- ]time|double[- ]time)\b|\bof each\b|\bon (?:2|4|8|16|32)s?\b/i,
  de: /(?<!\p{L})(?:intro|outro|strophen?|refrains?|bridge|hook|drop|breaks?|breakdown|aufbau|solo|lyrics?|liedtext|songs?|lied(?:er)?|tracks?|gesang|sänger(?:in)?|beats?|(?:auf )?(?:der|die) eins|zählzeiten|zählzeit|zähl(?:t|en|st)?|gezählt|achtern?|sechsern?|zweiern?|dreiern?|vierern?|sechzehnern?|phrasen?|takte?|halbe[sm] tempo|doppelte[sm] tempo|auf (?:2|4|8|16|32))(?!\p{L})/iu,
}

/**
 * The sentences of a text that make sense to any music, in the order they stand; empty where none
 * does. A clause between commas goes alone where the rest of its sentence can stay.
 *
 * @param language the text is in
 */
export function withoutSongWords(text: string, language: Language = 'en'): string {
  const sentences = text.match(/[^.!?]+[.!?]*\s*/g) ?? []
  return sentences
    .flatMap((sentence) => keptOf(sentence, SONG_WORDS[language]))
    .join(' ')
    .trim()
}

function keptOf(sentence: string, songWords: RegExp): string[] {
  const [, said = '', end = ''] = /^(.*?)([.!?]*)\s*$/s.exec(sentence)!
  const clauses = said.split(/[,;]\s*/).filter((clause) => clause.trim() !== '')
  const kept = clauses.filter((clause) => !songWords.test(clause))
  return kept.length === 0 ? [] : [`${capitalised(kept.join(', ').trim())}${end}`]
}

const capitalised = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)
