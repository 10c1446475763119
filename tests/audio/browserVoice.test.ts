import { afterEach, expect, it, vi } from 'vitest'
import { browserVoice } from '#audio/browserVoice.ts'

const VOICES = [
  { voiceURI: 'amy', name: 'Amy', lang: 'en-US', default: true },
  { voiceURI: 'ben', name: 'Ben', lang: 'en-GB', default: false },
  { voiceURI: 'ida', name: 'Ida', lang: 'de_DE', default: false },
]

/** What the browser is given to say, with these voices. */
function saying(voices: typeof VOICES, voice: string, language: 'en' | 'de') {
  const said: { voice?: { voiceURI: string }; lang?: string }[] = []
  vi.stubGlobal('speechSynthesis', { getVoices: () => voices, speak: (words: object) => said.push(words), cancel: () => {} })
  vi.stubGlobal('SpeechSynthesisUtterance', class {})
  browserVoice()!.say('Hoch.', { voice, language, rate: 1, onSaid: () => {} })
  return [said[0]!.voice?.voiceURI, said[0]!.lang]
}

afterEach(() => vi.unstubAllGlobals())

it('speaks with the voice chosen, where it speaks the language of the ride', () => {
  expect(saying(VOICES, 'ben', 'en')).toEqual(['ben', 'en-GB'])
  expect(saying(VOICES, 'ben', 'de')).toEqual(['ida', 'de_DE'])
})

it('else with the browser’s own of that language, and without one names the language', () => {
  expect(saying(VOICES, '', 'en')).toEqual(['amy', 'en-US'])
  expect(saying(VOICES.slice(0, 2), 'amy', 'de')).toEqual([undefined, 'de'])
})
