import { describe, expect, it } from 'vitest'
import { sentencesIn, sourcesIn } from '#tests/support/sentencesIn.mjs'

/**
 * Where texts stand: the catalogues of the page, and what riders hear, in one folder for each
 * spoken language. `main.tsx` has one for when no catalogue could be fetched.
 */
const HOMES = [
  /^src\/words\/(en|de)\//,
  /^src\/engine\/speech\/(english|german)\//,
  /^src\/engine\/roughIn\/words\/(english|german)\//,
  /^src\/plan\/patterns\/words\/(english|german)\.ts$/,
  /^src\/main\.tsx$/,
]

/** Files whose words are names that nobody reads, each with what they are. */
const NAMES: Readonly<Record<string, string>> = {
  'src/features/merging/words/sayValue.ts': 'fields of the document',
  'src/plan/link/format1/tradeWords.ts': 'the words links are packed with, the same for ever',
  'src/plan/link/format1/nameShape.ts': 'the letters links are packed with',
  'src/engine/roughIn/recipes.ts': 'recipes',
  'src/engine/roughIn/makeBlocks.ts': 'words in the place of those that are written last',
}

/** Names of two words that are kept in rides or known to code, and read only by what the catalogue calls them. */
const KEYS: ReadonlySet<string> = new Set([
  // Moves, as rides hold them.
  ...['side lean', 'shoulder roll', 'shoulder rolls', 'around the clock', 'no hands'],
  // Feels and typical riders and bikes, as rides hold them.
  ...['easy flat', 'brisk flat', 'light hill', 'solid hill', 'heavy hill'],
  ...['new rider', 'regular rider', 'strong rider', 'knob, quarter turns'],
  // The demo rides, which are in English.
  ...['Twenty-Minute Spark', 'Ridge and Return'],
  // Classes of intensity, shapes, differences, units, parts of a sheet, forms that keep what is typed.
  ...['very light', 'easy ride', 'two peaks', 'beats per minute', 'words per minute', 'form points'],
  ...['two people', 'one person', 'whole ride', 'ride leaders', 'deleted {}', 'added {}', 'moved {}', 'leader {}', 'ride {}'],
  ...['opening card', 'legend', 'call {}', 'log {}', 'songs, list', 'new ride, title', 'new ride, playlist'],
  ...['ridewright.drafts.', 'ridewright.left.', 'ridewright.window.'],
  // What the formatters of a locale are kept under.
  ...['percent {}', 'first weekday'],
  // The short form of minutes, the same in both languages.
  '{}{} min',
])

describe('texts', () => {
  it('stand in the catalogue and nowhere else', () => {
    const outside = sourcesIn('src')
      .filter((path) => !HOMES.some((home) => home.test(path)) && !(path in NAMES))
      .flatMap(sentencesIn)
      .filter(({ text }) => !KEYS.has(text) && !/^(?:·?&nbsp;·?)$/.test(text))
    expect(outside.map(({ path, line, text }) => `${path}:${line} ${text}`)).toEqual([])
  })

  it('would be found', () => {
    const found = sentencesIn('tests/support/sentences/planted.tsx').map(({ text }) => text)
    expect(found).toEqual(['Two words', 'A sentence.', 'at {} of {}', 'hidden from the eye', 'between tags'])
  })
})
