import { CONSTANTS, type ConstantName, type ConstantSpec } from '#engine/constants.ts'
import type { HouseRules } from '#plan/model.ts'
import { formatNumber } from '#units/formatNumber.ts'
import { type Parsed, parsed, refused } from '#units/parsed.ts'
import { readSetting } from '#units/parseSetting.ts'
import type { Refusal } from '#words/said.ts'

/** The house rules with one of them changed; a default is not kept, and rules that say nothing are none. */
export function withRule(rules: HouseRules | undefined, name: ConstantName, value: number): HouseRules | undefined {
  const { [name]: _before, ...others } = rules ?? {}
  const next = value === CONSTANTS[name].default ? others : { ...others, [name]: value }
  return Object.keys(next).length === 0 ? undefined : next
}

/** A rule's number: decimals and fractions, within the rule's bounds. */
export function parseRule(text: string, { unit, min, max, default: usual }: ConstantSpec): Parsed<number, Refusal> {
  const typed = text.trim().toLowerCase()
  const bare = typed.endsWith(unit.toLowerCase()) ? typed.slice(0, -unit.length).trim() : typed
  const value = readSetting(bare, 'turn')
  if (value === null) return refused(`Write a number, such as ${formatNumber(usual)}.`)
  if (value < min || value > max) return refused(`It is between ${formatNumber(min)} and ${formatNumber(max)} ${unit}.`)
  return parsed(Number(value.toFixed(3)))
}

/** Rules that cannot both hold: of each pair the first is the lower one. */
const PAIRS: readonly (readonly [low: ConstantName, high: ConstantName])[] = [
  ['seatedMinRpm', 'seatedMaxRpm'],
  ['standingMinRpm', 'standingMaxRpm'],
  ['easyEffort', 'workEffort'],
  ['workEffort', 'hardEffort'],
  ['hardEffort', 'hardestEffort'],
  ['recoveryEffort', 'hardEffort'],
  ['announceCounts', 'announceCountsMost'],
  ['balanceHint', 'balanceWarning'],
  ['workingStrain', 'breathlessStrain'],
  ['talkSeconds', 'talkWindow'],
]

/** Why a value cannot stand beside the rules as they are, in one sentence; null where it can. */
export function ruleProblem(name: ConstantName, value: number, current: (name: ConstantName) => number): string | null {
  for (const [low, high] of PAIRS) {
    if (name === low && value > current(high))
      return `“${CONSTANTS[high].label}” is ${formatNumber(current(high))}; this cannot be above it.`
    if (name === high && value < current(low)) return `“${CONSTANTS[low].label}” is ${formatNumber(current(low))}; this cannot be under it.`
  }
  return null
}
