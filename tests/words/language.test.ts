import { describe, expect, it } from 'vitest'
import { languageFor, localeFor } from '#words/language.ts'

describe('the language of a new visitor', () => {
  it.each([
    [['de-AT', 'en'], 'de'],
    [['fr-CA', 'de', 'en'], 'de'],
    [['fr', 'it'], 'en'],
    [[], 'en'],
    [['EN-gb'], 'en'],
    // Named like a member of every object, and no language.
    [['constructor'], 'en'],
  ])('of %j is %s', (preferred, language) => expect(languageFor(preferred)).toBe(language))

  it.each([
    ['de', ['de', 'de-CH'], 'de-CH'],
    ['de', ['en-US'], 'de-DE'],
    ['en', ['de', 'en'], 'en-US'],
    ['en', ['en-GB', 'en-US'], 'en-GB'],
  ] as const)('%s for %j has the numbers of %s', (language, preferred, locale) => expect(localeFor(language, preferred)).toBe(locale))
})
