import { tokensOf } from '#engine/cues/tokens.ts'
import { bySpeech } from '#engine/speech/bySpeech.ts'
import { english } from '#engine/speech/english/english.ts'
import type { Speech } from '#engine/speech/speech.ts'
import type { Cue } from '#plan/model.ts'
import type { Claim } from './claim.ts'

interface Cached {
  unit: string
  claims: readonly Claim[]
}
const known = bySpeech(() => new WeakMap<Cue, Cached>())

/** The numbers a cue speaks; read once for each cue object. */
export function claimsOf(cue: Cue, unit: string, speech: Speech): readonly Claim[] {
  const held = known(speech).get(cue)
  if (held?.unit === unit) return held.claims
  const claims = claimsIn(cue.text, unit, speech)
  known(speech).set(cue, { unit, claims })
  return claims
}

const texts = new Map<string, readonly Claim[]>()
/** Characters of texts kept; the bound only keeps a long session from growing without end. */
const MOST_CHARACTERS = 100_000
let characters = 0

/**
 * The numbers a text speaks; read once while it is in use, since a repair that is offered is read again with every change
 * of the ride.
 *
 * @param unit the bike's own unit, understood beside the common ones
 */
export function claimsIn(text: string, unit: string, { language, grammar }: Speech = english): readonly Claim[] {
  const key = `${language} ${unit.toLowerCase()} ${text}`
  let claims = texts.get(key)
  if (claims === undefined) {
    claims = grammar.read(tokensOf(text), unit.toLowerCase())
    if (characters > MOST_CHARACTERS) {
      texts.clear()
      characters = 0
    }
    texts.set(key, claims)
    characters += key.length
  }
  return claims
}
