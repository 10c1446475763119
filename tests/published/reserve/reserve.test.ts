import { describe, expect, it } from 'vitest'
import { constant } from '#engine/demand/quadratic.ts'
import type { Recovery } from '#engine/reserve/recovery.ts'
import { everyReserve, reserveAt, reserveCurve } from '#engine/reserve/reserveCurve.ts'
import { checkRows } from '#tests/support/publishedRows.ts'
import { integralBalance, type PowerStep } from '#tests/support/reference/integralForm.ts'
import { eulerBalance, summedBalance } from '#tests/support/reference/stepping.ts'
import rows from './rows.json' with { type: 'json' }

interface Inputs {
  cp_w: number
  wprime_j: number
  power_w: number
  d_cp_w: number
  t_s: number
  protocol: PowerStep[]
}

type Protocol = Pick<Inputs, 'protocol' | 'cp_w' | 'wprime_j'>

const spansOf = (protocol: readonly PowerStep[]) => {
  let end = 0
  return protocol.map(([watts, seconds]) => {
    const from = end
    end += seconds
    return { from, to: end, watts: constant(watts) }
  })
}

/** The engine's closed form of a recovery at the end of every step. */
const closedFormOf =
  (recovery: Recovery) =>
  ({ protocol, cp_w, wprime_j }: Protocol): number[] => {
    const spans = spansOf(protocol)
    const curve = reserveCurve(spans, { criticalPower: cp_w, wPrime: wprime_j }, { recovery })
    return spans.map(({ to }) => reserveAt(curve, to) * wprime_j)
  }

const closedForm = closedFormOf('differential')

/** The engine's time constant of the integral form for a rider that far below critical power. */
const tauOf = ({ d_cp_w }: Inputs) =>
  reserveCurve(spansOf([[250 - d_cp_w - 1e-12, 600]]), { criticalPower: 250, wPrime: 1 }, { recovery: 'integral' }).tau

/** When the engine says that it runs out, at one power for two hours. */
const timeToExhaustion = ({ power_w, cp_w, wprime_j }: Inputs) =>
  reserveCurve([{ from: 0, to: 7200, watts: constant(power_w) }], { criticalPower: cp_w, wPrime: wprime_j }).runsOut?.at

/** What comes back of nothing in a time below critical power, as a share of all. */
function refilledShare({ d_cp_w, t_s, wprime_j }: Inputs): number {
  const critical = 250
  const rest = [{ from: 0, to: t_s, watts: constant(critical - d_cp_w) }]
  return reserveAt(reserveCurve(rest, { criticalPower: critical, wPrime: wprime_j }, { start: 0 }), t_s)
}

checkRows(
  'critical power and the capacity above it',
  rows,
  {
    'cp.tlim': timeToExhaustion,
    'wbal.diff.': closedForm,
    'wbal.hybrid': closedForm,
    'wbal.diffrec': refilledShare,
    'wbal.tau': tauOf,
    'wbal.int.': closedFormOf('integral'),
  },
  {
    'wbal.int1hz': ({ protocol, cp_w, wprime_j }: Inputs) => summedBalance(protocol, cp_w, wprime_j),
    'wbal.euler': ({ protocol, cp_w, wprime_j }: Inputs) => eulerBalance(protocol, cp_w, wprime_j),
  },
)

checkRows(
  'nor the measured half-time',
  rows.filter(({ id }) => id === 'wbal.hybrid.5x60'),
  { 'wbal.hybrid': closedFormOf('halfTime') },
  {},
)

checkRows(
  'the unpublished hybrid is not the integral form either',
  rows.filter(({ id }) => id === 'wbal.hybrid.5x60'),
  { 'wbal.hybrid': closedFormOf('integral') },
  {},
)

describe('the engine agrees with the yardsticks', () => {
  const protocols = rows.filter(({ id }) => id.startsWith('wbal.int.')).map(({ id, inputs }) => ({ id, ...(inputs as unknown as Inputs) }))

  it.each(protocols)('in $id: with one-second steps of its own form closely, with the older form to a fifth of the whole', (inputs) => {
    const { protocol, cp_w, wprime_j } = inputs
    const ours = closedForm(inputs)
    const stepped = eulerBalance(protocol, cp_w, wprime_j)
    const older = integralBalance(protocol, cp_w, wprime_j)
    for (const [i, balance] of ours.entries()) {
      expect(Math.abs(balance - stepped[i]!)).toBeLessThan(0.003 * wprime_j)
      expect(Math.abs(balance - older[i]!)).toBeLessThan(0.2 * wprime_j)
    }
  })
})

describe('recoveries that were measured', () => {
  // Ferguson C et al., J Appl Physiol 2010;108(4):866-874: 37 ± 5, 65 ± 6 and 86 ± 4 % back after 2, 6 and 15 min; half after 234 ± 32 s.
  it.each([
    [120, 0.37, 0.08],
    [234, 0.5, 0.001],
    [360, 0.65, 0.06],
    [900, 0.86, 0.08],
  ])('are met by the half-time after %d s: %d, to %d', (seconds, share, within) => {
    const curve = reserveCurve(spansOf([[20, seconds]]), { criticalPower: 250, wPrime: 20_000 }, { recovery: 'halfTime', start: 0 })
    expect(Math.abs(reserveAt(curve, seconds) - share)).toBeLessThanOrEqual(within)
  })

  it('part on eight times 30 s at 260 W with 45 s at 60 W: 34 % left, none, and 7 % too little', () => {
    const eight = Array.from({ length: 15 }, (_, i): PowerStep => (i % 2 ? [60, 45] : [260, 30]))
    const regular = { criticalPower: 165, wPrime: 14_000 }
    const lowest = everyReserve(spansOf(eight), regular).map(({ recovery, minimum }) => [recovery, Math.round(100 * minimum.share)])
    expect(lowest).toEqual([
      ['differential', 34],
      ['integral', 0],
      ['halfTime', -7],
    ])
  })
})
