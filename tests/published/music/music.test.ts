import { BEAT_TOLERANCE_MS } from '#engine/alignment/alignChange.ts'
import { driftCounts } from '#engine/alignment/tempoError.ts'
import { cadenceOnBeat } from '#engine/cadence/playCadence.ts'
import { countAt, gridOfTempo, secondAt } from '#plan/beatGrid.ts'
import { checkRows } from '#tests/support/publishedRows.ts'
import { EIGHT, PHRASE } from '#units/units.ts'
import rows from './rows.json' with { type: 'json' }

interface Inputs {
  bpm: number
  strikes: number
  true_bpm: number
  assumed_bpm: number
  minutes: number
}

const BAR = 4
const seconds = (bpm: number, counts: number): number => secondAt(gridOfTempo(bpm), counts)
/** Rounded half up, as the table of eights is. */
const to = (decimals: number, value: number): number => Math.round(value * 10 ** decimals) / 10 ** decimals

checkRows('music', rows, {
  'music.1': ({ bpm }: Inputs) => [1, BAR, EIGHT, PHRASE].map((counts) => seconds(bpm, counts)),
  'music.bacon': ({ bpm }: Inputs) => cadenceOnBeat(bpm, 1),
  'music.onerev': ({ bpm }: Inputs) => cadenceOnBeat(bpm, 2),
  'music.drift': ({ true_bpm, assumed_bpm, minutes }: Inputs) => driftCounts(true_bpm, assumed_bpm, minutes * 60),
  'mir.tol': () => BEAT_TOLERANCE_MS / 1000,
  'mir.share': ({ bpm }: Inputs) => countAt(gridOfTempo(bpm), BEAT_TOLERANCE_MS / 1000),
  'practice.eights': ({ bpm }: Inputs) => [
    to(2, seconds(bpm, EIGHT)),
    to(1, seconds(bpm, PHRASE)),
    to(0, seconds(bpm, 2 * PHRASE)),
    to(1, countAt(gridOfTempo(bpm), 60) / EIGHT),
  ],
  'practice.half': ({ bpm, strikes }: Inputs) => cadenceOnBeat(bpm, strikes),
  'practice.double': ({ bpm, strikes }: Inputs) => cadenceOnBeat(bpm, strikes),
})
