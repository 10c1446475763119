import { constant } from '#engine/demand/quadratic.ts'
import { refilledShare } from '#engine/reserve/balance.ts'
import { timeToExhaustion } from '#engine/reserve/criticalPower.ts'
import { integralBalance, integralTau, type PowerStep } from '#engine/reserve/integralForm.ts'
import { MEASURED_HALF_TIME } from '#engine/reserve/measured.ts'
import { reserveAt, reserveCurve } from '#engine/reserve/reserveCurve.ts'
import { checkRows } from '#tests/support/publishedRows.ts'
import { eulerBalance, summedBalance } from '#tests/support/stepping.ts'
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
function closedForm({ protocol, cp_w, wprime_j }: Inputs): number[] {
  let end = 0
  const spans = protocol.map(([watts, seconds]) => {
    const from = end
    end += seconds
    return { from, to: end, watts: constant(watts) }
  })
  const curve = reserveCurve(spans, { criticalPower: cp_w, wPrime: wprime_j })
  return spans.map(({ to }) => reserveAt(curve, to) * wprime_j)
}

checkRows('critical power and the capacity above it', rows, {
  'cp.tlim': ({ power_w, cp_w, wprime_j }: Inputs) => timeToExhaustion(power_w, cp_w, wprime_j),
  'wbal.tau': ({ d_cp_w }: Inputs) => integralTau(d_cp_w),
  'wbal.int.': ({ protocol, cp_w, wprime_j }: Inputs) => integralBalance(protocol, cp_w, wprime_j),
  'wbal.int1hz': ({ protocol, cp_w, wprime_j }: Inputs) => summedBalance(protocol, cp_w, wprime_j),
  'wbal.diff.': closedForm,
  'wbal.euler': ({ protocol, cp_w, wprime_j }: Inputs) => eulerBalance(protocol, cp_w, wprime_j),
  'wbal.hybrid': closedForm,
  'wbal.diffrec': ({ d_cp_w, t_s, wprime_j }: Inputs) => refilledShare(d_cp_w, t_s, wprime_j),
  'wbal.paper.half': () => MEASURED_HALF_TIME,
})

checkRows(
  'the unpublished hybrid is neither form',
  rows.filter(({ id }) => id === 'wbal.hybrid.5x60'),
  { 'wbal.hybrid': ({ protocol, cp_w, wprime_j }: Inputs) => integralBalance(protocol, cp_w, wprime_j) },
)
