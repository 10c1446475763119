import { describe, expect, it } from 'vitest'
import { CONSTANTS } from '#engine/constants.ts'
import { wattsForUptake } from '#engine/demand/oxygenCost.ts'
import { constant } from '#engine/demand/quadratic.ts'
import { heartCurve } from '#engine/response/heartCurve.ts'
import { maximumOf } from '#engine/response/heartMaximum.ts'
import { heartRateAt } from '#engine/response/heartReserve.ts'
import { heartShareAt } from '#tests/support/heartShareAt.ts'
import { checkRows } from '#tests/support/publishedRows.ts'
import { heartMaximumFox, heartMaximumGellish, heartMaximumShare } from '#tests/support/reference/heartRate.ts'
import { steadily } from '#tests/support/reported.ts'
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

/** The share of the reserve at a heart rate: what the page shows, read backwards. */
function shareAt(beats: number, inputs: Inputs): number {
  const [none, all] = [heartRateAt(0, range(inputs)), heartRateAt(1, range(inputs))]
  return (beats - none) / (all - none)
}

/** The share of the heart-rate reserve the page settles at after an hour at an uptake. */
const settledAt = (uptake: number, vo2max: number) =>
  steadily({ watts: wattsForUptake(uptake, 70), minutes: 60, rider: { massKg: 70, vo2max } }).response.maximum.share

/** The uptake at which the page settles at a share: the line through two of them. */
function uptakeSettlingAt(share: number, vo2max: number): number {
  const [low, high] = [12, vo2max]
  const [atLow, atHigh] = [settledAt(low, vo2max), settledAt(high, vo2max)]
  return low + ((share - atLow) / (atHigh - atLow)) * (high - low)
}

/** Heart rate after a step up from a level, t seconds on. */
function stepped({ hr0, dhr, tau_s, td_s, t_s }: Inputs): number {
  const curve = heartCurve([{ from: td_s, to: 1000, share: constant(1) }], tau_s)
  return hr0 + dhr * heartShareAt(curve, t_s)
}

/** All and nothing turn about, until it repeats itself: the share at the end of the last time on and the last off. */
function alternated({ on_s, off_s, tau_s }: Inputs): { peak: number; trough: number } {
  const spans = Array.from({ length: 200 }, (_, i) => {
    const from = Math.floor(i / 2) * (on_s + off_s) + (i % 2) * on_s
    return { from, to: from + (i % 2 ? off_s : on_s), share: constant(i % 2 ? 0 : 1) }
  })
  const curve = heartCurve(spans, tau_s)
  return { peak: heartShareAt(curve, spans.at(-2)!.to), trough: heartShareAt(curve, spans.at(-1)!.to) }
}

checkRows(
  'heart rate',
  rows,
  {
    'hrmax.tanaka': ({ age }: Inputs) => maximumOf({ age }),
    karvonen: (inputs: Inputs) => heartRateAt(inputs.fraction, range(inputs)),
    'karvonen.inv': (inputs: Inputs) => 100 * shareAt(inputs.hr, inputs),
    'hrr.vo2r': ({ hrr_percent, vo2max }: Inputs) => uptakeSettlingAt(hrr_percent / 100, vo2max),
    // The engine holds the printed mean, rounded to whole seconds.
    'hr.tau.cycle': (_: Inputs, { expected }) => (Math.round(expected as number) === CONSTANTS.heartRateTau.default ? expected : null),
    'hr.step': stepped,
    'hr.square.peak': (inputs: Inputs) => alternated(inputs).peak,
    'hr.square.trough': (inputs: Inputs) => alternated(inputs).trough,
    'hr.2010': (inputs: Inputs) => alternated(inputs).peak,
  },
  {
    'hrmax.gellish': ({ age }: Inputs) => heartMaximumGellish(age),
    'hrmax.fox': ({ age }: Inputs) => heartMaximumFox(age),
    swain: ({ vo2max_percent }: Inputs) => heartMaximumShare(vo2max_percent),
  },
)

describe('the page agrees with the yardsticks', () => {
  it('on the highest heart rate, to the ten beats by which all such lines may be off', () => {
    for (let age = 20; age <= 70; age++) {
      for (const line of [heartMaximumGellish, heartMaximumFox]) expect(Math.abs(maximumOf({ age }) - line(age))).toBeLessThanOrEqual(10)
    }
  })

  it('on heart rates at the uptakes of a class, to ten beats as well', () => {
    const { rest, max } = { rest: 60, max: 180 }
    for (const percent of [60, 70, 80]) {
      const beats = heartRateAt(settledAt((percent / 100) * 40, 40), { rest, max })
      expect(Math.abs(beats - (heartMaximumShare(percent) / 100) * max)).toBeLessThanOrEqual(10)
    }
  })
})
