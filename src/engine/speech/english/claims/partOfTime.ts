import { endsAt, type Reader, wordAt, wordBefore } from './reader.ts'

/** "fifteen seconds a side", "twenty seconds each leg", "hold each stretch twenty seconds", "a thirty-second stretch": one of many holds. */
export function isOneOfSides(reader: Reader, first: number, next: number): boolean {
  if (!endsAt(reader, next - 1)) {
    if (/^stretch(?:es)?$/.test(wordAt(reader, next))) return true
    const on = wordAt(reader, next) === 'on' || wordAt(reader, next) === 'for' ? next + 1 : next
    if (/^(?:a|per|each|every|either)$/.test(wordAt(reader, on)) && SIDE.test(wordAt(reader, on + 1))) return true
  }
  for (let at = first - 1; at >= first - 5 && at >= 0 && !reader.tokens[at]!.stops; at--) {
    const counted = /^(?:each|every|a|per)$/.test(wordBefore(reader, at)) && SIDE.test(wordAt(reader, at))
    if (counted || /^stretch(?:es)?$/.test(wordAt(reader, at))) return true
  }
  return false
}

const SIDE = /^(?:side|leg|arm|foot|hand|stretch|calf|quad|hamstring|hip|glute|shoulder|direction|way)$/

/** A time for a drink or a towel, and for nothing of the ride. */
export function isForDrinking(reader: Reader, first: number, next: number): boolean {
  // "Grab some water, you've got a minute" tells the break.
  if (/^(?:got|have|is|it's|there's)$/.test(wordBefore(reader, first))) return false
  for (let at = first - 1; at >= first - 5 && at >= 0 && !reader.tokens[at]!.stops; at--) if (DRINK.test(wordAt(reader, at))) return true
  return !endsAt(reader, next - 1) && DRINK.test(wordAt(reader, wordAt(reader, next) === 'of' ? next + 1 : next))
}

const DRINK = /^(?:water|drink|drinks|sip|swig|bottle|bottles|towel|hydrate)$/
