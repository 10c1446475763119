import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { DEFAULT_RIDERS } from '#plan/defaults.ts'
import type { Ride } from '#plan/model.ts'
import type { Rider } from '#plan/riderModel.ts'
import { blocksOnly } from '#tests/support/reported.ts'
import { inSeconds } from '#tests/support/smallRide.ts'
import { told } from '#tests/support/told.ts'

const REGULAR = DEFAULT_RIDERS[1]!

/** Pushes of 30 s at 260 W with 45 s at 60 W between them: 4 and 8 steps of the knob. */
function pushes(many: number, rider: Partial<Rider> = {}): Ride {
  const blocks = Array.from({ length: 2 * many - 1 }, (_, i) => {
    const total = i % 2 ? 4 : 8
    return {
      ...inSeconds(i % 2 ? 45 : 30),
      label: i % 2 ? 'easy' : `push ${i / 2 + 1}`,
      cadence: { rpm: 80 },
      resistance: { kind: 'total', from: total, to: total },
    } as const
  })
  const ride = blocksOnly(blocks, { datum: 'loose', riders: [{ ...REGULAR, ...rider }] })
  return {
    ...ride,
    bike: {
      ...ride.bike,
      points: [
        [0, 60],
        [1, 60],
        [2, 260],
        [3, 460],
      ],
    },
  }
}

const found = (ride: Ride) => computeRide(ride).findings.filter(({ rule }) => rule.startsWith('reserveRunsOut'))

describe('a reserve that runs out', () => {
  it('is told where two of three models say so, as something that may be, with steps that help', () => {
    const ride = pushes(8)
    const [only, ...others] = found(ride)
    expect(others).toEqual([])
    expect(told(only!.text)).toMatch(
      /^The regular rider may run out of legs in “push 8” at \d:\d\d, by 2 of 3 models; .* less would get them through\.$/,
    )
    expect(told(only!.why)).toContain('three published recoveries')
    expect(found(only!.fixes[0]!.command.apply(ride))).toEqual([])
  })

  it('is not told where one model alone does, which the band holds', () => {
    const ride = pushes(8, { wPrime: 14_700 })
    const { reserve, band } = computeRide(ride).riders[0]!
    expect(reserve.byRecovery.map(({ minimum }) => minimum.share < 0.005)).toEqual([false, false, true])
    expect(band.lowestReserve.low).toBeLessThan(reserve.byRecovery[2]!.minimum.share)
    expect(found(ride)).toEqual([])
  })

  it('is told as sure where a light bike and strong legs change nothing', () => {
    expect(told(found(pushes(8, { criticalPower: 120, wPrime: 1000 }))[0]!.text)).toMatch(
      /^The regular rider runs out of legs in “push 1” at 0:07;/,
    )
  })
})
