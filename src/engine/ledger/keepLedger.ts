import type { LedgerEntry, LedgerState } from '#engine/report.ts'
import type { Unrolled } from '#engine/timeline/unrollItems.ts'
import type { Resistance, Ride, StepRange } from '#plan/model.ts'
import { callOfRound, NO_CARRY } from '#plan/roundShift.ts'
import type { KnobSteps } from '#units/units.ts'
import { applyCall } from './applyCall.ts'
import { type Limits, limitsOf, startOf } from './limits.ts'
import { formatTotal, sayCall } from './sayCall.ts'

/** One line of the ledger with what its findings need. */
interface LedgerLine {
  entry: LedgerEntry
  /** The call of this very round. */
  call: Resistance
  under: KnobSteps
  over: KnobSteps
}

export interface Ledger {
  lines: LedgerLine[]
  limits: Limits
  start: LedgerState
  end: LedgerState
}

/** The running resistance through all played blocks. Cost: linear in what is played. */
export function keepLedger(ride: Ride, played: readonly Unrolled[]): Ledger {
  const { bike, datum } = ride
  const limits = limitsOf(ride)
  const start = startOf(limits)
  const lines: LedgerLine[] = []
  let state = start
  let carry = NO_CARRY
  for (const { block, set } of played) {
    const round = set && callOfRound(block.resistance, set.set, set.round, carry)
    carry = round?.carry ?? NO_CARRY
    const call = round?.call ?? block.resistance
    const { after, under, over } = applyCall(state, call, limits)
    const checkpoint = checkpointOf(call)
    const said = sayCall(call, state, after, bike, datum)
    const total = formatTotal(after, bike, limits)
    lines.push({ entry: { before: state, after, call: said.call, change: said.change, total, checkpoint }, call, under, over })
    state = after
  }
  return { lines, limits, start, end: state }
}

function checkpointOf(call: Resistance): StepRange | undefined {
  return call.kind === 'change' ? call.checkpoint : undefined
}
