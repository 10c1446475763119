import { remembered } from '#engine/cues/remembered.ts'
import type { Block, CueMoment } from '#plan/model.ts'
import type { SaidCue } from './saidIn.ts'

/** Words of the trade that could be said at a block. */
export interface TradeCue {
  readonly text: string
  readonly moment: CueMoment
  /** How well they fit here, on the scale below: the block's own call most. */
  readonly fits: number
}

/** What typing is completed to. */
export interface Completion {
  readonly text: string
  readonly moment: CueMoment
  /** Whether this leader has said it before. */
  readonly said: boolean
}

type Here = Pick<Block, 'id' | 'terrain' | 'posture' | 'move' | 'cues'>

/**
 * What speaks for a text, in points: said before at all, said again and again (a doubling each), said lately (of rides ago,
 * halved), said at the same terrain, the same posture, the same move, and beginning with what was typed. Judgement, no source.
 */
const POINTS = { said: 2, doubling: 1, recent: 2, halvesIn: 4, terrain: 3, posture: 1, move: 4, beginning: 6, phrase: 2 } as const

/** A text that calls for the knob and is not this block's call comes after everything else that fits. */
const OTHER_CALL = -8

/**
 * What typing at a block is completed to, best first: each text once, none that the block says already, and only what has
 * every typed word as the beginning of one of its own, in their order. With nothing typed, what fits the block best.
 * Cost: linear in the texts that were said, each of which is read once.
 *
 * @param said by this leader, this ride first and then rides from the latest to the oldest
 * @param callsKnob whether a text calls for the knob, so that words for another block's resistance are not offered first
 */
export function completeCue(
  typed: string,
  here: Here,
  said: readonly SaidCue[],
  trade: readonly TradeCue[],
  callsKnob: (text: string) => boolean,
  most = 8,
): Completion[] {
  const query = wordsOf(typed)
  const spoken = new Set(here.cues.map(({ text }) => plain(text)))
  const isOffered = (text: string) => !spoken.has(plain(text)) && matches(wordsOf(text), query)
  const uses = new Map<string, { latest: SaidCue; points: number; count: number }>()
  for (const { plainly, spokenWords, said: uttered } of textsOf(said)) {
    if (spoken.has(plainly) || !matches(spokenWords, query)) continue
    const points = uttered.map(({ cue, age }) => likeness(cue, here) + POINTS.recent * 0.5 ** (age / POINTS.halvesIn))
    uses.set(plainly, { latest: uttered[0]!.cue, points: Math.max(...points), count: uttered.length })
  }
  const own = new Map(trade.filter(({ text }) => isOffered(text)).map((cue) => [plain(cue.text), cue]))
  const found = [
    ...[...uses].map(([key, { latest, points, count }]) => ({
      completion: { text: latest.text, moment: latest.moment, said: true },
      points: POINTS.said + points + POINTS.doubling * Math.log2(count) + (own.get(key)?.fits ?? 0),
      calls: !own.has(key),
    })),
    ...[...own].flatMap(([key, { text, moment, fits }]) =>
      uses.has(key) ? [] : [{ completion: { text, moment, said: false }, points: fits, calls: false }],
    ),
  ].map((one) => ({ ...one, points: one.points + nearness(one.completion.text, query) }))
  const best = found.sort((a, b) => b.points - a.points).slice(0, 4 * most)
  return best
    .map((one) => (one.calls && callsKnob(one.completion.text) ? { ...one, points: one.points + OTHER_CALL } : one))
    .sort((a, b) => b.points - a.points)
    .slice(0, most)
    .map(({ completion }) => completion)
}

/** A text as it was said again and again, the latest first. */
interface SaidText {
  readonly plainly: string
  readonly spokenWords: readonly string[]
  /** Each time, and how many rides ago. */
  readonly said: { readonly cue: SaidCue; readonly age: number }[]
}

const gathered = new WeakMap<readonly SaidCue[], readonly SaidText[]>()

/** What was said, text by text: thousands of cues are only put together when they change, and not at every key. */
function textsOf(said: readonly SaidCue[]): readonly SaidText[] {
  const held = gathered.get(said)
  if (held) return held
  const ages = new Map<string, number>()
  const texts = new Map<string, SaidText>()
  for (const cue of said) {
    const age = ages.get(cue.rideId) ?? ages.size
    ages.set(cue.rideId, age)
    const plainly = plain(cue.text)
    const text = texts.get(plainly)
    if (text) text.said.push({ cue, age })
    else texts.set(plainly, { plainly, spokenWords: wordsOf(cue.text), said: [{ cue, age }] })
  }
  const all = [...texts.values()]
  gathered.set(said, all)
  return all
}

const likeness = (cue: SaidCue, { terrain, posture, move }: Here): number =>
  (cue.terrain === terrain ? POINTS.terrain : 0) +
  (cue.posture === posture ? POINTS.posture : 0) +
  (move !== undefined && cue.move === move.name ? POINTS.move : 0)

/** Words as they are compared: without capitals, accents, and signs. The same text is said again and again. */
const wordsOf = remembered((text): readonly string[] =>
  text
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== ''),
)

const plain = remembered((text) => wordsOf(text).join(' '))

/** Whether each typed word begins one of the text's, in their order. */
export const isBegunBy = (text: string, typed: string): boolean => matches(wordsOf(text), wordsOf(typed))

function matches(words: readonly string[], query: readonly string[]): boolean {
  let at = 0
  for (const typed of query) {
    while (at < words.length && !words[at]!.startsWith(typed)) at++
    if (at++ >= words.length) return false
  }
  return true
}

/** What the very place of the typed words adds: at the beginning, or side by side. */
function nearness(text: string, query: readonly string[]): number {
  if (query.length === 0) return 0
  const [said, typed] = [` ${plain(text)}`, ` ${query.join(' ')}`]
  return said.startsWith(typed) ? POINTS.beginning : said.includes(typed) ? POINTS.phrase : 0
}
