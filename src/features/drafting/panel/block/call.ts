import type { LedgerEntry } from '#engine/played.ts'
import { patched } from '#plan/edits.ts'
import { checkpointOf } from '#plan/ledger/applyCall.ts'
import type { Limits } from '#plan/ledger/limits.ts'
import { changeOf } from '#plan/ledger/turnedBy.ts'
import type { Bike, ByFeel, Change, Resistance, Total } from '#plan/model.ts'
import { type Parsed, parsed, refused } from '#units/parsed.ts'
import { parseSettingRange } from '#units/parseSettingRange.ts'
import type { KnobSteps, StepRange } from '#units/units.ts'
import { setting } from '#words/forms.ts'
import type { Refusal } from '#words/said.ts'
import { words } from '#words/words.ts'

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
 * off), it starts from half a unit. "At least" and "if you have it" stay with the way they were said of;
 * where riders should be stays with every kind that says it.
 *
 * @param entry the block's ledger as it stands
 */
export function callOfKind(kind: CallKind, resistance: Resistance, entry: LedgerEntry, stepsPerUnit: number): Resistance {
  const { before, after } = entry
  const checkpoint = checkpointOf(resistance)
  const checked = checkpoint && { checkpoint }
  switch (kind) {
    case 'stay':
      return { kind: 'keep', ...checked }
    case 'allOff':
      return { kind: 'allOff' }
    case 'total':
      return { kind: 'total', ...rangeOf(resistance, after.nominal), ...checked }
    case 'byFeel':
      return { kind: 'byFeel', ...rangeOf(resistance, after.nominal) }
    case 'add':
    case 'takeOff': {
      const sign = kind === 'add' ? 1 : -1
      if (resistance.kind === 'change') return changeOf(resistance, sign * (Math.abs(resistance.steps) || 1))
      const change = (after.nominal - before.nominal) * sign
      const steps = sign * (change > 0 ? change : Math.max(1, Math.round(stepsPerUnit / 2)))
      return { kind: 'change', mode: 'exact', steps, ...checked }
    }
  }
}

/** The range a call states, else the one total it comes to. */
function rangeOf(resistance: Resistance, nominal: KnobSteps): StepRange {
  if (resistance.kind !== 'total' && resistance.kind !== 'byFeel') return { from: nominal, to: nominal }
  const { from, to, orMore } = resistance
  return { from, to, ...(orMore && { orMore }) }
}

/** A total with another range, and the aim it had where that still lies inside. */
export function withRange(total: Total | ByFeel, { from, to, orMore }: StepRange): Resistance {
  const range = { from, to, orMore }
  if (total.kind === 'byFeel') return patched(total, range)
  const keepsAim = total.aim !== undefined && from !== to && total.aim >= from && total.aim <= to
  return patched(total, { ...range, aim: keepsAim ? total.aim : undefined })
}

/** A total, a range of totals, or a total "or more", that the bike has. */
export function parseTotal(text: string, bike: Bike, limits: Limits): Parsed<StepRange, Refusal> {
  const range = parseSettingRange(text, bike)
  if (!range.ok) return range
  if (range.value.from >= limits.floor && range.value.to <= limits.ceiling) return range
  const { floor, ceiling } = limits
  return refused(
    words.panelsBlock.settingOutside({ floor: setting(floor, bike.stepsPerUnit), ceiling: words.measures.settingOf(ceiling, bike) }),
  )
}

/** One total that the bike has. */
export function parseOneTotal(text: string, bike: Bike, limits: Limits, problem: Refusal): Parsed<KnobSteps, Refusal> {
  const range = parseTotal(text, bike, limits)
  if (!range.ok) return range
  const { from, to, orMore } = range.value
  return from === to && !orMore ? parsed(from) : refused(problem)
}

/**
 * A change as it is typed: "+¾" and "¾ on" add, "−¾" and "¾ off" take off; without either it goes the way it went.
 * "½ or more" and "at least ½" are at least that much; else it is meant as it was, unless it is turned round.
 */
export function parseChange(text: string, bike: Bike, change: Change): Parsed<Change, Refusal> {
  const [, before = text, word] = /^(.*?)\s*\b(on|off|zu|auf|ab)$/i.exec(text.trim()) ?? []
  const size = parseSettingRange(before, bike)
  if (!size.ok) return size
  const { from, to, orMore } = size.value
  if (from !== to) return refused(words.panelsBlock.oneAmount)
  if (from === 0) return refused(words.panelsBlock.noChange)
  const signed = /^\s*(?:(?:at\s+least|mindestens)\s+)?[+\-−–]/i.test(before)
  const adds = word ? /^(?:on|zu|auf)$/i.test(word) : signed ? from > 0 : change.steps >= 0
  const turned = changeOf(change, (adds ? 1 : -1) * Math.abs(from))
  return parsed(orMore ? { ...turned, mode: 'atLeast' } : turned)
}

/** A total or a range of totals as it is typed. */
export const formatTotals = (range: StepRange, bike: Bike): string => words.measures.settingRange(range, bike.stepsPerUnit)

/** A range moved as a whole by one step (or one unit), held inside the limits. */
export function nudgeTotals(range: StepRange, by: KnobSteps, limits: Limits): StepRange {
  const held = Math.max(limits.floor - range.from, Math.min(limits.ceiling - range.to, by))
  return { ...range, from: range.from + held, to: range.to + held }
}
