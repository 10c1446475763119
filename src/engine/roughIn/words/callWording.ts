import { isSingle } from '#plan/ledger/ledgerState.ts'
import type { Ride } from '#plan/model.ts'
import { capital } from './capital.ts'
import type { Passage } from './passage.ts'
import type { Voice } from './voice.ts'

/** How the call of the knob may be worded: with a clause to follow it ("half a turn on") or by itself ("Add half a turn"). */
interface CallWording {
  wordings: readonly string[]
  turn: 'up' | 'down' | 'none'
}

/** The knob's call for a block, from the ledger, in the ways leaders say it. */
export function callWording(passage: Passage, { bike, datum }: Pick<Ride, 'bike' | 'datum'>, { calls }: Voice): CallWording {
  const { times, change } = passage
  if (passage.opens !== 'class' && !change?.kinds.includes('resistance')) return { wordings: [], turn: 'none' }
  const { ledger, block } = times[0]!
  const turn = ledger.after.nominal > ledger.before.nominal ? 'up' : ledger.after.nominal < ledger.before.nominal ? 'down' : 'none'
  if (turn === 'none') return { wordings: [], turn }
  const isSame = times.every(({ ledger: { call } }) => call === ledger.call)
  // Rounds that begin elsewhere than the first are told where to go, not how far.
  if (!isSame) return { wordings: calls.takenTo(ledger.after, bike, datum), turn }
  if (block.resistance.kind !== 'total' || !isSingle(ledger.before) || !isSingle(ledger.after))
    return { wordings: [capital(ledger.call)], turn }
  return { wordings: calls.turned(turn, Math.abs(ledger.after.nominal - ledger.before.nominal), bike), turn }
}
