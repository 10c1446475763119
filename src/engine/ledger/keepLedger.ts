import type { LedgerEntry } from '#engine/played.ts'
import { speechOf } from '#engine/speech/speechOf.ts'
import type { Unrolled } from '#engine/timeline/unrollItems.ts'
import { checkpointOf } from '#plan/ledger/applyCall.ts'
import type { LedgerState } from '#plan/ledger/ledgerState.ts'
import { type Limits, limitsOf, startOf } from '#plan/ledger/limits.ts'
import { playCall, standingAt } from '#plan/ledger/playCall.ts'
import type { Resistance, Ride } from '#plan/model.ts'
import type { KnobSteps } from '#units/units.ts'
import { formatTotal, sayCall } from './sayCall.ts'

/** One line of the ledger with what its findings need. */
interface LedgerLine {
  entry: LedgerEntry
  /** The call of this very round. */
  call: Resistance
  /** Where the call leads before riders are told where they should be. */
  reached: LedgerState
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
  const speech = speechOf(ride)
  const limits = limitsOf(ride)
  const start = startOf(limits)
  const lines: LedgerLine[] = []
  let standing = standingAt(start)
  for (const { block, set } of played) {
    const { call, after, reached, under, over, next } = playCall(standing, block.resistance, set, limits)
    const said = sayCall(call, standing.state, reached, bike, datum, speech)
    const total = formatTotal(after, bike, speech)
    const checkpoint = checkpointOf(call)
    const entry = { before: standing.state, after, form: said.form, call: said.call, change: said.change, total, checkpoint }
    lines.push({ entry, call, reached, under, over })
    standing = next
  }
  return { lines, limits, start, end: standing.state }
}
