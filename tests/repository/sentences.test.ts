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
  /^src\/main\.tsx$/,
]

/** What looks like words and is none: patterns of other programs' files, names of fonts and of fields. */
const NO_SENTENCES: ReadonlySet<string> = new Set([])

describe('texts', () => {
  it('stand in the catalogue and nowhere else', () => {
    const outside = sourcesIn('src')
      .filter((path) => !HOMES.some((home) => home.test(path)))
      .flatMap(sentencesIn)
      .filter(({ text }) => !NO_SENTENCES.has(text))
    expect(outside.map(({ path, line, text }) => `${path}:${line} ${text}`)).toEqual([])
  })

  it('would be found', () => {
    const found = sentencesIn('tests/support/sentences/planted.tsx').map(({ text }) => text)
    expect(found).toEqual(['Two words', 'A sentence.', 'at {} of {}', 'hidden from the eye', 'between tags'])
  })
})
