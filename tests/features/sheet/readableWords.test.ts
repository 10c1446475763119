import { afterEach, expect, test } from 'vitest'
import { readableWords } from '#features/sheet/readableWords.ts'
import { capHeight } from '#units/capHeight.ts'
import { setLocale } from '#words/locale.ts'

afterEach(() => setLocale('en-US'))

test.each([
  [capHeight(0.5, 16), 'sheet', 'en-GB', 'Readable from about 50 cm.'],
  [capHeight(0.7, 16), 'sheet', 'en-US', 'Readable from about 28 in.'],
  [2.8, 'card', 'en-US', 'Readable from about 24 in.'],
  [2.8, 'card', 'de-DE', 'Readable from about 60 cm.'],
  // A page of 360 CSS pixels is shown 66 of 95.25 mm wide.
  [(capHeight(0.5, 16) * 95.25) / 66, 'phone', 'en-GB', 'Readable from about 50 cm on a phone.'],
] as const)('capitals of %d mm on a %s in %s: %s', (cap, page, locale, words) => {
  setLocale(locale)
  expect(readableWords(cap, page)).toBe(words)
})
