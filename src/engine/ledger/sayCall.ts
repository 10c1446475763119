import type { LedgerState } from '#engine/report.ts'
import type { Resistance } from '#plan/model.ts'
import { formatSetting, formatSettingRange, formatSignedSetting } from '#units/formatSetting.ts'
import type { KnobSteps } from '#units/units.ts'
import type { Limits } from './limits.ts'
import { placeWords, type Scale, sizeWords } from './settingWords.ts'

/** A change as it is spoken: "one and a quarter on", "half a turn off", "two levels on"; "stay" for none. */
function sayChange(steps: KnobSteps, scale: Scale): string {
  return steps === 0 ? 'stay' : `${sizeWords(Math.abs(steps), scale)} ${steps > 0 ? 'on' : 'off'}`
}

/** A change written small: "+¾", "−1¼", "stay". */
export function formatChange(steps: KnobSteps, scale: Scale): string {
  return steps === 0 ? 'stay' : formatSignedSetting(steps, scale.stepsPerUnit)
}

/** A running total written small: "1½", "3–4", "4¼ or more" where the highest rider may have all the knob gives. */
export function formatTotal(state: LedgerState, scale: Scale, limits: Limits): string {
  if (state.high === limits.ceiling && state.low < state.high) return `${formatSetting(state.low, scale.stepsPerUnit)} or more`
  return formatSettingRange(state.low, state.high, scale.stepsPerUnit)
}

/** A total as it is spoken: "to three", "to three to four"; under the datum "to a quarter under base". */
export function sayTotal(from: KnobSteps, to: KnobSteps, scale: Scale, datum: 'base' | 'loose'): string {
  const place = (steps: KnobSteps): string => {
    if (steps < 0) return `${placeWords(-steps, scale)} under ${datum === 'base' ? 'base' : 'nought'}`
    return steps === 0 && datum === 'base' ? 'base' : placeWords(steps, scale)
  }
  return from === to ? `to ${place(from)}` : `to ${place(from)} to ${place(to)}`
}

/** The words and the small form of a call, from the states before and after it. */
interface SaidCall {
  call: string
  change: string
}

/**
 * How a call is given. A total between two single values is said as the change it amounts to;
 * where riders may stand apart before or after it, as the total itself.
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
      return {
        call: sayTotal(after.low, after.high, scale, datum),
        change: `to ${formatSettingRange(after.low, after.high, scale.stepsPerUnit)}`,
      }
    }
    case 'byFeel':
      return {
        call: `by feel, ${sayTotal(after.low, after.high, scale, datum).slice('to '.length)}`,
        change: `to ${formatSettingRange(after.low, after.high, scale.stepsPerUnit)} by feel`,
      }
  }
}

function sayStatedChange(mode: 'exact' | 'atLeast' | 'ifYouHaveIt', steps: KnobSteps, scale: Scale): SaidCall {
  const call = sayChange(steps, scale)
  const change = formatChange(steps, scale)
  if (steps === 0 || mode === 'exact') return { call, change }
  if (mode === 'atLeast') return { call: `at least ${call}`, change: `${change} or more` }
  return { call: `${call} if you have it`, change: `${change} if you have it` }
}

const isSingle = (state: LedgerState): boolean => state.low === state.high
