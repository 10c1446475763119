import { speaks, type Voice } from '#plan/sound/voice.ts'

/** The voices of the browser and its system; null where it has no way to speak at all. */
export function browserVoice(): Voice | null {
  if (typeof speechSynthesis === 'undefined') return null
  return {
    names: () => speechSynthesis.getVoices().map(({ name, lang, voiceURI }) => ({ id: voiceURI, name: `${name} (${lang})`, lang })),
    onNames: (listener) => {
      speechSynthesis.addEventListener('voiceschanged', listener)
      return () => speechSynthesis.removeEventListener('voiceschanged', listener)
    },
    say: (text, { voice, language, rate, onSaid }) => {
      const words = new SpeechSynthesisUtterance(text)
      // German words in an English voice are understood by nobody: the language comes before the choice.
      const able = speechSynthesis.getVoices().filter(({ lang }) => speaks(lang, language))
      const chosen = able.find(({ voiceURI }) => voiceURI === voice) ?? able.find((one) => one.default) ?? able[0]
      if (chosen) words.voice = chosen
      words.lang = chosen?.lang ?? language
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
