import type { Speech } from './speech.ts'

/** What is made once for each language: what one language makes of a text says nothing of another. */
export function bySpeech<T>(make: (speech: Speech) => T): (speech: Speech) => T {
  const made = new Map<Speech, T>()
  return (speech) => {
    let own = made.get(speech)
    if (own === undefined) {
      own = make(speech)
      made.set(speech, own)
    }
    return own
  }
}
