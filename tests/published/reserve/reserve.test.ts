import { describe, expect, it } from 'vitest'
import { constant } from '#engine/demand/quadratic.ts'
import { reserveAt, reserveCurve } from '#engine/reserve/reserveCurve.ts'
import { checkRows } from '#tests/support/publishedRows.ts'
import { integralBalance, integralTau, type PowerStep } from '#tests/support/reference/integralForm.ts'
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

/** The engine's closed form at the end of every step. */
function closedForm({ protocol, cp_w, wprime_j }: Pick<Inputs, 'protocol' | 'cp_w' | 'wprime_j'>): number[] {
  let end = 0
  const spans = protocol.map(([watts, seconds]) => {
    const from = end
    end += seconds
    return { from, to: end, watts: constant(watts) }
  })
  const curve = reserveCurve(spans, { criticalPower: cp_w, wPrime: wprime_j })
  return spans.map(({ to }) => reserveAt(curve, to) * wprime_j)
}

/** When the engine says that it runs out, at one power for two hours. */
const timeToExhaustion = ({ power_w, cp_w, wprime_j }: Inputs) =>
  reserveCurve([{ from: 0, to: 7200, watts: constant(power_w) }], { criticalPower: cp_w, wPrime: wprime_j }).runsOut?.at

/** What comes back of nothing in a time below critical power, as a share of all. */
function refilledShare({ d_cp_w, t_s, wprime_j }: Inputs): number {
  const critical = 250
  const rest = [{ from: 0, to: t_s, watts: constant(critical - d_cp_w) }]
  return reserveAt(reserveCurve(rest, { criticalPower: critical, wPrime: wprime_j }, 0), t_s)
}

checkRows(
  'critical power and the capacity above it',
  rows,
  {
    'cp.tlim': timeToExhaustion,
    'wbal.diff.': closedForm,
    'wbal.hybrid': closedForm,
    'wbal.diffrec': refilledShare,
  },
  {
    'wbal.tau': ({ d_cp_w }: Inputs) => integralTau(d_cp_w),
    'wbal.int.': ({ protocol, cp_w, wprime_j }: Inputs) => integralBalance(protocol, cp_w, wprime_j),
    'wbal.int1hz': ({ protocol, cp_w, wprime_j }: Inputs) => summedBalance(protocol, cp_w, wprime_j),
    'wbal.euler': ({ protocol, cp_w, wprime_j }: Inputs) => eulerBalance(protocol, cp_w, wprime_j),
  },
)

checkRows(
  'the unpublished hybrid is not the older form either',
  rows.filter(({ id }) => id === 'wbal.hybrid.5x60'),
  {},
  { 'wbal.hybrid': ({ protocol, cp_w, wprime_j }: Inputs) => integralBalance(protocol, cp_w, wprime_j) },
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
