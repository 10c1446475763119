import { CONSTANTS, type ConstantName, type ConstantSpec } from '#engine/constants.ts'
import type { HouseRules } from '#plan/model.ts'
import { type Parsed, parsed, refused } from '#units/parsed.ts'
import { readSetting } from '#units/parseSetting.ts'
import type { Refusal } from '#words/said.ts'
import { words } from '#words/words.ts'

/** The house rules with one of them changed; a default is not kept, and rules that say nothing are none. */
export function withRule(rules: HouseRules | undefined, name: ConstantName, value: number): HouseRules | undefined {
  const { [name]: _before, ...others } = rules ?? {}
  const next = value === CONSTANTS[name].default ? others : { ...others, [name]: value }
  return Object.keys(next).length === 0 ? undefined : next
}

/** A rule's number: decimals and fractions, within the rule's bounds, with its unit after it or without. */
export function parseRule(text: string, { unit, min, max, default: usual }: ConstantSpec): Parsed<number, Refusal> {
  const value = readSetting(text, words.rules.unit({ unit }))
  if (value === null) return refused(words.rules.notNumber({ example: usual }))
  if (value < min || value > max) return refused(words.rules.outside({ min, max, unit }))
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
    if (name === low && value > current(high)) return words.rules.notAbove({ name: high, value: current(high) })
    if (name === high && value < current(low)) return words.rules.notBelow({ name: low, value: current(low) })
  }
  return null
}
