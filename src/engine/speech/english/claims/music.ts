import type { Meaning, Unit } from '#engine/cues/claims/claim.ts'
import { afterAdjectives } from './describing.ts'
import { numberAt } from './numberAt.ts'
import { claim, closes, endsAt, type Meanings, numberSlot, type Reader, type Rule, read, says, slot, wordAfter, wordAt } from './reader.ts'
import { roleOf } from './role.ts'
import { MORE, wordSet } from './words.ts'

const COUNTS = wordSet('count counts beat beats')
const PHRASES = wordSet('phrase phrases')
const BARS = wordSet('bar bars measure measures')

interface Music {
  counts: number
  next: number
  per: number
  more: boolean
  noun: number
  /** Bars are as many counts as the song has in one. */
  unit?: Unit
}

/** "thirty-two counts", "four eights", "two more phrases", "last eight": a stretch of the music. */
export const readMusic: Rule = (reader, at) => {
  const number = numberAt(reader.tokens, at)
  if (number !== null && !number.fraction && !endsAt(reader, number.next - 1) && number.value > 0) {
    // One beat is no stretch that anybody plans.
    if (number.value === 1 && /^(?:beat|count)$/.test(wordAt(reader, number.next))) return read(number.next + 1)
    const music = unitAt(reader, number.next, number.value)
    const eights = numberAt(reader.tokens, number.next)
    // "Five 8-counts."
    if (
      eights !== null &&
      [4, 8, 16, 32].includes(eights.value) &&
      COUNTS.has(wordAt(reader, eights.next)) &&
      !endsAt(reader, eights.next - 1)
    ) {
      const music = { counts: number.value * eights.value, next: eights.next + 1, per: eights.value, more: false, noun: eights.next }
      return stretch(reader, at, music, [numberSlot(reader, at, number.next, number.figures, { per: eights.value, noun: eights.next })])
    }
    if (music !== null)
      return stretch(reader, at, music, [numberSlot(reader, at, number.next, number.figures, { per: music.per, noun: music.noun })])
  }
  return oneOf(reader, at) ?? lastCounts(reader, at)
}

/** The musical unit after a number, with "more" between them: "eight counts", "two phrases", "eight counts of eight". */
function unitAt(reader: Reader, at: number, value: number): Music | null {
  let place = at
  let more = false
  while (
    place < at + 2 &&
    (MORE.has(wordAt(reader, place)) || /^(?:full|whole|good|long|slow|clean)$/.test(wordAt(reader, place))) &&
    !endsAt(reader, place)
  ) {
    more ||= MORE.has(wordAt(reader, place))
    place++
  }
  const described = afterAdjectives(reader, place)
  if (described > place && /^(?:counts|beats|eights|bars|measures|phrases)$/.test(wordAt(reader, described))) place = described
  // "Five sets of eight."
  if (says(reader, place, 'sets|rounds|groups of eight|8|eights') && closes(reader, place + 2))
    return { counts: 8 * value, next: place + 3, per: 8, more, noun: place }
  const word = wordAt(reader, place)
  if (BARS.has(word)) return value < 2 && !more ? null : { counts: value, next: place + 1, per: 1, more, noun: place, unit: 'bars' }
  if (COUNTS.has(word)) {
    // "A four count" is a move's, "beats per minute" a tempo, "eight counts each side" a move's again.
    if ((word === 'count' || word === 'beat') && value !== 1) return null
    if (says(reader, place + 1, 'per|a minute') || isPulse(reader, at) || wordAfter(reader, place) === 'each') return null
    if (says(reader, place, 'counts of eight|eights|8')) return { counts: 8 * value, next: place + 3, per: 8, more, noun: place }
    return { counts: value, next: place + 1, per: 1, more, noun: place }
  }
  if (word === 'eights' || (word === 'eight' && value === 1 && more))
    return { counts: 8 * value, next: place + 1, per: 8, more, noun: place }
  if (PHRASES.has(word)) return { counts: 32 * value, next: place + 1, per: 32, more, noun: place }
  return null
}

/** "let the heart come down twenty beats", "in through the nose for four counts". */
function isPulse(reader: Reader, at: number): boolean {
  for (let place = at - 1; place >= at - 6 && place >= 0 && !endsAt(reader, place); place--) {
    if (/^(?:heart|hearts|pulse|rate|nose|mouth|inhale|exhale|lungs)$/.test(wordAt(reader, place))) return true
  }
  return false
}

/** "a phrase", "another eight", "last phrase". */
function oneOf(reader: Reader, at: number) {
  const word = wordAt(reader, at)
  const noun = wordAfter(reader, at)
  const unit = PHRASES.has(noun) ? 32 : noun === 'eight' ? 8 : 0
  if (unit === 0) return null
  const closed = closes(reader, at + 1)
  const next = at + 2
  if ((word === 'last' || word === 'final') && closed) {
    const meanings: Meanings = [
      { about: 'left', unit: 'counts', value: unit },
      { about: 'length', unit: 'counts', low: unit, high: unit, on: { ahead: true } },
    ]
    const slots = unit === 8 ? [slot(reader, at + 1, at + 1, { as: 'number', figures: false, per: 1 })] : []
    return read(next, claim(reader, at, next - 1, meanings, slots))
  }
  if (!(word === 'another' || (word === 'a' && unit === 32)) || !closed) return null
  return stretch(reader, at, { counts: unit, next: at + 2, per: unit, more: word === 'another', noun: at + 1 }, [])
}

/** "last sixteen", "last 8": counts, as they are called before a change. */
function lastCounts(reader: Reader, at: number) {
  if (!/^(?:last|final)$/.test(wordAt(reader, at)) || endsAt(reader, at)) return null
  const number = numberAt(reader.tokens, at + 1)
  if (number === null || ![8, 16, 32, 64].includes(number.value)) return null
  const follows = wordAfter(reader, number.next - 1)
  const counted = COUNTS.has(follows)
  if (!counted && !closes(reader, number.next - 1)) return null
  const last = counted ? number.next : number.next - 1
  const value = number.value
  return read(
    last + 1,
    claim(
      reader,
      at,
      last,
      [
        { about: 'left', unit: 'counts', value },
        { about: 'length', unit: 'counts', low: value, high: value, on: { ahead: true } },
      ],
      [numberSlot(reader, at + 1, number.next, number.figures)],
    ),
  )
}

function stretch(reader: Reader, at: number, { counts, next, more, unit = 'counts' }: Music, slots: Parameters<typeof claim>[4]) {
  const role = roleOf(reader, at, next, more)
  if (role.kind === 'none' || role.kind === 'gone') return read(next)
  const left: Meaning = { about: 'left', unit, value: counts, ...(role.of && { of: role.of }) }
  const length: Meaning = {
    about: 'length',
    unit,
    low: counts,
    high: counts,
    ...(role.bound && { bound: role.bound }),
    ...(role.on && Object.keys(role.on).length > 0 && { on: role.on }),
  }
  const until: Meaning = { about: 'until', unit, value: counts, ...role.target }
  // "Up in four counts" tells when; what stands there then is for the ears.
  if (role.kind === 'until' && ((unit === 'counts' && counts < 8) || !role.open)) return read(role.next)
  const meanings: Meanings =
    role.kind === 'until'
      ? role.target
        ? [until]
        : [until, left]
      : role.change && role.target
        ? [until]
        : role.change
          ? [until, { ...left, of: 'block' }, length]
          : role.kind === 'left'
            ? [left, { ...length, on: { ahead: true } }]
            : role.open
              ? [left, length]
              : [length, { ...left, of: 'block', midway: true }]
  return read(role.next, claim(reader, role.first, role.next - 1, meanings, slots))
}
