import { countWords } from '#engine/cues/countWords.ts'
import type { Ride } from '#plan/model.ts'
import { callWording } from './callWording.ts'
import type { Deck } from './deck.ts'
import { bareSeconds, capital, sayEffort, sayLength } from './numbersSaid.ts'
import { type Kind, moveKey, type Passage } from './passage.ts'
import { SHORT_POINTS } from './phrases/points.ts'
import { TAILS } from './phrases/tails.ts'
import { DRINKS } from './phrases/talk.ts'
import { suits } from './suits.ts'

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
export function announcing(passage: Passage, ride: Ride, deck: Deck): Wording[] {
  const openings = openingsOf(passage, ride, deck)
  const foot = footWords(passage, deck)
  const water = passage.block.water ? deck.order(DRINKS).slice(0, 2) : []
  const endings = endingsOf(passage, deck).slice(0, TRIED)
  const said: Wording[] = []
  const add = (...phrases: readonly string[]) => {
    const kept = phrases.filter((phrase) => phrase !== '')
    const text = kept.join(' ')
    if (text !== '' && suits(text, passage) && !said.some((one) => one.text === text)) said.push({ text, phrases: kept })
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
    (a, b) => over(a) + 20 * lacking(passage, a) + deck.uses(a.text) - over(b) - 20 * lacking(passage, b) - deck.uses(b.text),
  )
}

/** The same, those first that tell what has to be told in the fewest words. */
export const barest = (passage: Passage, wordings: readonly Wording[]): Wording[] =>
  wordings.toSorted((a, b) => 5 * lacking(passage, a) + countWords(a.text) - 5 * lacking(passage, b) - countWords(b.text))

/** What is this hard is told how long it is, whatever else is left out. */
const HARD = 7.5
const LENGTH = /\b(?:seconds?|minutes?|counts)\b/
const BODY = /\b(?:hips?|hands?|shoulders?|elbows?|knees?|land|chest)\b/i

/** Whether a text says how a body does it. */
export const tellsBody = (text: string): boolean => BODY.test(text)

/** How much of what has to be told is missing: how long an effort is, how a new move is held, that riders drink. */
function lacking({ load, isEffort, isNew, block }: Passage, { text }: Wording): number {
  const length = isEffort && load.to >= HARD && !LENGTH.test(text)
  const form = isNew && block.move !== undefined && !BODY.test(text)
  const water = block.water === true && !DRINKS.some((drink) => text.includes(drink))
  return Number(length) + 2 * Number(form) + Number(water)
}

/** How many words the block before has room for: a short one is full of its own calls. */
function wordsFor({ before }: Passage): number {
  const room = before ? before.to - before.from : Number.POSITIVE_INFINITY
  return room < 22 ? 7 : room < 30 ? 10 : 15
}

/** Resistance and posture in one breath, resistance first. */
function openingsOf(passage: Passage, ride: Ride, deck: Deck): string[] {
  const call = callWording(passage, ride)
  // Counted as whole sentences, which is how they are said most.
  const turns = deck.order(call.wordings.map((turn) => `${turn}.`)).map((turn) => turn.slice(0, -1))
  if (passage.opens === 'class') {
    const bases = deck.order(['Find your base.', 'Start at your base.', 'Base first.', 'Set your base.'])
    return call.turn === 'down'
      ? turns.map((turn) => `${turn}.`)
      : bases.map((base, at) => (turns.length > 0 ? `${base} ${turns[at % turns.length]}.` : base))
  }
  const posture = postureWords(passage)
  // The same knob, and yet something new begins.
  if (posture === null && turns.length === 0 && passage.isEffort) return deck.order(BEGINS[passage.kind] ?? [])
  if (posture === null) return turns.map((turn) => `${turn}.`)
  if (turns.length === 0) return deck.order(posture.alone)
  const joined = deck.order(posture.after).flatMap((after) => turns.map((turn) => `${turn}${after}`))
  const parted = posture.first ? deck.order(posture.alone).flatMap((alone) => turns.map((turn) => `${alone} ${turn}.`)) : []
  return [...deck.order([...parted.slice(0, 3), ...joined.slice(0, 3)]), ...joined, ...parted]
}

/** What a block is called in where neither knob nor posture changes. */
const BEGINS: Partial<Record<Kind, readonly string[]>> = {
  push: ['Push now.', 'Here is the push.', 'And push.'],
  surge: ['Surge now.', 'Here is the surge.', 'And surge.'],
  hold: ['Hold now.', 'Here is the hold.'],
  tempo: ['Tempo now.', 'Same gear.'],
  climb: ['Same gear.', 'Stay on the hill.'],
}

interface PostureWords {
  alone: readonly string[]
  /** With the resistance before it. */
  after: readonly string[]
  /** Whether it may come before the resistance: sitting may, standing may not. */
  first: boolean
}

function postureWords({ block, change, kind, before, isNew }: Passage): PostureWords | null {
  const named = moveWords({ block, kind })
  // Where there is time for hardly a word, how it is held matters more than how long each half is.
  const move = named && isNew ? [...named, ...heldWords(block)] : named
  if (!change?.kinds.includes('posture'))
    return change?.kinds.includes('move') && move ? { alone: move, after: move.map((one) => `. ${one}`), first: false } : null
  if (kind === 'jumps' || kind === 'move') {
    const words = move ?? []
    return { alone: words, after: words.map((one) => `. ${one}`), first: false }
  }
  switch (block.posture) {
    case 'seated':
      return {
        alone: ['Sit.', 'Have a seat.', 'Back to the saddle.', 'Take a seat.', 'And sit.'],
        after: [' and sit.', ', back to the saddle.', ', then have a seat.'],
        first: true,
      }
    case 'standing':
      if (before?.block.posture === 'hovering')
        return { alone: ['Stand tall.', 'And rise.', 'Up tall.'], after: [', then stand tall.', ' and rise.', ', up tall.'], first: false }
      return {
        alone: ['Up out of the saddle.', 'And rise.', 'Stand tall.', 'Come on up.', 'Up we go.', 'Rise up tall.'],
        after: [', then up.', ' and rise.', ' and stand tall.', ', then stand.', ', then come on up.', ', up out of the saddle.'],
        first: false,
      }
    case 'hovering':
      return {
        alone: ['Hips just off the saddle.', 'Hover low.'],
        after: [', then hover low.', ', hips just off the saddle.'],
        first: false,
      }
    case 'offBike':
      return { alone: ['Off the bike.'], after: ['. Off the bike.'], first: false }
  }
}

const heldWords = (block: Passage['block']): string[] => {
  const name = moveKey(block)
  const [point] = SHORT_POINTS.find(([move]) => move.test(name))?.[1] ?? ['Hands light.']
  return [`${capital(plural(name))}, ${point!.charAt(0).toLowerCase()}${point!.slice(1)}`]
}

/** What a move is called, with its counts. */
function moveWords({ block, kind }: Pick<Passage, 'block' | 'kind'>): string[] | null {
  const { move } = block
  if (kind === 'jumps') {
    if (!move) return ['Jumps.', 'Into the jumps.', 'Time to jump.']
    const counts = sayCounts(move.counts)
    return [
      `Jumps, ${counts} up, ${counts} down.`,
      `Jumps on ${plural(counts)}.`,
      `${capital(counts)} up, ${counts} down.`,
      `Up for ${counts}, down for ${counts}.`,
    ]
  }
  if (!move) return null
  const counts = sayCounts(move.counts)
  const name = moveKey(block)
  const names = plural(name)
  if (move.then === 'alternate' || /lean|sway/.test(name)) {
    const [one, other] = move.side === 'right' ? ['right', 'left'] : ['left', 'right']
    return [
      `${capital(names)}, ${counts} ${one}, ${counts} ${other}.`,
      `${capital(counts)} ${one}, ${counts} ${other}.`,
      `${capital(names)} on ${plural(counts)}.`,
    ]
  }
  return [`${capital(names)} on ${plural(counts)}.`, `${capital(names)}, every ${counts} counts.`, `Into ${names}, on ${plural(counts)}.`]
}

const COUNT_WORDS: Readonly<Record<number, string>> = {
  2: 'two',
  4: 'four',
  6: 'six',
  8: 'eight',
  12: 'twelve',
  16: 'sixteen',
  24: 'twenty-four',
  32: 'thirty-two',
}
const sayCounts = (counts: number): string => COUNT_WORDS[counts] ?? String(counts)
const plural = (word: string): string => (/(?:s|sh|ch|x)$/.test(word) ? `${word}es` : `${word}s`)

/** The foot where it has to be said. */
function footWords({ times, opens, change, block }: Passage, deck: Deck): string {
  const [played] = times
  const foot = played!.foot
  if (change?.kinds.includes('foot') && block.lead === 'swap') {
    if (times.length > 1 || foot === null) return deck.order(['Swap the lead foot.', 'Switch your lead foot.'])[0]!
    return deck.order([`${capital(foot)} foot leads now.`, `Switch to the ${foot} foot.`, `Now the ${foot} foot leads.`])[0]!
  }
  if (opens === null || !played!.footSpoken || foot === null) return ''
  return deck.order([
    `${capital(foot)} foot leads.`,
    `${capital(foot)} foot on beat one.`,
    `${capital(foot)} foot takes the downbeat.`,
    `Lead with the ${foot}.`,
    `Find the beat, ${foot} foot first.`,
    `${capital(foot)} foot first.`,
  ])[0]!
}

/** How a call may end: an effort says how long, how hard, and how many are left; the rest says how it rides. */
function endingsOf(passage: Passage, deck: Deck): string[] {
  const { kind, isEffort, isNew, block } = passage
  const tails = deck.order(TAILS[kind].filter((tail) => suits(tail, passage)))
  if (isEffort) {
    const held = isNew && block.move ? deck.order(SHORT_POINTS.find(([move]) => move.test(moveKey(block)))?.[1] ?? ['Hands light.']) : []
    const lengths = deck.order(lengthWords(passage).filter((text) => suits(text, passage)))
    const rows = rowWords(passage)
    // A new move is shown before it is timed.
    if (held.length > 0) return [`${held[0]} ${plainLengths(passage)[0]}`, ...held]
    return [...lengths.slice(0, 2), ...rows.slice(0, 1), ...deck.order(plainLengths(passage)).slice(0, 2), ...tails.slice(0, 1)]
  }
  if (block.effort.to > block.effort.from) return [...deck.order(buildWords(passage)), ...tails.slice(0, 1)]
  if (kind === 'recover' && passage.seconds < 100) return deck.order([...tails.slice(0, 3), ...restWords(passage)])
  return tails
}

/** "Thirty seconds, an eight out of ten." and ways to say less. */
function lengthWords({ seconds, load, times, block }: Passage): string[] {
  const length = sayLength(seconds)
  if (block.effort.to > block.effort.from)
    return [
      `${capital(length)}, building to ${sayEffort(load.to)} out of ten.`,
      `Build it for ${length}, up to ${sayEffort(load.to)} out of ten.`,
    ]
  const effort = sayEffort(load.to)
  const counts = times[0]!.countTo !== undefined ? times[0]!.countTo - times[0]!.countFrom! : undefined
  return [
    `${capital(length)}, ${effort} out of ten.`,
    `${capital(length)} at ${effort} out of ten.`,
    `Hold it ${length}, ${effort} out of ten.`,
    ...(seconds < 58 ? [`${capital(effort)} out of ten for ${length}.`] : []),
    ...(counts === 32 || counts === 64 ? [`${counts === 32 ? 'Thirty-two' : 'Sixty-four'} counts, ${effort} out of ten.`] : []),
  ]
}

/** A block that gets harder as it goes. */
const buildWords = ({ load }: Passage): string[] => [
  `Build it, up to ${sayEffort(load.to)} out of ten.`,
  'Let it build with the music.',
  'A little more every phrase.',
  `Build to ${sayEffort(load.to)} out of ten.`,
  'Hold back, then let it go.',
  'Grow with the song.',
]

const plainLengths = ({ seconds }: Passage): string[] => {
  const length = sayLength(seconds)
  return [`${capital(length)}.`, `Hold it ${length}.`]
}

const ORDINALS = ['', 'First', 'Second', 'Third', 'Fourth', 'Fifth', 'Sixth']

function rowWords({ row, seconds, kind, block }: Passage): string[] {
  if (row === null || row.of < 2 || row.place > 6) return []
  const length = sayLength(seconds)
  const isLast = row.place === row.of
  if (kind !== 'surge' && kind !== 'push') return isLast && block.posture === 'standing' ? [`Last time up, ${length}.`] : []
  if (isLast) return [`Last one, ${length}.`, 'Last one of these.']
  const of = ['', 'one', 'two', 'three', 'four', 'five', 'six'][row.of] ?? String(row.of)
  return [`${ORDINALS[row.place]} of ${of}, ${length}.`]
}

/** How long riders have to get their breath back. */
const restWords = ({ seconds }: Passage): string[] => {
  const length = sayLength(seconds)
  return seconds < 57
    ? [`${capital(length)} easy.`, `You get ${length}.`, `Take ${bareSeconds(seconds)} easy seconds.`]
    : [`${capital(length)} easy.`]
}
