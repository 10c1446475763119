import type { Voice } from '#plan/sound/voice.ts'

/** The voices of the browser and its system; null where it has no way to speak at all. */
export function browserVoice(): Voice | null {
  if (typeof speechSynthesis === 'undefined') return null
  return {
    names: () => speechSynthesis.getVoices().map(({ name, lang, voiceURI }) => ({ id: voiceURI, name: `${name} (${lang})`, lang })),
    onNames: (listener) => {
      speechSynthesis.addEventListener('voiceschanged', listener)
      return () => speechSynthesis.removeEventListener('voiceschanged', listener)
    },
    say: (text, { voice, rate, onSaid }) => {
      const words = new SpeechSynthesisUtterance(text)
      const chosen = speechSynthesis.getVoices().find(({ voiceURI }) => voiceURI === voice)
      if (chosen) {
        words.voice = chosen
        words.lang = chosen.lang
      }
      words.rate = rate
      let began: number | null = null
      words.onstart = ({ timeStamp }) => {
        began = timeStamp
      }
      words.onend = ({ timeStamp }) => {
        if (began !== null) onSaid((timeStamp - began) / 1000)
      }
      speechSynthesis.speak(words)
    },
    hush: () => speechSynthesis.cancel(),
  }
}
