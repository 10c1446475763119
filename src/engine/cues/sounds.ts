import { bySpeech } from '#engine/speech/bySpeech.ts'
import type { Speech } from '#engine/speech/speech.ts'

/** What of a word takes time to say. */
interface Sounds {
  syllables: number
  consonants: number
}

const known = bySpeech(() => new Map<string, Sounds>())
/** Far more words than a class has; then they are read anew. */
const MOST_KNOWN = 4000

/** Syllables and consonants of a word in lower case; each word is read once. */
export function soundsOf(word: string, speech: Speech): Sounds {
  const words = known(speech)
  let sounds = words.get(word)
  if (sounds === undefined) {
    if (words.size >= MOST_KNOWN) words.clear()
    const { syllables, consonants } = speech.sounds
    sounds = LATIN.test(word) ? { syllables: syllables(word), consonants: consonants(word) } : otherwise(word)
    words.set(word, sounds)
  }
  return sounds
}

const LATIN = /[a-zß-ÿ]/

/** In another writing every other letter counts as a vowel (an estimate). */
function otherwise(word: string): Sounds {
  const letters = [...word].length
  return { syllables: Math.ceil(letters / 2), consonants: Math.floor(letters / 2) }
}
