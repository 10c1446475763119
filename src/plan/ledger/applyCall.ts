import type { ByFeel, Change, Resistance, Total } from '#plan/model.ts'
import type { KnobSteps, StepRange } from '#units/units.ts'
import { atTotal, type LedgerState } from './ledgerState.ts'
import type { Limits } from './limits.ts'

/** Where a call leaves the riders, and by how many steps it asked for more than the knob has. */
export interface Called {
  after: LedgerState
  /** Where the call leads before riders are told where they should be; the very state after it where they are not, or where they cannot be there. */
  reached: LedgerState
  /** Steps by which the lowest rider (where that is not known, the nominal one) would fall below the loosest setting. */
  under: KnobSteps
  /** Steps by which the nominal rider would pass the tightest setting. */
  over: KnobSteps
}

/**
 * One call on the knob, in range arithmetic: low and high bound what riders may have, nominal
 * is what the plan means. "At least" opens an end, which stays open until a total, a checkpoint
 * or "all off" closes it. A highest rider who meets the end of the knob stays there silently, as does a
 * lowest one nobody knows of. A negative "at least" or "if you have it" is the mirror of the positive one.
 */
export function applyCall(before: LedgerState, call: Resistance, limits: Limits): Called {
  const called = withoutCheckpoint(before, call, limits)
  const checkpoint = checkpointOf(call)
  const after = checkpoint && narrowed(called.reached, checkpoint, limits)
  return after ? { ...called, after } : called
}

/** Where riders are told that they should be, by calls that can say so. */
export const checkpointOf = (call: Resistance): StepRange | undefined => ('checkpoint' in call ? call.checkpoint : undefined)

/**
 * What a state and a stated range share: a rider outside the range goes to its nearer end, the others
 * stay. Null where they share nothing, and no rider the calls allow is where the words say.
 */
export function narrowed(state: LedgerState, { from, to, orMore }: StepRange, { floor, ceiling }: Limits): LedgerState | null {
  const low = Math.max(from, state.low ?? floor)
  const high = Math.min(orMore ? ceiling : to, state.high ?? ceiling)
  if (low > high) return null
  return { low, nominal: clamp(state.nominal, low, high), high: orMore && state.high === null ? null : high }
}

function withoutCheckpoint(before: LedgerState, call: Resistance, limits: Limits): Called {
  switch (call.kind) {
    case 'keep':
      return reachedAt(before, 0, 0)
    case 'allOff':
      return reachedAt(atTotal(limits.floor), 0, 0)
    case 'change':
      return held(changed(before, call.mode, Math.round(call.steps)), limits)
    case 'total':
    case 'byFeel':
      return held(range(before, call, limits), limits)
  }
}

const reachedAt = (reached: LedgerState, under: KnobSteps, over: KnobSteps): Called => ({ after: reached, reached, under, over })

function changed({ low, nominal, high }: LedgerState, mode: Change['mode'], steps: KnobSteps): LedgerState {
  const opens = mode === 'atLeast'
  const offers = mode === 'ifYouHaveIt'
  return {
    low: steps < 0 && opens ? null : steps > 0 && offers ? low : movedEnd(low, steps),
    nominal: nominal + steps,
    high: steps > 0 && opens ? null : steps < 0 && offers ? high : movedEnd(high, steps),
  }
}

const movedEnd = (end: KnobSteps | null, steps: KnobSteps): KnobSteps | null => (end === null ? null : end + steps)

function range({ nominal }: LedgerState, call: Total | ByFeel, { floor, ceiling }: Limits): LedgerState {
  const low = Math.round(Math.min(call.from, call.to))
  const high = Math.round(Math.max(call.from, call.to))
  const aim = call.kind === 'total' && call.aim !== undefined ? Math.round(call.aim) : clamp(nominal, floor, ceiling)
  return { low, nominal: clamp(aim, low, high), high: call.orMore ? null : high }
}

/** The state brought inside the knob's range, with what did not fit. Riders who are all at one end of the knob have nowhere further to be. */
function held({ low, nominal, high }: LedgerState, { floor, ceiling }: Limits): Called {
  const least = low === null ? null : clamp(low, floor, ceiling)
  const most = high === null ? null : clamp(high, floor, ceiling)
  const reached = {
    low: most === floor ? floor : least,
    nominal: clamp(nominal, floor, ceiling),
    high: least === ceiling ? ceiling : most,
  }
  return reachedAt(reached, Math.max(0, floor - (low ?? nominal)), Math.max(0, nominal - ceiling))
}

const clamp = (value: number, low: number, high: number): number => Math.min(high, Math.max(low, value))
