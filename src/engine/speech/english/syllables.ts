/**
 * Syllables of an English word as it is usually spoken: groups of vowel letters, less the e that
 * is not heard ("ride", "breathes", "pedaled"; "changes" keeps its own), and one more where two
 * vowels that stand together are both said ("radio", "going"). What the rules get wrong and is
 * often said is listed. A word without a vowel is spelled ("rpm" three).
 *
 * @param word in lower case, letters and apostrophes
 */
export function syllablesOf(word: string): number {
  const apostrophe = word.lastIndexOf("'")
  if (apostrophe <= 0) return ofLetters(word.replace("'", ''))
  const before = word.slice(0, apostrophe)
  // "y'all"
  if (before === 'y') return ofLetters(word.slice(apostrophe + 1))
  return ofLetters(before) + ofEnding(before, word.slice(apostrophe + 1))
}

/** "didn't", "that'll", "it'd" and "Max's" have one more than before the apostrophe; "don't", "we'll", "you'd" and "song's" have not. */
function ofEnding(before: string, after: string): number {
  if (after === 't') return /[^aeioru]n$/.test(before) ? 1 : 0
  if (after === 'll' || after === 've') return /[^aeiouy]$/.test(before) ? 1 : 0
  if (after === 'd') return /[td]$/.test(before) ? 1 : 0
  if (after === 's') return /(?:[sxz]|[cs]h)$/.test(before) ? 1 : 0
  return ['m', 're', 'em'].includes(after) ? 0 : ofLetters(after)
}

function ofLetters(word: string): number {
  const listed = LISTED.get(word)
  if (listed !== undefined) return listed
  if (!VOWEL.test(word)) return HUMMED.test(word) ? 1 : spelled(word)
  if (word.length > LONGEST) return vowelsIn(word)
  const joined = JOINED.exec(word)
  if (joined) return ofLetters(joined[1]!) + ofLetters(joined[2]!)
  const said = withoutSilentEnd(word)
    .replace(/^every/, 'evry')
    .replace(/(?<=[csgtx]|ll)i(?=o(?:n|us)|a[ln]|en[ct])/g, '')
    .replace(/(?<=diff|pref|ref|conf|sev|av|temp|fav|sep)[aeou]r(?=[aeiy])/, 'r')
    .replace(/ically$/, 'icly')
  return Math.max(1, vowelsIn(said) + BOTH_SAID.filter((pattern) => pattern.test(said)).length)
}

/** Longer than any word that is spoken: held down keys, and whole files. */
const LONGEST = 30

const vowelsIn = (word: string): number => word.match(VOWELS)?.length ?? 0
const VOWEL = /[aeiouyà-ÿ]/
const VOWELS = /[aeiouyà-ÿ]+/g
const HUMMED = /^(?:h?m+|s+h+|p?s+t*|[ntd])$/

/** The e before these is not heard: "some-thing", "base-line", "safe-ly", "move-ment". */
const JOINED =
  /^(.*[aeiouy][^aeiouy]*[^aeiouyl]e|.*[aeiouyr]le)(ly|ment|ments|ness|less|ful|fully|ty|teen|table|thing|things|time|times|where|what|wise|one|body|self|selves|ways|way|line|lines|work|ground|board|side|back|man|room|up|out|port|grip|bars?|hold|house|face)$/

/** Without an e, es or ed that is not heard. */
function withoutSilentEnd(word: string): string {
  const [, before = '', end] = /^(.*)(es|ed|e)$/.exec(word) ?? []
  if (end === undefined || !VOWEL.test(before)) return word
  // "saddle", "settles"; "changes"; "seated".
  if (/[^aeiouylrw]l$/.test(before)) return word
  if (end === 'e' && /[^aeiouyr]r$/.test(before)) return word
  if (end === 'es' && /(?:[sxzcg]|[cs]h)$/.test(before)) return word
  if (end === 'ed' && /[td]$/.test(before)) return word
  return before
}

/** Vowels that stand together in one group and are said as two syllables, and the m of "rhythm". */
const BOTH_SAID: readonly RegExp[] = [
  // "going", "trying"; "player", "beyond"
  /[aeiouy]ing/,
  /[aeou]y[aeou]/,
  // "radio", "piano"; "quiet", "heavier", "science", not "pier" or "friend"; "stadium"
  /i[ao]/,
  /quiet|diet|..ier|iest|ien[ct]|iu[ms]/,
  // "gradual", "continuous", "fuel", "ruined"
  /(?<![qg])u(?:a[lrt]|ous|ity|e[ln]|ined)/,
  // "video", "create", "react"
  /[dnr]eo|^(?:re)?creat|^react/,
  /(?:th|s)ms?$/,
]

/** The name of every letter is one syllable but that of W. */
const spelled = (word: string): number => [...word].reduce((sum, letter) => sum + (letter === 'w' ? 3 : 1), 0)

/** What the rules get wrong, by its syllables. */
const LISTED: ReadonlyMap<string, number> = new Map(
  [
    'torque unique technique critique fatigue tongue league colleague plaque one ones aren',
    'hundred business maybe evening evenings camera gimme lemme naked crooked iron lion chocolate id kcal',
    'comfortable everyone idea ideas element area areas interesting vegetable rpe',
    'uncomfortable',
  ].flatMap((words, i) => words.split(' ').map((word) => [word, i + 1] as const)),
)
