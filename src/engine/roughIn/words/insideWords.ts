import type { Ride } from '#plan/model.ts'
import type { Seconds } from '#units/units.ts'
import type { Deck } from './deck.ts'
import { bareSeconds, capital } from './numbersSaid.ts'
import { moveKey, type Passage } from './passage.ts'
import { ANY_MOVE, MOVE_POINTS, POINTS } from './phrases/points.ts'
import { BASICS, CALM, CHEER, FEELS, STRETCHES, THANKS } from './phrases/talk.ts'
import { suits } from './suits.ts'

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
export function insideWords(passage: Passage, ride: Ride, state: SectionState, deck: Deck): Wish[] {
  const { kind, seconds } = passage
  if (kind === 'stretch') return stretching(passage, deck)
  if (seconds < SHORT) return []
  const wishes: Wish[] = []
  const add = (rank: number, at: Seconds, reach: Seconds, texts: readonly (string | { text: string; left?: Seconds })[]) => {
    const wordings = texts.map((one) => (typeof one === 'string' ? { text: one } : one)).filter(({ text }) => suits(text, passage))
    if (wordings.length > 0) wishes.push({ passage, wordings, at, reach, rank })
  }
  if (passage.opens === 'class') {
    const basics = deck.order(BASICS)
    add(9, seconds * 0.3, seconds * 0.2, basics)
    add(8, seconds * 0.62, seconds * 0.2, basics)
  }
  if (passage.isNew && passage.block.move) add(10, Math.min(seconds * 0.4, 12), seconds * 0.6, movePoints(passage, deck))
  const seat = seatWords(passage, state, ride, deck)
  if (seat.length > 0 && seconds >= 18) {
    state.seatOffered = true
    add(6, seconds * 0.35, seconds * 0.25, seat)
  }
  if (passage.after === undefined) add(9, seconds - 4, 6, deck.order(THANKS))
  if (passage.kind === 'hold') add(8, Math.min(seconds * 0.4, 10), seconds * 0.4, deck.order(POINTS.hold))
  if (passage.isEffort) effortWords(passage, deck, add)
  else fill(passage, deck, add)
  return wishes
}

type Add = (rank: number, at: Seconds, reach: Seconds, texts: readonly (string | { text: string; left?: Seconds })[]) => void

function movePoints({ block }: Passage, deck: Deck): string[] {
  const key = moveKey(block)
  return deck.order(MOVE_POINTS.find(([move]) => move.test(key))?.[1] ?? ANY_MOVE)
}

/** Once a song riders are told that the saddle is theirs. */
function seatWords({ block, kind, isNew }: Passage, state: SectionState, _ride: Ride, deck: Deck): string[] {
  if (state.seatOffered || block.posture === 'seated' || isNew || kind === 'jumps') return []
  return deck.order([
    'Or stay seated, same load.',
    'Seated works too.',
    'The saddle is always there.',
    'You can take this one seated.',
    'Option: stay in the saddle.',
    'Sit whenever you need to.',
    'Staying seated is fine.',
  ])
}

/** A form point early, where they are in the middle, and a last call. */
function effortWords(passage: Passage, deck: Deck, add: Add): void {
  const { kind, seconds, load } = passage
  const points = deck.order(POINTS[kind])
  if (!passage.isNew) add(5, Math.min(seconds * 0.4, 14), seconds * 0.2, points)
  if (seconds >= LONG_EFFORT)
    add(
      4,
      seconds / 2,
      seconds * 0.05,
      deck.order(
        ['Halfway.', 'Halfway there.', 'Halfway, hold it.', 'Halfway, same again.', 'Halfway. Stay tall.', 'That is half of it.'].filter(
          (text) => !/tall/.test(text) || passage.block.posture !== 'seated',
        ),
      ),
    )
  if (seconds >= 20) add(7, seconds - 10, seconds, lastCalls(passage, deck))
  if (seconds >= 60) add(3, seconds * 0.7, seconds * 0.1, deck.order([...CHEER, ...feelWords(passage)]))
  if (seconds >= 30 && load.to >= 6) add(2, seconds * 0.6, seconds * 0.12, deck.order(CHEER))
}

/** "Last eight", "ten seconds": what is left of an effort, by counts on the beat and else by the clock. */
function lastCalls({ times, seconds }: Passage, deck: Deck): { text: string; left: Seconds }[] {
  const [played] = times
  const counted = played!.countTo !== undefined
  const count = counted ? (played!.to - played!.from) / (played!.countTo! - played!.countFrom!) : undefined
  const called: { text: string; left: Seconds }[] = []
  if (count !== undefined) {
    for (const [counts, words] of [
      [16, ['Last sixteen.', 'Sixteen more.', 'Last two eights.', 'Two eights left.']],
      [24, ['Three eights left.', 'Last three eights.']],
      [8, ['Last eight.', 'Eight more.']],
    ] as const)
      if (counts * count < seconds * 0.55) for (const text of deck.order(words)) called.push({ text, left: counts * count })
  }
  for (const left of [10, 15]) {
    if (left < seconds * 0.55) {
      const number = bareSeconds(left)
      for (const text of deck.order([
        `${capital(number)} seconds.`,
        `${capital(number)} more seconds.`,
        `${capital(number)} seconds left.`,
        `Last ${number} seconds.`,
      ]))
        called.push({ text, left })
    }
  }
  return deck.order(called.map(({ text }) => text)).map((text) => called.find((one) => one.text === text)!)
}

/** What may be said in the middle of a block that is no effort. */
function fill(passage: Passage, deck: Deck, add: Add): void {
  const { seconds, kind, after } = passage
  const isCalm = kind === 'recover' || kind === 'flush'
  const room = seconds - 12
  const wanted = Math.min(5, Math.floor(room / EVERY))
  const points = [...POINTS[kind]]
  for (let at = 0; at < wanted; at++) {
    const where = 8 + ((at + 0.5) * room) / wanted
    const texts = isCalm && at % 2 === 0 ? CALM : at % 3 === 1 ? [...feelWords(passage), ...points] : points
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
        const number = bareSeconds(left)
        add(
          4,
          seconds - left,
          3,
          deck
            .order([
              `${capital(number)} more seconds, then we stand.`,
              `${capital(number)} seconds, then out of the saddle.`,
              `In ${number} seconds we rise.`,
            ])
            .map((text) => ({ text, left })),
        )
        break
      }
}

/** The feel as a sentence. */
const feelWords = ({ kind }: Passage): string[] =>
  FEELS[kind].filter((feel) => feel.split(' ').length <= 7).map((feel) => `${capital(feel)}.`)

/** Stretches side by side, as long on either, and thanks at the very end. */
function stretching(passage: Passage, deck: Deck): Wish[] {
  const { seconds, after } = passage
  const isEnd = after === undefined
  const pairs = Math.max(1, Math.min(STRETCHES.length, Math.floor((seconds - (isEnd ? 12 : 0)) / 40)))
  const each = (seconds - (isEnd ? 10 : 0)) / (2 * pairs)
  const order = deck.order(STRETCHES.map(([first]) => first))
  const wishes: Wish[] = []
  for (let pair = 0; pair < pairs; pair++) {
    const [first, other] = STRETCHES.find(([one]) => one === order[pair])!
    for (const [side, text] of [first, other].entries())
      wishes.push({ passage, wordings: [{ text }], at: (2 * pair + side) * each + 7, reach: 6, rank: 8 })
  }
  if (isEnd) wishes.push({ passage, wordings: deck.order(THANKS).map((text) => ({ text })), at: seconds - 4, reach: 3, rank: 9 })
  return wishes
}
