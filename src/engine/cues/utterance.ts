import { bySpeech } from '#engine/speech/bySpeech.ts'
import { english } from '#engine/speech/english/english.ts'
import type { Speech } from '#engine/speech/speech.ts'
import type { Cue } from '#plan/model.ts'
import { remembered } from './remembered.ts'
import { soundsOf } from './sounds.ts'
import { type Token, tokensOf, tokensOfCue } from './tokens.ts'

/** What of a text takes time to say. */
export interface Utterance {
  /** As long as English ones: those of another language count by how long they take. */
  syllables: number
  /** Consonants as they are heard, in clusters and alone: "strengths" takes longer than "a". */
  consonants: number
  /** Full stops and the like between its sentences; the one at its end only ends it. */
  stops: number
  /** Commas, colons, brackets, and dashes between its clauses. */
  commas: number
}

const known = bySpeech(() => new WeakMap<Cue, Utterance>())

/** A cue as it is spoken; read once for each cue object. */
export function utteranceOfCue(cue: Cue, speech: Speech): Utterance {
  const ofCues = known(speech)
  let utterance = ofCues.get(cue)
  if (utterance === undefined) {
    utterance = utteranceIn(cue.text, tokensOfCue(cue), speech)
    ofCues.set(cue, utterance)
  }
  return utterance
}

const remember = bySpeech((speech) => remembered((text): Utterance => utteranceIn(text, tokensOf(text), speech)))

/** Syllables, consonants, and pauses of a text; figures and signs as they are said ("90 rpm" is five syllables). Linear in the text, and nothing for one that was asked about before. */
export const utteranceOf = (text: string, speech: Speech = english): Utterance => remember(speech)(text)

function utteranceIn(text: string, tokens: readonly Token[], speech: Speech): Utterance {
  const utterance = { syllables: 0, consonants: 0, stops: 0, commas: 0 }
  const last = tokens.length - 1
  for (const [i, token] of tokens.entries()) {
    for (const word of saidOf(text, token, speech)) {
      const { syllables, consonants } = soundsOf(word, speech)
      utterance.syllables += syllables
      utterance.consonants += consonants
    }
    if (i < last && token.stops) utterance.stops++
    else if (i < last && token.ends) utterance.commas++
  }
  const { length } = speech.sounds
  return { ...utterance, syllables: utterance.syllables * length.syllable, consonants: utterance.consonants * length.consonant }
}

/** The words of a token, with the signs around it: "+¾" is plus three quarters, "50 %" fifty percent. */
function saidOf(text: string, { word, sign, to }: Token, { sounds }: Speech): string[] {
  const number = sounds.figures(word)
  if (number === null) return [word]
  const before = sign === 1 ? [sounds.plus] : sign === -1 ? [sounds.minus] : []
  const after = /^\s?%/.test(text.slice(to, to + 2)) ? [sounds.percent] : []
  return [...before, ...number, ...after]
}
