import { sayTotal } from '#engine/ledger/sayCall.ts'
import { sizeWords } from '#engine/speech/english/settingWords.ts'
import { isSingle } from '#plan/ledger/ledgerState.ts'
import type { Ride } from '#plan/model.ts'
import { capital } from './numbersSaid.ts'
import type { Passage } from './passage.ts'

/** How the call of the knob may be worded: with a clause to follow it ("half a turn on") or by itself ("Add half a turn"). */
interface CallWording {
  wordings: readonly string[]
  turn: 'up' | 'down' | 'none'
}

/** The knob's call for a block, from the ledger, in the ways leaders say it. */
export function callWording(passage: Passage, { bike, datum }: Pick<Ride, 'bike' | 'datum'>): CallWording {
  const { times, change } = passage
  if (passage.opens !== 'class' && !change?.kinds.includes('resistance')) return { wordings: [], turn: 'none' }
  const { ledger, block } = times[0]!
  const turn = ledger.after.nominal > ledger.before.nominal ? 'up' : ledger.after.nominal < ledger.before.nominal ? 'down' : 'none'
  if (turn === 'none') return { wordings: [], turn }
  const isSame = times.every(({ ledger: { call } }) => call === ledger.call)
  // Rounds that begin elsewhere than the first are told where to go, not how far.
  if (!isSame) return { wordings: [`Take it ${sayTotal(ledger.after, bike, datum)}`, `Knob ${sayTotal(ledger.after, bike, datum)}`], turn }
  if (block.resistance.kind !== 'total' || !isSingle(ledger.before) || !isSingle(ledger.after))
    return { wordings: [capital(ledger.call)], turn }
  const size = sizeWords(Math.abs(ledger.after.nominal - ledger.before.nominal), bike)
  const Size = capital(size)
  return turn === 'up'
    ? { wordings: [`${Size} on`, `Add ${size}`, `${Size} more`, `Turn it up ${size}`], turn }
    : { wordings: [`${Size} off`, `Take ${size} off`, `Back it off ${size}`, `Drop ${size}`], turn }
}
