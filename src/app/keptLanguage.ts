import { isLanguage, type Language, languageFor, localeFor } from '#words/language.ts'
import { loadCatalogue } from '#words/load.ts'
import { setWords } from '#words/words.ts'

const NAME = 'ridewright.language'

/** The language chosen here before; else the first of the browser's there are words in. */
export function languageHere(storage: Pick<Storage, 'getItem'> | null, preferred: readonly string[]): Language {
  const kept = attempt(() => storage?.getItem(NAME))
  return isLanguage(kept) ? kept : languageFor(preferred)
}

/** Fetches a language, after which everything is told in it, and screen readers read it as what it is. */
export async function fetchWords(language: Language, preferred: readonly string[]): Promise<void> {
  setWords(language, await loadCatalogue(language), localeFor(language, preferred))
  document.documentElement.lang = language
}

/** Keeps the choice for the next visit. Without storage it is forgotten, which costs one choice. */
export function keepLanguage(storage: Pick<Storage, 'setItem'> | null, language: Language): void {
  attempt(() => storage?.setItem(NAME, language))
}

/** Storage may be full or refused. */
function attempt<T>(act: () => T): T | undefined {
  try {
    return act()
  } catch {
    return undefined
  }
}
