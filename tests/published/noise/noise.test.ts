import { expect, it } from 'vitest'
import { allowedMinutes, MEASURED_CLASS_LEVEL, noiseDose, weeklyShare } from '#engine/hearing/noiseDose.ts'
import { bisect } from '#engine/response/relaxation.ts'
import { checkRows } from '#tests/support/publishedRows.ts'
import { averageLevel } from '#tests/support/reference/noise.ts'
import rows from './rows.json' with { type: 'json' }

interface Inputs {
  dBA: number
  minutes: number
  dose_percent: number
  projected: number
}

/** The steady level of eight hours that makes a dose: what the page says, read backwards. */
const levelOf = (dose: number) => bisect((level) => noiseDose(level, 480) - dose, 0, 200)

checkRows(
  'noise',
  rows,
  {
    'niosh.T.': ({ dBA }: Inputs) => allowedMinutes(dBA),
    'niosh.D.': ({ dBA, minutes }: Inputs) => noiseDose(dBA, minutes),
    'niosh.3classes': () => 3 * noiseDose(MEASURED_CLASS_LEVEL, 50),
    'who.weekly': ({ dBA, minutes }: Inputs) => weeklyShare(dBA, minutes),
    'noise.beach': () => MEASURED_CLASS_LEVEL,
    'noise.katz': ({ projected, minutes }: Inputs) => noiseDose(levelOf(projected), minutes),
  },
  { 'niosh.TWA': ({ dose_percent }: Inputs) => averageLevel(dose_percent) },
)

it('agrees with the yardstick, whose 3 dB are the 3.01 of twice the energy, to the tenth of a decibel', () => {
  for (const dose of [25, 50, 100, 200, 400]) expect(Math.abs(levelOf(dose) - averageLevel(dose))).toBeLessThan(0.1)
})
