import { useContext, useEffect, useState } from 'react'
import { DraftKeeping } from './draftKeeping.ts'

/**
 * State of a form that is kept nowhere else before the form is sent: it comes back after the page
 * has ended or the place was left. As it was at first, it is forgotten; the third of what it gives
 * forgets it at once, for when the form is sent or given up.
 *
 * @param name of it among all forms
 * @param first a plain value
 */
export function useKeptState<T>(name: string, first: T): [T, (next: T | ((before: T) => T)) => void, () => void] {
  const keeper = useContext(DraftKeeping)
  const untouched = JSON.stringify(first)
  const [state, setState] = useState<T>(() => readOr(keeper?.left(name, ''), first))
  const text = JSON.stringify(state)
  useEffect(() => {
    if (text === untouched) keeper?.drop(name)
    else keeper?.note(name, '', text)
    return () => keeper?.leave(name)
  }, [keeper, name, untouched, text])
  return [state, setState, () => keeper?.drop(name)]
}

function readOr<T>(text: string | null | undefined, first: T): T {
  try {
    return text == null ? first : (JSON.parse(text) as T)
  } catch {
    return first
  }
}
