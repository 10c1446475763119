import { useState } from 'react'

/** Reads what was kept on this machine under a name; null where there is nothing, or the browser keeps nothing. */
export function readKept(name: string): string | null {
  try {
    return localStorage.getItem(`ridewright.${name}`)
  } catch {
    return null
  }
}

/** Keeps a text for next time, where the browser lets pages keep anything. */
export function keep(name: string, text: string): void {
  try {
    localStorage.setItem(`ridewright.${name}`, text)
  } catch {
    // A private window may refuse; the choice then lasts as long as the page.
  }
}

/** One of a few values, the one chosen last on this machine at first. */
export function useKeptChoice<V extends string>(name: string, choices: readonly V[], fallback: () => V): [V, (chosen: V) => void] {
  const [value, setValue] = useState<V>(() => {
    const kept = readKept(name)
    return choices.find((choice) => choice === kept) ?? fallback()
  })
  const choose = (chosen: V) => {
    setValue(chosen)
    keep(name, chosen)
  }
  return [value, choose]
}
