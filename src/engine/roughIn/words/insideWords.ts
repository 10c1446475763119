import type { Seconds } from '#units/units.ts'
import { ofMove } from './announcing.ts'
import { capital } from './capital.ts'
import type { Deck } from './deck.ts'
import { moveKey, type Passage } from './passage.ts'
import { suits } from './suits.ts'
import type { Voice } from './voice.ts'

/** Something to be said inside a block. */
export interface Wish {
  passage: Passage
  /** Ways to say it, the best first; a wording may name the moment its number is true at. */
  wordings: readonly { text: string; left?: Seconds }[]
  /** Where its words end, seconds from the block's start; a wording's own moment goes before it. */
  at: Seconds
  /** How far it may be moved. */
  reach: Seconds
  /** Higher goes first. */
  rank: number
}

/** Shorter than this a block has no words of its own but calls. */
const SHORT: Seconds = 14
/** An effort this long is told how far along it is. */
const LONG_EFFORT: Seconds = 38
/** Words that fill a longer block come about this often. */
const EVERY: Seconds = 34

export interface SectionState {
  /** A seat was offered in this song. */
  seatOffered: boolean
}

/** All that might be said inside a block: more than there is room for, each with how much it matters. */
export function insideWords(passage: Passage, state: SectionState, deck: Deck, voice: Voice): Wish[] {
  const { kind, seconds } = passage
  const { phrases } = voice
  if (kind === 'stretch') return stretching(passage, deck, voice)
  if (seconds < SHORT) return []
  const wishes: Wish[] = []
  const add = (rank: number, at: Seconds, reach: Seconds, texts: readonly (string | { text: string; left?: Seconds })[]) => {
    const wordings = texts.map((one) => (typeof one === 'string' ? { text: one } : one)).filter(({ text }) => suits(text, passage, voice))
    if (wordings.length > 0) wishes.push({ passage, wordings, at, reach, rank })
  }
  if (passage.opens === 'class') {
    const basics = deck.order(phrases.basics)
    add(9, seconds * 0.3, seconds * 0.2, basics)
    add(8, seconds * 0.62, seconds * 0.2, basics)
  }
  if (passage.isNew && passage.block.move) add(10, Math.min(seconds * 0.4, 12), seconds * 0.6, movePoints(passage, deck, voice))
  const seat = seatWords(passage, state, deck, voice)
  if (seat.length > 0 && seconds >= 18) {
    state.seatOffered = true
    add(6, seconds * 0.35, seconds * 0.25, seat)
  }
  if (passage.after === undefined) add(9, seconds - 4, 6, deck.order(phrases.thanks))
  if (passage.kind === 'hold') add(8, Math.min(seconds * 0.4, 10), seconds * 0.4, deck.order(phrases.points.hold))
  if (passage.isEffort) effortWords(passage, deck, voice, add)
  else fill(passage, deck, voice, add)
  return wishes
}

type Add = (rank: number, at: Seconds, reach: Seconds, texts: readonly (string | { text: string; left?: Seconds })[]) => void

const movePoints = ({ block }: Passage, deck: Deck, { phrases }: Voice): string[] =>
  deck.order(ofMove(phrases.movePoints, moveKey(block)) ?? phrases.anyMove)

/** Once a song riders are told that the saddle is theirs. */
function seatWords({ block, kind, isNew }: Passage, state: SectionState, deck: Deck, { phrases }: Voice): string[] {
  if (state.seatOffered || block.posture === 'seated' || isNew || kind === 'jumps') return []
  return deck.order(phrases.seats)
}

/** A form point early, where they are in the middle, and a last call. */
function effortWords(passage: Passage, deck: Deck, voice: Voice, add: Add): void {
  const { kind, seconds, load } = passage
  const { phrases } = voice
  const points = deck.order(phrases.points[kind])
  if (!passage.isNew) add(5, Math.min(seconds * 0.4, 14), seconds * 0.2, points)
  if (seconds >= LONG_EFFORT) add(4, seconds / 2, seconds * 0.05, deck.order(phrases.halfway(passage.block.posture === 'seated')))
  if (seconds >= 20) add(7, seconds - 10, seconds, lastCalls(passage, deck, voice))
  if (seconds >= 60) add(3, seconds * 0.7, seconds * 0.1, deck.order([...phrases.cheer, ...feelWords(passage, voice)]))
  if (seconds >= 30 && load.to >= 6) add(2, seconds * 0.6, seconds * 0.12, deck.order(phrases.cheer))
}

/** "Last eight", "ten seconds": what is left of an effort, by counts on the beat and else by the clock. */
function lastCalls({ times, seconds }: Passage, deck: Deck, { calls }: Voice): { text: string; left: Seconds }[] {
  const [played] = times
  const counted = played!.countTo !== undefined
  const count = counted ? (played!.to - played!.from) / (played!.countTo! - played!.countFrom!) : undefined
  const called: { text: string; left: Seconds }[] = []
  if (count !== undefined) {
    for (const [counts, words] of calls.countsLeft)
      if (counts * count < seconds * 0.55) for (const text of deck.order(words)) called.push({ text, left: counts * count })
  }
  for (const left of [10, 15])
    if (left < seconds * 0.55) for (const text of deck.order(calls.secondsLeft(left))) called.push({ text, left })
  return deck.order(called.map(({ text }) => text)).map((text) => called.find((one) => one.text === text)!)
}

/** What may be said in the middle of a block that is no effort. */
function fill(passage: Passage, deck: Deck, voice: Voice, add: Add): void {
  const { phrases } = voice
  const { seconds, kind, after } = passage
  const isCalm = kind === 'recover' || kind === 'flush'
  const room = seconds - 12
  const wanted = Math.min(5, Math.floor(room / EVERY))
  const points = [...phrases.points[kind]]
  for (let at = 0; at < wanted; at++) {
    const where = 8 + ((at + 0.5) * room) / wanted
    const texts = isCalm && at % 2 === 0 ? phrases.calm : at % 3 === 1 ? [...feelWords(passage, voice), ...points] : points
    add(isCalm ? 2 : 3, where, Math.min(10, room / wanted / 2), deck.order(texts))
  }
  if (seconds >= 30 && seconds < 12 + EVERY && kind !== 'recover') add(2, seconds * 0.45, seconds * 0.15, deck.order(points))
  // What comes after a longer stretch is told ahead.
  if (
    seconds >= 45 &&
    after &&
    after.section === passage.section &&
    after.block.posture === 'standing' &&
    passage.block.posture === 'seated'
  )
    for (const left of [30, 20])
      if (seconds > left + 15) {
        const texts = deck.order(voice.calls.standSoon(left))
        add(
          4,
          seconds - left,
          3,
          texts.map((text) => ({ text, left })),
        )
        break
      }
}

/** The feel as a sentence. */
const feelWords = ({ kind }: Passage, { phrases }: Voice): string[] =>
  phrases.feels[kind].filter((feel) => feel.split(' ').length <= 7).map((feel) => `${capital(feel)}.`)

/** Stretches side by side, as long on either, and thanks at the very end. */
function stretching(passage: Passage, deck: Deck, { phrases }: Voice): Wish[] {
  const { stretches } = phrases
  const { seconds, after } = passage
  const isEnd = after === undefined
  const pairs = Math.max(1, Math.min(stretches.length, Math.floor((seconds - (isEnd ? 12 : 0)) / 40)))
  const each = (seconds - (isEnd ? 10 : 0)) / (2 * pairs)
  const order = deck.order(stretches.map(([first]) => first))
  const wishes: Wish[] = []
  for (let pair = 0; pair < pairs; pair++) {
    const [first, other] = stretches.find(([one]) => one === order[pair])!
    for (const [side, text] of [first, other].entries())
      wishes.push({ passage, wordings: [{ text }], at: (2 * pair + side) * each + 7, reach: 6, rank: 8 })
  }
  if (isEnd) wishes.push({ passage, wordings: deck.order(phrases.thanks).map((text) => ({ text })), at: seconds - 4, reach: 3, rank: 9 })
  return wishes
}
