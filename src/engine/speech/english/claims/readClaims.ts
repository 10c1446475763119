import type { Claim, Meaning } from '#engine/cues/claims/claim.ts'
import type { Token } from '#engine/cues/tokens.ts'
import { readCadence } from './cadence.ts'
import { readClock } from './clock.ts'
import { readCount } from './counting.ts'
import { readDone, readWasNumber } from './done.ts'
import { readEffort } from './effort.ts'
import { readChange, readStay, readVerb } from './knob.ts'
import { readMove } from './moves.ts'
import { readMusic } from './music.ts'
import { numberAt } from './numberAt.ts'
import { readNamedPlace, readPlace } from './places.ts'
import type { Reader, Reading, Rule } from './reader.ts'
import { scopeOf } from './scope.ts'
import { readBareSeconds, readSeconds } from './seconds.ts'
import { readShare } from './share.ts'
import { readTotal } from './total.ts'

/** In the order they are tried at each word: what says more comes first. */
const RULES: readonly Rule[] = [
  readStay,
  readClock,
  readEffort,
  readCadence,
  readShare,
  readMove,
  readSeconds,
  readMusic,
  readTotal,
  readWasNumber,
  readDone,
  readVerb,
  readChange,
  readBareSeconds,
  readPlace,
  readCount,
]

/**
 * The numbers an English text speaks. Nothing is claimed where the words leave it open: a bare "four" may be a count-in,
 * "two hands" are no efforts, and what is asked, denied, offered to some or told of another day is not read.
 * Cost: linear in the text, since every rule looks at a few words only.
 *
 * @param unit the bike's own unit, in lower case
 */
export function readClaims(tokens: readonly Token[], unit: string): Claim[] {
  const reader: Reader = { tokens, unit, marks: scopeOf(tokens) }
  const claims: Claim[] = []
  let at = 0
  while (at < tokens.length) {
    const counted = reader.marks[at]!.silent ? at + 1 : afterCounting(reader, at)
    if (counted > at) {
      at = counted
      continue
    }
    const reading = firstOf(reader, at)
    if (reading) claims.push(...reading.claims)
    at = reading ? Math.max(reading.next, at + 1) : (numberAt(tokens, at)?.next ?? at + 1)
  }
  return ofOneKind(aboutKinds(claims))
}

function firstOf(reader: Reader, at: number): Reading | null {
  for (const rule of RULES) {
    const reading = rule(reader, at)
    if (reading !== null) return reading
  }
  const named = readNamedPlace(reader, at)
  return named && RULES.every((rule) => rule(reader, at + 1) === null) ? named : null
}

/** The token after "three, two, one" or "five, six, seven, eight", where people count aloud; `at` where they do not. */
function afterCounting(reader: Reader, at: number): number {
  let next = at
  let last: number | null = null
  let step: number | null = null
  let length = 0
  while (next < reader.tokens.length) {
    const number = numberAt(reader.tokens, next)
    if (number === null || number.fraction || number.next !== next + 1) break
    if (last !== null) {
      const by: number = number.value - last
      if (Math.abs(by) !== 1 || (step !== null && by !== step)) break
      step = by
    }
    last = number.value
    next = number.next
    length++
  }
  return length >= 3 ? next : at
}

/** A time that follows "three pushes" or "push two" is theirs: "three pushes, twenty seconds"; after "four times" it is of what comes. */
function aboutKinds(claims: readonly Claim[]): Claim[] {
  let kind: string | undefined
  let repeated = false
  return claims.map((claim) => {
    const [first, ...others] = claim.meanings
    const own = kindOf(first)
    if (own !== undefined) kind = own
    if (first.about === 'rounds') repeated = true
    if (first.about !== 'length' || first.on?.kind !== undefined) return claim
    if (kind === undefined) return repeated ? { ...claim, meanings: [{ ...first, on: { ...first.on, ahead: true } }, ...others] } : claim
    // What is easy among them lies between them.
    const on = first.on?.quality === 'easy' ? { ...first.on, ahead: true as const } : { ...first.on, kind, ahead: true as const }
    return { ...claim, meanings: [{ ...first, on }, ...others] }
  })
}

/** "Two jumps done, two to go": what is left is of what is done. */
function ofOneKind(claims: readonly Claim[]): Claim[] {
  let kind: string | undefined
  return claims.map((claim) => {
    const [first, ...others] = claim.meanings
    if (first.about === 'done' && first.kind !== undefined) kind = first.kind
    if (first.about !== 'more' || first.kind !== undefined || kind === undefined) return claim
    return { ...claim, meanings: [{ ...first, kind }, ...others] }
  })
}

const kindOf = (meaning: Meaning): string | undefined =>
  (meaning.about === 'ahead' || meaning.about === 'place') && meaning.kind !== undefined ? meaning.kind : undefined
