/** The languages there are words in, by their code (BCP 47), each by its own name. */
export const LANGUAGES = { en: 'English', de: 'Deutsch' } as const

export type Language = keyof typeof LANGUAGES

export const isLanguage = (code: unknown): code is Language => typeof code === 'string' && Object.hasOwn(LANGUAGES, code)

/** The language of a tag: "de-AT" is German. */
const languageOf = (tag: string): string => tag.toLowerCase().split('-')[0]!

/** The first of somebody's languages there are words in; English where there is none. */
export function languageFor(preferred: readonly string[]): Language {
  return preferred.map(languageOf).find(isLanguage) ?? 'en'
}

/** Where numbers, dates, and measures come from: the first tag of that language with a country, else its home. */
export function localeFor(language: Language, preferred: readonly string[]): string {
  const own = preferred.filter((tag) => languageOf(tag) === language)
  return own.find((tag) => tag.includes('-')) ?? HOMES[language]
}

const HOMES: Readonly<Record<Language, string>> = { en: 'en-US', de: 'de-DE' }
