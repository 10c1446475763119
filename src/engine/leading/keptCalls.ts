import { keepLedger } from '#engine/ledger/keepLedger.ts'
import { applyCall } from '#plan/ledger/applyCall.ts'
import type { LedgerState } from '#plan/ledger/ledgerState.ts'
import { turnedBy } from '#plan/ledger/turnedBy.ts'
import type { Resistance } from '#plan/model.ts'
import type { Led, Plan } from './led.ts'

interface Calls {
  /** The call of every block of the plan in its very round, by index in the plan's report. */
  planned: Resistance[]
  /** The calls of the led class, section by section and item by item; the planned object where it arrives where it should. */
  led: Resistance[][]
}

/**
 * Calls that lead to the planned totals in whatever order blocks come. A total is its own; a call
 * that tells a change, or to stay, changes by what is missing to the total planned for its block.
 */
export function keptCalls(plan: Plan, { sections }: Pick<Led, 'sections'>): Calls {
  const { lines, limits, start } = keepLedger(plan.ride, plan.report.blocks)
  let state: LedgerState = start
  const led = sections.map(({ items }) =>
    items.map(({ planned }) => {
      const { call, entry } = lines[planned]!
      const kept = arriving(call, state, entry.before, entry.after)
      state = applyCall(state, kept, limits).after
      return kept
    }),
  )
  return { planned: lines.map(({ call }) => call), led }
}

function arriving(call: Resistance, now: LedgerState, before: LedgerState, after: LedgerState): Resistance {
  if (call.kind !== 'keep' && call.kind !== 'change') return call
  if (now.nominal === before.nominal) return call
  return turnedBy(call, after.nominal - now.nominal)
}
