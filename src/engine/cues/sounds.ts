import { syllablesOf } from './syllables.ts'

/** What of a word takes time to say. */
interface Sounds {
  syllables: number
  consonants: number
}

const known = new Map<string, Sounds>()
/** Far more words than a class has; then they are read anew. */
const MOST_KNOWN = 4000

/** Syllables and consonants of a word in lower case; each word is read once. */
export function soundsOf(word: string): Sounds {
  let sounds = known.get(word)
  if (sounds === undefined) {
    if (known.size >= MOST_KNOWN) known.clear()
    sounds = LATIN.test(word) ? { syllables: syllablesOf(word), consonants: consonantsIn(word) } : otherwise(word)
    known.set(word, sounds)
  }
  return sounds
}

const LATIN = /[a-z]/

/** In another writing every other letter counts as a vowel (an estimate). */
function otherwise(word: string): Sounds {
  const letters = [...word].length
  return { syllables: Math.ceil(letters / 2), consonants: Math.floor(letters / 2) }
}

/** Consonant letters, of which double ones and those that are written for one sound count once: "ck", "sh", "ng". */
const consonantsIn = (word: string): number => word.replace(/[^\p{L}]|[aeiouy]/gu, '').replace(/(.)\1|ck|[cst]h|[gpw]h|ng/g, 'x').length
