import { english } from '#engine/speech/english/english.ts'
import type { Scale, Speech } from '#engine/speech/speech.ts'
import { isSingle, type LedgerState } from '#plan/ledger/ledgerState.ts'
import type { Change, Resistance } from '#plan/model.ts'
import type { KnobSteps } from '#units/units.ts'

/** A running total written small: "1½", "3–4", "4¼ or more", "3 or less"; "2 or so" where both ends are open. */
export const formatTotal = (state: LedgerState, scale: Pick<Scale, 'stepsPerUnit'>, speech: Speech = english): string =>
  speech.calls.small.total(state, scale)

/** The same where room is short: "4¼+" for "4¼ or more", in any language. */
export const shortTotal = (total: string): string => total.replace(/ (?:or more|oder mehr)$/, '+')

/** How a call is given: a total between two single values as the change it amounts to. */
export type CallForm = 'stay' | 'allOff' | 'change' | 'total' | 'byFeel'

/** The words and the small form of a call, from the states before and after it. */
interface SaidCall {
  form: CallForm
  call: string
  change: string
}

/**
 * How a call is given. A total between two single values is said as the change it amounts to;
 * where riders may stand apart before or after it, as the total itself.
 *
 * @param after where the call leads, before a checkpoint
 */
export function sayCall(
  call: Resistance,
  before: LedgerState,
  after: LedgerState,
  scale: Scale,
  datum: 'base' | 'loose',
  speech: Speech = english,
): SaidCall {
  const { calls } = speech
  const { small } = calls
  switch (call.kind) {
    case 'keep':
      return { form: 'stay', call: calls.stay, change: small.stay }
    case 'allOff':
      return { form: 'allOff', call: calls.allOff, change: small.allOff }
    case 'change':
      return sayStatedChange(call.mode, Math.round(call.steps), scale, speech)
    case 'total': {
      if (isSingle(before) && isSingle(after)) return sayStatedChange('exact', after.nominal - before.nominal, scale, speech)
      return { form: 'total', call: calls.total(after, scale, datum), change: small.to(small.total(after, scale)) }
    }
    case 'byFeel':
      return { form: 'byFeel', call: calls.byFeel(after, scale, datum), change: small.toByFeel(small.total(after, scale)) }
  }
}

function sayStatedChange(mode: Change['mode'], steps: KnobSteps, scale: Scale, { calls }: Speech): SaidCall {
  const call = calls.change(steps, scale)
  const change = calls.small.change(steps, scale)
  if (steps === 0) return { form: 'stay', call, change }
  return { form: 'change', call: calls.asked(mode, call), change: calls.small.asked(mode, change) }
}
