import type { Cue } from '#plan/model.ts'
import { remembered } from './remembered.ts'
import { soundsOf } from './sounds.ts'
import { spokenNumber } from './spokenNumber.ts'
import { type Token, tokensOf, tokensOfCue } from './tokens.ts'

/** What of a text takes time to say. */
export interface Speech {
  syllables: number
  /** Consonants as they are heard, in clusters and alone: "strengths" takes longer than "a". */
  consonants: number
  /** Full stops and the like between its sentences; the one at its end only ends it. */
  stops: number
  /** Commas, colons, brackets, and dashes between its clauses. */
  commas: number
}

const known = new WeakMap<Cue, Speech>()

/** The speech of a cue; read once for each cue object. */
export function speechOfCue(cue: Cue): Speech {
  let speech = known.get(cue)
  if (speech === undefined) {
    speech = speechIn(cue.text, tokensOfCue(cue))
    known.set(cue, speech)
  }
  return speech
}

/** Syllables, consonants, and pauses of a text; figures and signs as they are said ("90 rpm" is five syllables). Linear in the text, and nothing for one that was asked about before. */
export const speechOf = remembered((text): Speech => speechIn(text, tokensOf(text)))

function speechIn(text: string, tokens: readonly Token[]): Speech {
  const speech = { syllables: 0, consonants: 0, stops: 0, commas: 0 }
  const last = tokens.length - 1
  for (const [i, token] of tokens.entries()) {
    for (const word of saidOf(text, token)) {
      const { syllables, consonants } = soundsOf(word)
      speech.syllables += syllables
      speech.consonants += consonants
    }
    if (i < last && token.stops) speech.stops++
    else if (i < last && token.ends) speech.commas++
  }
  return speech
}

/** The words of a token, with the signs around it: "+¾" is plus three quarters, "50 %" fifty percent. */
function saidOf(text: string, { word, sign, to }: Token): string[] {
  const number = spokenNumber(word)
  if (number === null) return [word]
  const before = sign === 1 ? ['plus'] : sign === -1 ? ['minus'] : []
  const after = /^\s?%/.test(text.slice(to, to + 2)) ? ['percent'] : []
  return [...before, ...number, ...after]
}
