import { trainingImpulse } from '#engine/load/impulse.ts'
import { sessionLoad } from '#engine/load/sessionLoad.ts'
import { timeWeightedMean } from '#engine/load/timeWeightedMean.ts'
import { weeklyLoad } from '#engine/load/weeklyLoad.ts'
import { ZONE_WEIGHTS, zoneScore } from '#engine/load/zoneScore.ts'
import { checkRows } from '#tests/support/publishedRows.ts'
import rows from './rows.json' with { type: 'json' }

interface Inputs {
  rpe: number
  minutes: number
  daily: number[]
  minutes_in_zones: number[]
  hrr_fraction: number
  work: number[]
  recovery: number[]
}

checkRows('training load', rows, {
  'srpe.': ({ rpe, minutes }: Inputs) => sessionLoad(rpe, minutes),
  'foster.monotony': ({ daily }: Inputs) => weeklyLoad(daily).monotony,
  'foster.strain': ({ daily }: Inputs) => weeklyLoad(daily).strain,
  'edwards.1': ({ minutes_in_zones }: Inputs) => zoneScore(minutes_in_zones),
  'edwards.2': () => Object.fromEntries(ZONE_WEIGHTS.map((weight, i) => [`${50 + 10 * i}-${60 + 10 * i}`, weight])),
  'trimp.m.': ({ minutes, hrr_fraction }: Inputs) => trainingImpulse(minutes, hrr_fraction, 'men'),
  'trimp.f.': ({ minutes, hrr_fraction }: Inputs) => trainingImpulse(minutes, hrr_fraction, 'women'),
  'trimp.max.m': () => trainingImpulse(1, 1, 'men'),
  'cortis.meanppo': ({ work, recovery }: Inputs) => timeWeightedMean([...work, ...recovery].map((value) => ({ value, seconds: 180 }))),
})
