import { createContext, Fragment, type ReactNode, useContext, useMemo, useState } from 'react'
import { flushSync } from 'react-dom'
import { useAppStore } from '#store/useApp.ts'
import type { Language } from '#words/language.ts'
import { language, words } from '#words/words.ts'
import { fetchWords, keepLanguage } from './keptLanguage.ts'

interface ChosenLanguage {
  language: Language
  /** Draws the page in another language, once its words are here. */
  choose: (language: Language) => Promise<void>
}

const LanguageContext = createContext<ChosenLanguage | null>(null)

/** The language of the page and how to choose another. */
export const useLanguage = (): ChosenLanguage => useContext(LanguageContext)!

interface Props {
  /** Where the choice is kept; null where nothing can be. */
  notes: Pick<Storage, 'setItem'> | null
  children: ReactNode
}

/**
 * Draws all of the page again in the language chosen. The ride, what is undone, and what is
 * half typed stay: none of it lives in what is drawn.
 */
export function LanguageScope({ notes, children }: Props) {
  const store = useAppStore()
  const [current, setCurrent] = useState(language)
  const [isDrawn, setIsDrawn] = useState(true)
  const chosen = useMemo(
    () => ({
      language: current,
      choose: async (next: Language) => {
        try {
          await fetchWords(next, navigator.languages)
        } catch {
          store.getState().notify({ kind: 'warning', sentence: words.languages.notFetched })
          return
        }
        keepLanguage(notes, next)
        // The old page goes first and its fields hand over what is typed in them; then the new one finds it.
        flushSync(() => setIsDrawn(false))
        setCurrent(next)
        setIsDrawn(true)
      },
    }),
    [current, store, notes],
  )
  return (
    <LanguageContext value={chosen}>
      <Fragment key={current}>{isDrawn && children}</Fragment>
    </LanguageContext>
  )
}
