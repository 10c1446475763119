import type { Total } from '#plan/model.ts'
import type { LedgerState } from './ledgerState.ts'

/** A total that says where riders are, as nearly as one can: where an end is open it keeps to the nominal one. */
export function statedAs({ low, nominal, high }: LedgerState): Total {
  if (high === null) return { kind: 'total', from: nominal, to: nominal, orMore: true }
  const from = low ?? nominal
  return { kind: 'total', from, to: high, ...(from !== high && { aim: nominal }) }
}
