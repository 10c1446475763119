import { alignChange } from '#engine/alignment/alignChange.ts'
import { computeRide } from '#engine/computeRide.ts'
import type { StrikesPerBeat } from '#plan/model.ts'
import { countAt, gridOfTempo, secondAt } from '#plan/songs/beatGrid.ts'
import { checkRows } from '#tests/support/publishedRows.ts'
import { aBlock, aSection, aSong, smallRide } from '#tests/support/smallRide.ts'
import { EIGHT, PHRASE } from '#units/units.ts'
import rows from './rows.json' with { type: 'json' }

interface Inputs {
  bpm: number
  strikes: StrikesPerBeat
  true_bpm: number
  assumed_bpm: number
  minutes: number
}

const BAR = 4
const seconds = (bpm: number, counts: number): number => secondAt(gridOfTempo(bpm), counts)
/** Rounded half up, as the table of eights is. */
const to = (decimals: number, value: number): number => Math.round(value * 10 ** decimals) / 10 ** decimals

/** The cadence the page gives a block under a song. */
function cadence(bpm: number, strikesPerBeat: StrikesPerBeat): number {
  const section = aSection('s', { song: aSong('m', { grid: gridOfTempo(bpm), strikesPerBeat }), blocks: [aBlock('b')] })
  const { cadence } = computeRide({ ...smallRide(), sections: [section] }).blocks[0]!
  return cadence.kind === 'turning' ? cadence.from : Number.NaN
}

/** The most by which a change may miss a count and still be said to meet it, to a ten-thousandth of a count. */
function widestMiss(bpm: number): number {
  const unit = { eight: EIGHT, phrase: PHRASE, name: 'eight' } as const
  const misses = Array.from({ length: 5000 }, (_, i) => i / 10_000)
  return misses.findLast((miss) => alignChange(gridOfTempo(bpm), 1 + miss, unit).grade === 'count')!
}

checkRows('music', rows, {
  'music.1': ({ bpm }: Inputs) => [1, BAR, EIGHT, PHRASE].map((counts) => seconds(bpm, counts)),
  'music.bacon': ({ bpm }: Inputs) => cadence(bpm, 1),
  'music.onerev': ({ bpm }: Inputs) => cadence(bpm, 2),
  'music.drift': ({ true_bpm, assumed_bpm, minutes }: Inputs) =>
    countAt(gridOfTempo(assumed_bpm), minutes * 60) - countAt(gridOfTempo(true_bpm), minutes * 60),
  // At 60 beats a minute a count is a second, and its thousandths are milliseconds.
  'mir.tol': () => to(3, widestMiss(60)),
  'mir.share': ({ bpm }: Inputs, { expected }) => (Math.abs(widestMiss(bpm) - (expected as number)) < 1e-4 ? expected : null),
  'practice.eights': ({ bpm }: Inputs) => [
    to(2, seconds(bpm, EIGHT)),
    to(1, seconds(bpm, PHRASE)),
    to(0, seconds(bpm, 2 * PHRASE)),
    to(1, countAt(gridOfTempo(bpm), 60) / EIGHT),
  ],
  'practice.half': ({ bpm, strikes }: Inputs) => cadence(bpm, strikes),
  'practice.double': ({ bpm, strikes }: Inputs) => cadence(bpm, strikes),
})
