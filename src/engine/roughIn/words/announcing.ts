import { countWords } from '#engine/cues/countWords.ts'
import type { Ride } from '#plan/model.ts'
import { callWording } from './callWording.ts'
import type { Deck } from './deck.ts'
import { moveKey, type Passage } from './passage.ts'
import { suits } from './suits.ts'
import type { OfMove, PostureWords, Voice } from './voice.ts'

/** A wording with the phrases it is made of, so that none of them comes again too soon. */
export interface Wording {
  text: string
  phrases: readonly string[]
}

/** Of each list no more are tried than this: the best are first. */
const TRIED = 6

/**
 * Ways to call a block, the fullest first: resistance, then posture, then foot and move, then how long and how hard or how
 * it feels; the last ones say only what has to be done.
 */
export function announcing(passage: Passage, ride: Ride, deck: Deck, voice: Voice): Wording[] {
  const openings = openingsOf(passage, ride, deck, voice)
  const foot = footWords(passage, deck, voice)
  const water = passage.block.water ? deck.order(voice.phrases.drinks).slice(0, 2) : []
  const endings = endingsOf(passage, deck, voice).slice(0, TRIED)
  const said: Wording[] = []
  const add = (...phrases: readonly string[]) => {
    const kept = phrases.filter((phrase) => phrase !== '')
    const text = kept.join(' ')
    if (text !== '' && suits(text, passage, voice) && !said.some((one) => one.text === text)) said.push({ text, phrases: kept })
  }
  // Where riders drink, that is what they are told besides the call.
  for (const ending of water.length > 0 ? water : endings) for (const opening of openings.slice(0, 2)) add(opening, foot, ending)
  for (const opening of openings) add(opening, foot)
  for (const opening of openings) add(opening, water[0] ?? '')
  for (const opening of openings) add(opening)
  if (openings.length === 0) for (const ending of water.length > 0 ? water : endings) add(foot, ending)
  const most = wordsFor(passage)
  const over = ({ text }: Wording): number => (countWords(text) > most ? countWords(text) : 0)
  return said.sort(
    (a, b) => over(a) + 20 * lacking(passage, a, voice) + deck.uses(a.text) - over(b) - 20 * lacking(passage, b, voice) - deck.uses(b.text),
  )
}

/** The same, those first that tell what has to be told in the fewest words. */
export const barest = (passage: Passage, wordings: readonly Wording[], voice: Voice): Wording[] =>
  wordings.toSorted((a, b) => 5 * lacking(passage, a, voice) + countWords(a.text) - 5 * lacking(passage, b, voice) - countWords(b.text))

/** What is this hard is told how long it is, whatever else is left out. */
const HARD = 7.5

/** How much of what has to be told is missing: how long an effort is, how a new move is held, that riders drink. */
function lacking({ load, isEffort, isNew, block }: Passage, { text }: Wording, { tells, phrases }: Voice): number {
  const length = isEffort && load.to >= HARD && !tells.length.test(text)
  const form = isNew && block.move !== undefined && !tells.form.test(text)
  const water = block.water === true && !phrases.drinks.some((drink) => text.includes(drink))
  return Number(length) + 2 * Number(form) + Number(water)
}

/** How many words the block before has room for: a short one is full of its own calls. */
function wordsFor({ before }: Passage): number {
  const room = before ? before.to - before.from : Number.POSITIVE_INFINITY
  return room < 22 ? 7 : room < 30 ? 10 : 15
}

/** Resistance and posture in one breath, resistance first. */
function openingsOf(passage: Passage, ride: Ride, deck: Deck, voice: Voice): string[] {
  const call = callWording(passage, ride, voice)
  // Counted as whole sentences, which is how they are said most.
  const turns = deck.order(call.wordings.map((turn) => `${turn}.`)).map((turn) => turn.slice(0, -1))
  if (passage.opens === 'class') {
    const bases = deck.order(voice.calls.bases)
    return call.turn === 'down'
      ? turns.map((turn) => `${turn}.`)
      : bases.map((base, at) => (turns.length > 0 ? `${base} ${turns[at % turns.length]}.` : base))
  }
  const posture = postureWords(passage, voice)
  // The same knob, and yet something new begins.
  if (posture === null && turns.length === 0 && passage.isEffort) return deck.order(voice.calls.begins[passage.kind] ?? [])
  if (posture === null) return turns.map((turn) => `${turn}.`)
  if (turns.length === 0) return deck.order(posture.alone)
  const joined = deck.order(posture.after).flatMap((after) => turns.map((turn) => `${turn}${after}`))
  const parted = posture.first ? deck.order(posture.alone).flatMap((alone) => turns.map((turn) => `${alone} ${turn}.`)) : []
  return [...deck.order([...parted.slice(0, 3), ...joined.slice(0, 3)]), ...joined, ...parted]
}

function postureWords({ block, change, kind, before, isNew }: Passage, voice: Voice): PostureWords | null {
  const named = moveWords({ block, kind }, voice)
  // Where there is time for hardly a word, how it is held matters more than how long each half is.
  const move = named && isNew ? [...named, heldWords(block, voice)] : named
  const asMove = (words: readonly string[]): PostureWords => ({ alone: words, after: words.map((one) => `. ${one}`), first: false })
  if (!change?.kinds.includes('posture')) return change?.kinds.includes('move') && move ? asMove(move) : null
  if (kind === 'jumps' || kind === 'move') return asMove(move ?? [])
  return voice.calls.posture(block.posture, before?.block.posture)
}

/** What a move is called, with its counts. */
export function moveWords({ block, kind }: Pick<Passage, 'block' | 'kind'>, { calls }: Voice): readonly string[] | null {
  const { move } = block
  if (kind === 'jumps') return calls.jumps(move?.counts)
  if (!move) return null
  const name = moveKey(block)
  const bothSides = move.then === 'alternate' || /lean|sway/.test(name)
  return calls.move({ name, counts: move.counts, bothSides, first: move.side === 'right' ? 'right' : 'left' })
}

const heldWords = (block: Passage['block'], voice: Voice): string => voice.calls.held(moveKey(block), shortPoints(block, voice)[0]!)

/** How a move is done, in a word or two. */
export const shortPoints = (block: Passage['block'], { phrases }: Voice): readonly string[] =>
  ofMove(phrases.shortPoints, moveKey(block)) ?? [phrases.anyShortPoint]

/** The phrases for a move; the first that names it is used. */
export const ofMove = (list: OfMove, name: string): readonly string[] | undefined => list.find(([move]) => move.test(name))?.[1]

/** The foot where it has to be said. */
function footWords({ times, opens, change, block }: Passage, deck: Deck, { calls }: Voice): string {
  const [played] = times
  const foot = played!.foot
  if (change?.kinds.includes('foot') && block.lead === 'swap')
    return deck.order(times.length > 1 || foot === null ? calls.swapFoot : calls.swapFootTo(foot))[0]!
  if (opens === null || !played!.footSpoken || foot === null) return ''
  return deck.order(calls.footLeads(foot))[0]!
}

/** How a call may end: an effort says how long, how hard, and how many are left; the rest says how it rides. */
function endingsOf(passage: Passage, deck: Deck, voice: Voice): string[] {
  const { kind, isEffort, isNew, block, seconds, load, times } = passage
  const { calls, phrases } = voice
  const tails = deck.order(phrases.tails[kind].filter((tail) => suits(tail, passage, voice)))
  const builds = block.effort.to > block.effort.from
  if (isEffort) {
    const held = isNew && block.move ? deck.order(shortPoints(block, voice)) : []
    const { countFrom, countTo } = times[0]!
    const counts = countTo === undefined ? undefined : countTo - countFrom!
    const lengths = deck.order(calls.lengths({ seconds, effort: load.to, builds, counts }).filter((text) => suits(text, passage, voice)))
    const rows = rowWords(passage, voice)
    // A new move is shown before it is timed.
    if (held.length > 0) return [`${held[0]} ${calls.plainLengths(seconds)[0]}`, ...held]
    return [...lengths.slice(0, 2), ...rows.slice(0, 1), ...deck.order(calls.plainLengths(seconds)).slice(0, 2), ...tails.slice(0, 1)]
  }
  if (builds) return [...deck.order(calls.builds(load.to)), ...tails.slice(0, 1)]
  if (kind === 'recover' && seconds < 100) return deck.order([...tails.slice(0, 3), ...calls.rests(seconds)])
  return tails
}

function rowWords({ row, seconds, kind, block }: Passage, { calls }: Voice): readonly string[] {
  if (row === null || row.of < 2 || row.place > 6) return []
  if (kind !== 'surge' && kind !== 'push') return row.place === row.of && block.posture === 'standing' ? calls.lastUp(seconds) : []
  return calls.placeOf(row.place, row.of, seconds)
}
