import type { Change, Keep, Resistance, SetBlock } from '#plan/model.ts'
import type { KnobSteps } from '#units/units.ts'
import { movedBy } from './movedBy.ts'

/** How far the running total already sits above the same moment of the first round. */
export interface RoundCarry {
  set: SetBlock | undefined
  steps: KnobSteps
}

export const NO_CARRY: RoundCarry = { set: undefined, steps: 0 }

/** Steps by which a round of a set is heavier than its first. */
export const shiftOfRound = (set: SetBlock, round: number): KnobSteps => Math.round(set.perRound?.steps ?? 0) * (round - 1)

/**
 * The call of a part in one round of a set whose rounds add: every later round is heavier
 * than the one before by the same steps, part for part. A total takes the whole shift; a
 * change only what the total before it does not carry yet, so that a round of changes adds
 * once and not at every part. Where riders should be moves with the total they are at. Returns
 * the call as given where rounds add nothing.
 */
export function callOfRound(call: Resistance, set: SetBlock, round: number, carry: RoundCarry): { call: Resistance; carry: RoundCarry } {
  const shift = shiftOfRound(set, round)
  const carried = carry.set === set ? carry.steps : 0
  switch (call.kind) {
    case 'keep':
      return { call: checkedAt(call, carried), carry: { set, steps: carried } }
    case 'allOff':
      return { call, carry: { set, steps: 0 } }
    case 'change': {
      const steps = call.steps + shift - carried
      return { call: checkedAt(steps === call.steps ? call : { ...call, steps }, shift), carry: { set, steps: shift } }
    }
    case 'total':
    case 'byFeel':
      return { call: shift === 0 ? call : movedBy(call, shift), carry: { set, steps: shift } }
  }
}

/** The call with its checkpoint so much heavier. */
function checkedAt<Call extends Keep | Change>(call: Call, shift: KnobSteps): Call {
  return shift === 0 || !call.checkpoint ? call : { ...call, checkpoint: movedBy(call.checkpoint, shift) }
}
