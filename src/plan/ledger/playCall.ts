import type { Resistance, SetBlock } from '#plan/model.ts'
import { applyCall, type Called } from './applyCall.ts'
import type { LedgerState } from './ledgerState.ts'
import type { Limits } from './limits.ts'
import { callOfRound, NO_CARRY, type RoundCarry } from './roundShift.ts'

/** Where riders stand between two calls, with what the rounds of a set have added. */
export interface Standing {
  state: LedgerState
  carry: RoundCarry
}

export const standingAt = (state: LedgerState): Standing => ({ state, carry: NO_CARRY })

/** A call as it is played, and where it leaves riders. */
interface Played extends Called {
  /** The call of this very round. */
  call: Resistance
  next: Standing
}

/** Plays one call: that of its round, inside a set. */
export function playCall(
  { state, carry }: Standing,
  stated: Resistance,
  set: { set: SetBlock; round: number } | undefined,
  limits: Limits,
): Played {
  const round = set && callOfRound(stated, set.set, set.round, carry)
  const call = round?.call ?? stated
  const { after, reached, under, over } = applyCall(state, call, limits)
  return { call, after, reached, under, over, next: { state: after, carry: round?.carry ?? NO_CARRY } }
}
