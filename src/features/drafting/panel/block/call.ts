import type { Limits } from '#engine/ledger/limits.ts'
import type { LedgerEntry } from '#engine/report.ts'
import type { Bike, Resistance, StepRange } from '#plan/model.ts'
import { formatSetting, formatSettingRange } from '#units/formatSetting.ts'
import { type Parsed, parsed, refused } from '#units/parsed.ts'
import { parseSetting } from '#units/parseSetting.ts'
import { parseSettingRange } from '#units/parseSettingRange.ts'
import type { KnobSteps } from '#units/units.ts'

/** How a call is chosen in the panel: a change is added or taken off, so that its size is typed without a sign. */
export type CallKind = 'stay' | 'total' | 'add' | 'takeOff' | 'byFeel' | 'allOff'

export function kindOfCall(resistance: Resistance): CallKind {
  switch (resistance.kind) {
    case 'keep':
      return 'stay'
    case 'change':
      return resistance.steps < 0 ? 'takeOff' : 'add'
    default:
      return resistance.kind
  }
}

/**
 * The call turned into another kind with the numbers it stands for: a total of 1½ after ¾ becomes
 * "add ¾", and back. Where the other kind cannot say the same (a total that went up cannot be taken
 * off), it starts from half a unit.
 *
 * @param entry the block's ledger as it stands
 */
export function callOfKind(kind: CallKind, resistance: Resistance, entry: LedgerEntry, stepsPerUnit: number): Resistance {
  const { before, after } = entry
  switch (kind) {
    case 'stay':
      return { kind: 'keep' }
    case 'allOff':
      return { kind: 'allOff' }
    case 'total':
      return resistance.kind === 'byFeel' ? { ...resistance, kind: 'total' } : { kind: 'total', from: after.nominal, to: after.nominal }
    case 'byFeel':
      return resistance.kind === 'total'
        ? { kind: 'byFeel', from: resistance.from, to: resistance.to }
        : { kind: 'byFeel', from: after.nominal, to: after.nominal }
    case 'add':
    case 'takeOff': {
      const sign = kind === 'add' ? 1 : -1
      if (resistance.kind === 'change') return { ...resistance, steps: sign * Math.abs(resistance.steps) }
      const change = (after.nominal - before.nominal) * sign
      return { kind: 'change', mode: 'exact', steps: sign * (change > 0 ? change : Math.max(1, Math.round(stepsPerUnit / 2))) }
    }
  }
}

/** A total, or a range of totals, that the bike has. */
export function parseTotal(text: string, bike: Bike, limits: Limits): Parsed<StepRange> {
  const range = parseSettingRange(text, bike)
  if (!range.ok) return range
  if (range.value.from >= limits.floor && range.value.to <= limits.ceiling) return range
  const span = `${formatSetting(limits.floor, bike.stepsPerUnit)} to ${formatSetting(limits.ceiling, bike.stepsPerUnit)}`
  return refused(`On this bike a total is from ${span} ${bike.unit}s.`)
}

/**
 * A change as steps with its sign: "+¾" and "¾ on" add, "−¾" and "¾ off" take off; without either it
 * goes the way it went.
 *
 * @param direction 1 where a size without a sign adds, −1 where it takes off
 */
export function parseChange(text: string, bike: Bike, direction: 1 | -1): Parsed<KnobSteps> {
  const word = /^(.*?)\s*\b(on|off)$/i.exec(text.trim())
  const size = parseSetting(word ? word[1]! : text, bike)
  if (!size.ok) return size
  if (size.value === 0) return refused('A change is at least one step; for none, choose “stay”.')
  if (word) return parsed((word[2]!.toLowerCase() === 'on' ? 1 : -1) * Math.abs(size.value))
  return /^\s*[+\-−–]/.test(text) ? size : parsed(direction * size.value)
}

/** A total or a range of totals as it is typed. */
export const formatTotals = ({ from, to }: StepRange, bike: Bike): string => formatSettingRange(from, to, bike.stepsPerUnit)

/** A range moved as a whole by one step (or one unit), held inside the limits. */
export function nudgeTotals(range: StepRange, by: KnobSteps, limits: Limits): StepRange {
  const held = Math.max(limits.floor - range.from, Math.min(limits.ceiling - range.to, by))
  return { from: range.from + held, to: range.to + held }
}
