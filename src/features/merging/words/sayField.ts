import { CONSTANTS, type ConstantName } from '#engine/constants.ts'
import type { FieldName } from '#plan/merge/fieldValues.ts'
import { words } from '#words/words.ts'

/** What the names of house rules begin with in a list of changes. */
export const RULE = 'houseRules.'
/** What the names of riders begin with. */
export const RIDER = 'rider.'

/** Whether a name is one the engine has: a ride can come with rules of a newer page. */
export const isRule = (name: string): name is ConstantName => Object.hasOwn(CONSTANTS, name)

/** What a field is called in a list of changes. */
export function sayField(of: string, field: string): string {
  if (field.startsWith(RULE)) {
    const name = field.slice(RULE.length)
    return words.mergeFields.rule({ name: isRule(name) ? words.rules.label({ name }) : name })
  }
  if (field.startsWith(RIDER)) return words.mergeFields.rider
  return words.mergeFields.field({ field: `${of} ${field}` as FieldName })
}
