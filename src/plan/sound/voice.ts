import type { Seconds } from '#units/units.ts'
import type { Language } from '#words/language.ts'

/** A voice the browser can speak with. */
export interface VoiceName {
  id: string
  name: string
  /** As "en-GB". */
  lang: string
}

/** Says words aloud. */
export interface Voice {
  /** Empty where there is none, or none is known yet. */
  names: () => VoiceName[]
  /** Tells of voices that become known later; returns what ends it. */
  onNames: (listener: () => void) => () => void
  /**
   * Says a text after what is being said.
   *
   * @param voice a voice's id; another than there is, or one of another language, means the browser's own choice
   * @param language of the words
   * @param rate 1 is the voice's usual pace, 0.5 to 2
   * @param onSaid told how long it took, once it was said to the end
   */
  say: (text: string, how: { voice: string; language: Language; rate: number; onSaid: (seconds: Seconds) => void }) => void
  /** Breaks off what is being said and forgets what was to come. */
  hush: () => void
}

/** Whether a voice of such a tag, "de-AT" or "de_DE", speaks a language. */
export const speaks = (tag: string, language: Language): boolean => tag.toLowerCase().split(/[-_]/)[0] === language
