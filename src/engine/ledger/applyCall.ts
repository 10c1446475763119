import type { LedgerState } from '#engine/report.ts'
import type { Resistance } from '#plan/model.ts'
import type { KnobSteps } from '#units/units.ts'
import type { Limits } from './limits.ts'

/** Where a call leaves the riders, and by how many steps it asked for more than the knob has. */
interface Called {
  after: LedgerState
  /** Steps by which the lowest rider or the nominal one would fall below the loosest setting. */
  under: KnobSteps
  /** Steps by which the nominal rider (a total: its upper end) would pass the tightest setting. */
  over: KnobSteps
}

/**
 * One call on the knob, in range arithmetic: low and high bound what riders may have, nominal
 * is what the plan means. A highest rider who meets the end of the knob stays there silently.
 * A negative "at least" or "if you have it" is the mirror of the positive one.
 */
export function applyCall(before: LedgerState, call: Resistance, limits: Limits): Called {
  switch (call.kind) {
    case 'keep':
      return { after: before, under: 0, over: 0 }
    case 'allOff':
      return { after: { low: limits.floor, nominal: limits.floor, high: limits.floor }, under: 0, over: 0 }
    case 'change':
      return held(change(before, call.mode, Math.round(call.steps), limits), limits)
    case 'total':
    case 'byFeel':
      return held(range(before, call, limits), limits)
  }
}

type Change = Extract<Resistance, { kind: 'change' }>
type Range = Extract<Resistance, { kind: 'total' | 'byFeel' }>

function change({ low, nominal, high }: LedgerState, mode: Change['mode'], steps: KnobSteps, limits: Limits): LedgerState {
  const moved = nominal + steps
  const adds = steps >= 0
  switch (mode) {
    case 'exact':
      return { low: low + steps, nominal: moved, high: high + steps }
    case 'atLeast':
      return adds ? { low: low + steps, nominal: moved, high: limits.ceiling } : { low: limits.floor, nominal: moved, high: high + steps }
    case 'ifYouHaveIt':
      return adds ? { low, nominal: moved, high: high + steps } : { low: low + steps, nominal: moved, high }
  }
}

function range({ nominal }: LedgerState, call: Range, limits: Limits): LedgerState {
  const low = Math.round(Math.min(call.from, call.to))
  const high = Math.round(Math.max(call.from, call.to))
  const aim = call.kind === 'total' && call.aim !== undefined ? Math.round(call.aim) : clamp(nominal, limits.floor, limits.ceiling)
  return { low, nominal: clamp(aim, low, high), high }
}

/** The state brought inside the knob's range, with what did not fit. */
function held(wanted: LedgerState, { floor, ceiling }: Limits): Called {
  const after = {
    low: clamp(wanted.low, floor, ceiling),
    nominal: clamp(wanted.nominal, floor, ceiling),
    high: clamp(wanted.high, floor, ceiling),
  }
  return { after, under: Math.max(0, floor - wanted.low), over: Math.max(0, wanted.nominal - ceiling) }
}

const clamp = (value: number, low: number, high: number): number => Math.min(high, Math.max(low, value))
