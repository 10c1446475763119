import { isSingle, type LedgerState } from '#plan/ledger/ledgerState.ts'
import type { Change, Resistance } from '#plan/model.ts'
import { formatSetting, formatSettingRange, formatSignedSetting } from '#units/formatSetting.ts'
import type { KnobSteps } from '#units/units.ts'
import { placeWords, type Scale, sizeWords } from './settingWords.ts'

/** A change as it is spoken: "one and a quarter on", "half a turn off", "two levels on"; "stay" for none. */
function sayChange(steps: KnobSteps, scale: Scale): string {
  return steps === 0 ? 'stay' : `${sizeWords(Math.abs(steps), scale)} ${steps > 0 ? 'on' : 'off'}`
}

/** A change written small: "+¾", "−1¼", "stay". */
export function formatChange(steps: KnobSteps, scale: Scale): string {
  return steps === 0 ? 'stay' : formatSignedSetting(steps, scale.stepsPerUnit)
}

/** A running total written small: "1½", "3–4", "4¼ or more", "3 or less"; "2 or so" where both ends are open. */
export function formatTotal({ low, nominal, high }: LedgerState, { stepsPerUnit }: Pick<Scale, 'stepsPerUnit'>): string {
  const at = (steps: KnobSteps) => formatSetting(steps, stepsPerUnit)
  if (low === null) return high === null ? `${at(nominal)} or so` : `${at(high)} or less`
  return high === null ? `${at(low)} or more` : formatSettingRange({ from: low, to: high }, stepsPerUnit)
}

/** The same where room is short: "4¼+" for "4¼ or more". */
export const shortTotal = (total: string): string => total.replace(/ or more$/, '+')

/** A total as it is spoken: "to three", "to three to four", "to at least three"; under the datum "to a quarter under base". */
export function sayTotal({ low, nominal, high }: LedgerState, scale: Scale, datum: 'base' | 'loose'): string {
  const place = (steps: KnobSteps): string => {
    if (steps < 0) return `${placeWords(-steps, scale)} under ${datum === 'base' ? 'base' : 'nought'}`
    return steps === 0 && datum === 'base' ? 'base' : placeWords(steps, scale)
  }
  if (low === null) return high === null ? `to about ${place(nominal)}` : `to at most ${place(high)}`
  if (high === null) return `to at least ${place(low)}`
  return low === high ? `to ${place(low)}` : `to ${place(low)} to ${place(high)}`
}

/** The words and the small form of a call, from the states before and after it. */
interface SaidCall {
  call: string
  change: string
}

/**
 * How a call is given. A total between two single values is said as the change it amounts to;
 * where riders may stand apart before or after it, as the total itself.
 *
 * @param after where the call leads, before a checkpoint
 */
export function sayCall(call: Resistance, before: LedgerState, after: LedgerState, scale: Scale, datum: 'base' | 'loose'): SaidCall {
  switch (call.kind) {
    case 'keep':
      return { call: 'stay', change: 'stay' }
    case 'allOff':
      return { call: 'all off', change: 'all off' }
    case 'change':
      return sayStatedChange(call.mode, Math.round(call.steps), scale)
    case 'total': {
      if (isSingle(before) && isSingle(after)) return sayStatedChange('exact', after.nominal - before.nominal, scale)
      return { call: sayTotal(after, scale, datum), change: `to ${formatTotal(after, scale)}` }
    }
    case 'byFeel':
      return {
        call: `by feel, ${sayTotal(after, scale, datum).slice('to '.length)}`,
        change: `to ${formatTotal(after, scale)} by feel`,
      }
  }
}

function sayStatedChange(mode: Change['mode'], steps: KnobSteps, scale: Scale): SaidCall {
  const call = sayChange(steps, scale)
  const change = formatChange(steps, scale)
  if (steps === 0 || mode === 'exact') return { call, change }
  if (mode === 'atLeast') return { call: `at least ${call}`, change: `${change} or more` }
  return { call: `${call} if you have it`, change: `${change} if you have it` }
}
