import { callWords } from '#engine/cues/callWords.ts'
import type { RideReport } from '#engine/report.ts'
import { moveWords, ofMove } from '#engine/roughIn/words/announcing.ts'
import { loadOf } from '#engine/roughIn/words/load.ts'
import { kindOf, moveKey } from '#engine/roughIn/words/passage.ts'
import { suits } from '#engine/roughIn/words/suits.ts'
import type { Where } from '#engine/roughIn/words/voice.ts'
import { voiceOf } from '#engine/roughIn/words/voiceOf.ts'
import type { CueMoment, Ride } from '#plan/model.ts'
import type { Seconds } from '#units/units.ts'
import type { TradeCue } from './completeCue.ts'

type Planned = Pick<RideReport, 'blocks' | 'cues' | 'riders'>

/** What speaks for words of the trade beside what was said before (see completeCue). Judgement, no source. */
const FITS = { call: 9, ahead: 5, move: 5, drink: 4, point: 3, left: 3, tail: 2, seat: 2, halfway: 2, cheer: 1 } as const

/** Shorter than this a block has no halfway, and nothing left of it is told. */
const LONG: Seconds = 30

/**
 * Words of the trade that are true at a played block, in the language of its ride: its call in the ledger's words, the
 * posture, a new move, how long it is, how it rides; and inside it form, what is left, and a word to go on by.
 *
 * @param index into the report's blocks
 */
export function tradeCues(ride: Ride, report: Planned, index: number): TradeCue[] {
  const played = report.blocks[index]!
  const { block, from, to } = played
  const voice = voiceOf(ride)
  const { phrases, calls } = voice
  const kind = kindOf(block)
  const before = report.blocks.findLast((other) => other.index < index && other.to > other.from)
  const change = report.cues.changes.find((one) => one.block === index)
  const isLast = played.section === report.blocks.findLast((other) => other.to > other.from)!.section
  const demands = report.riders.find(({ reference }) => reference)?.demand ?? []
  const load = loadOf(ride, played, demands[index]?.mean ?? null)
  // Nobody has said what the song is for; the first is where legs wake up.
  const where: Where = {
    ...{ load, kind, block, isLast, before },
    onBeat: played.strikesPerBeat !== null,
    role: played.section === 0 ? 'warmUp' : 'work',
  }
  const found: TradeCue[] = []
  const add = (moment: CueMoment, fits: number, texts: readonly string[]) => {
    for (const text of texts) if (suits(text, where, voice) && !found.some((one) => one.text === text)) found.push({ text, moment, fits })
  }
  const call = change ? callWords(ride, report.blocks, change) : ''
  if (call !== '') found.push({ text: call, moment: 'announce', fits: FITS.call })
  if (change?.kinds.includes('posture')) add('announce', FITS.ahead, calls.posture(block.posture, before?.block.posture).alone)
  if (change?.kinds.includes('move')) add('announce', FITS.move, moveWords({ block, kind }, voice) ?? [])
  if (load.to >= 6) {
    const counts = 'counts' in block.length ? block.length.counts : undefined
    add(
      'announce',
      FITS.ahead - 1,
      calls.lengths({ seconds: to - from, effort: load.to, builds: block.effort.to > block.effort.from, counts }),
    )
  }
  add('action', FITS.ahead - 1, calls.begins[kind] ?? [])
  add('announce', FITS.tail, phrases.tails[kind])
  if (block.move) add('form', FITS.move, ofMove(phrases.movePoints, moveKey(block)) ?? phrases.anyMove)
  if (block.water) add('form', FITS.drink, phrases.drinks)
  add('form', FITS.point, phrases.points[kind])
  if (to - from >= LONG) {
    if (played.countTo !== undefined)
      add(
        'form',
        FITS.left,
        calls.countsLeft.flatMap(([, texts]) => texts),
      )
    add(
      'form',
      FITS.left,
      [10, 20].flatMap((left) => calls.secondsLeft(left)),
    )
    add('form', FITS.halfway, phrases.halfway(block.posture === 'seated'))
  }
  if (block.posture !== 'seated') add('form', FITS.seat, phrases.seats)
  add('form', FITS.cheer, kind === 'recover' || kind === 'flush' ? phrases.calm : phrases.cheer)
  return found
}
