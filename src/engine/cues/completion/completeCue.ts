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
 * Cost: linear in what was said.
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
  const isOffered = (text: string) => !spoken.has(plain(text)) && matches(text, query)
  const ages = new Map<string, number>()
  const uses = new Map<string, { latest: SaidCue; points: number; count: number }>()
  for (const cue of said) {
    if (!ages.has(cue.rideId)) ages.set(cue.rideId, ages.size)
    if (!isOffered(cue.text)) continue
    const points = likeness(cue, here) + POINTS.recent * 0.5 ** (ages.get(cue.rideId)! / POINTS.halvesIn)
    const held = uses.get(plain(cue.text))
    if (held === undefined) uses.set(plain(cue.text), { latest: cue, points, count: 1 })
    else uses.set(plain(cue.text), { latest: held.latest, points: Math.max(held.points, points), count: held.count + 1 })
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

const likeness = (cue: SaidCue, { terrain, posture, move }: Here): number =>
  (cue.terrain === terrain ? POINTS.terrain : 0) +
  (cue.posture === posture ? POINTS.posture : 0) +
  (move !== undefined && cue.move === move.name ? POINTS.move : 0)

/** Words as they are compared: without capitals, accents, and signs. */
const wordsOf = (text: string): string[] =>
  text
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== '')

const plain = (text: string): string => wordsOf(text).join(' ')

/** Whether each typed word begins one of the text's, in their order. */
function matches(text: string, query: readonly string[]): boolean {
  const words = wordsOf(text)
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
