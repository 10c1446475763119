import type { Language } from './language.ts'
import type { Catalogue } from './said.ts'

/** Each language is a file of its own, fetched when it is chosen. */
const CATALOGUES: Readonly<Record<Language, () => Promise<Catalogue>>> = {
  en: async () => (await import('./en/index.ts')).en,
  de: async () => (await import('./de/index.ts')).de,
}

export const loadCatalogue = (language: Language): Promise<Catalogue> => CATALOGUES[language]()
