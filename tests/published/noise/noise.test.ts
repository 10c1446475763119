import { allowedMinutes, averageLevel, doseOfProjection, MEASURED_CLASS_LEVEL, noiseDose, weeklyShare } from '#engine/hearing/noiseDose.ts'
import { checkRows } from '#tests/support/publishedRows.ts'
import rows from './rows.json' with { type: 'json' }

interface Inputs {
  dBA: number
  minutes: number
  dose_percent: number
  projected: number
}

checkRows('noise', rows, {
  'niosh.T.': ({ dBA }: Inputs) => allowedMinutes(dBA),
  'niosh.D.': ({ dBA, minutes }: Inputs) => noiseDose(dBA, minutes),
  'niosh.3classes': () => 3 * noiseDose(MEASURED_CLASS_LEVEL, 50),
  'niosh.TWA': ({ dose_percent }: Inputs) => averageLevel(dose_percent),
  'who.weekly': ({ dBA, minutes }: Inputs) => weeklyShare(dBA, minutes),
  'noise.beach': () => MEASURED_CLASS_LEVEL,
  'noise.katz': ({ projected, minutes }: Inputs) => doseOfProjection(projected, minutes),
})
