import * as v from 'valibot'
import { say } from './messages.ts'

/** What the schema of a document is made of: values within bounds, each with the sentence that says so. */

export const text = (most: number) => v.pipe(v.string(say.text), v.maxLength(most, say.longText(most)))
export const filled = (most: number) => v.pipe(v.string(say.text), v.minLength(1, say.emptyText), v.maxLength(most, say.longText(most)))

/** A number from low to high, both included. */
export function number(low: number, high: number, unit?: string) {
  const bounds = say.between(low, high, unit)
  return v.pipe(v.number(say.number), v.minValue(low, bounds), v.maxValue(high, bounds))
}
/** A number above low, up to and including high. */
export function numberAbove(low: number, high: number, unit?: string) {
  const bounds = say.above(low, high, unit)
  return v.pipe(v.number(say.number), v.gtValue(low, bounds), v.maxValue(high, bounds))
}
/** A whole number from low to high, both included. */
export function whole(low: number, high: number, unit?: string) {
  const bounds = say.between(low, high, unit)
  return v.pipe(v.number(say.number), v.integer(say.whole), v.minValue(low, bounds), v.maxValue(high, bounds))
}
export const oneOf = <const Choices extends readonly (string | number)[]>(choices: Choices) => v.picklist(choices, say.oneOf(choices))
export const yesOrNo = v.boolean(say.yesOrNo)
export const group = <Entries extends v.ObjectEntries>(entries: Entries) => v.object(entries, say.group)
export const list = <Item extends v.GenericSchema>(item: Item, most: number) =>
  v.pipe(v.array(item, say.list), v.maxLength(most, say.longList(most)))
export const listFrom = <Item extends v.GenericSchema>(item: Item, fewest: number, most: number) =>
  v.pipe(v.array(item, say.list), v.minLength(fewest, say.shortList(fewest)), v.maxLength(most, say.longList(most)))
export const pair = <First extends v.GenericSchema, Second extends v.GenericSchema>(first: First, second: Second) =>
  v.strictTuple([first, second], say.pair)

export const has = (input: unknown, key: string) => typeof input === 'object' && input !== null && key in input

/** One of two shapes, chosen before either is checked, so that what is said is about the shape that was meant. */
export const either = <A extends v.GenericSchema, B extends v.GenericSchema>(isSecond: (input: unknown) => boolean, first: A, second: B) =>
  Object.assign(
    v.lazy((input: unknown): A | B => (isSecond(input) ? second : first)),
    { choices: [first, second] as const },
  )
