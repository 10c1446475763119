import { amountAt } from './amountAt.ts'
import { closes, endsAt, type Reader, startsAt, wordAfter, wordAt, wordBefore } from './reader.ts'
import { wordSet } from './words.ts'

/** Verbs that put resistance on by themselves. */
export const ADDING = wordSet('add adding load loading crank bump stack pile sneak slap tighten layer throw increase raise heap wrap pump')
/** Verbs that take it off. */
export const TAKING = wordSet(
  'drop dropping lose losing shed peel peeling shave knock strip release ease dump unload loosen cut reduce lighten lower remove subtract ditch undo unwind',
)
/** These say which way only with "on", "off" and the like. */
export const EITHER = wordSet(
  'take taking put putting turn turning come coming go going bring pull pulling roll wind pop kick dial move slide set back let leave keep push get grab give gimme find click want need like owe twist nudge crack toss stick tack scoot shift inch edge ratchet jack',
)
/** Of these, what is handed over goes on. */
export const HANDING = wordSet('give gimme get grab dial want need like owe')
/** What may stand between a verb and its amount. */
export const BETWEEN = wordSet(
  'it that this me us in on off up down back by with of your the knob wheel dial resistance gear load just there here now go from another an extra some comes goes yourself ourselves yourselves ya onto in into out',
)

/** Whether a direction ends a clause, and the next one is an amount and no more. */
export function isPause(reader: Reader, at: number): boolean {
  if (!/^(?:on|off|up|down|back|in)$/.test(wordAt(reader, at)) || reader.tokens[at]!.stops) return false
  const amount = amountAt(reader, at + 1)
  return amount !== null && (amount.named || amount.fraction) && endsAt(reader, amount.next - 1)
}

/** A verb as it is in the lists: "gives" is "give", "sneaking" is "sneak". */
export function verbAt(reader: Reader, at: number): string {
  const word = wordAt(reader, at)
  for (const ending of [/s$/, /es$/, /ing$/]) {
    const base = word.replace(ending, '')
    if (base !== word && (ADDING.has(base) || TAKING.has(base) || EITHER.has(base))) return base
  }
  return word
}

/** "off with two turns", "up by a quarter"; after any other verb "off 2½", "on half a turn". */
export function isParticle(reader: Reader, at: number): boolean {
  const word = wordAt(reader, at)
  const after = wordAfter(reader, at)
  // "Start me off with a turn" adds one.
  if (/^(?:on|off)$/.test(word) && after === 'with') return startsAt(reader, at)
  if (/^(?:up|down|on|off|heavier|lighter)$/.test(word) && after === 'by') return true
  // "Down two turns", "up three quarters", "off comes half a turn".
  if (/^(?:up|down|off)$/.test(word) && startsAt(reader, at) && !endsAt(reader, at)) {
    const led = /^(?:come|comes|go|goes)$/.test(after) ? at + 2 : at + 1
    const amount = amountAt(reader, led)
    return amount !== null && (!amount.plain || word === 'off') && (amount.named || amount.fraction) && closes(reader, amount.next - 1)
  }
  if (
    !/^(?:on|off)$/.test(word) ||
    startsAt(reader, at) ||
    !/^\p{L}{3,}$/u.test(wordBefore(reader, at)) ||
    STAYING.test(wordBefore(reader, at))
  )
    return false
  const amount = amountAt(reader, at + 1)
  return amount !== null && !amount.plain && (amount.named || amount.fraction)
}

/** After these, "on half a turn" is where riders are; "the push on half a turn" is no verb at all. */
const STAYING =
  /^(?:are|you're|we're|you|ride|riding|sit|sitting|stay|staying|hold|holding|work|working|live|keep|run|running|climb|climbing|push|surge|hill|been|going|getting|turn|turns|based|start|starting|and|now|right|more)$/
