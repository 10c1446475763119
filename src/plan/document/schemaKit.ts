import * as v from 'valibot'
import { messageOf as message, type Unit } from './wrong.ts'

/** What the schema of a document is made of: values within bounds, each with what is wrong outside them. */

export const text = (most: number) =>
  v.pipe(v.string(message({ problem: 'text' })), v.maxLength(most, message({ problem: 'longText', most })))
export const filled = (most: number) =>
  v.pipe(
    v.string(message({ problem: 'text' })),
    v.minLength(1, message({ problem: 'emptyText' })),
    v.maxLength(most, message({ problem: 'longText', most })),
  )

/** A number from low to high, both included. */
export function number(low: number, high: number, unit?: Unit) {
  const bounds = message({ problem: 'between', low, high, unit })
  return v.pipe(v.number(message({ problem: 'number' })), v.minValue(low, bounds), v.maxValue(high, bounds))
}
/** A number above low, up to and including high. */
export function numberAbove(low: number, high: number, unit?: Unit) {
  const bounds = message({ problem: 'above', low, high, unit })
  return v.pipe(v.number(message({ problem: 'number' })), v.gtValue(low, bounds), v.maxValue(high, bounds))
}
/** A whole number from low to high, both included. */
export function whole(low: number, high: number, unit?: Unit) {
  const bounds = message({ problem: 'between', low, high, unit })
  return v.pipe(
    v.number(message({ problem: 'number' })),
    v.integer(message({ problem: 'whole' })),
    v.minValue(low, bounds),
    v.maxValue(high, bounds),
  )
}
/** What is wrong with a value that is none of a few. */
export const oneOfMessage = (choices: readonly (string | number | boolean)[]): string =>
  message({ problem: 'oneOf', choices: choices.map(String) })

export const oneOf = <const Choices extends readonly (string | number)[]>(choices: Choices) => v.picklist(choices, oneOfMessage(choices))
export const yesOrNo = v.boolean(message({ problem: 'yesOrNo' }))
export const group = <Entries extends v.ObjectEntries>(entries: Entries) => v.object(entries, message({ problem: 'group' }))
export const list = <Item extends v.GenericSchema>(item: Item, most: number) =>
  v.pipe(v.array(item, message({ problem: 'list' })), v.maxLength(most, message({ problem: 'longList', most })))
export const listFrom = <Item extends v.GenericSchema>(item: Item, fewest: number, most: number) =>
  v.pipe(
    v.array(item, message({ problem: 'list' })),
    v.minLength(fewest, message({ problem: 'shortList', fewest })),
    v.maxLength(most, message({ problem: 'longList', most })),
  )
export const pair = <First extends v.GenericSchema, Second extends v.GenericSchema>(first: First, second: Second) =>
  v.strictTuple([first, second], message({ problem: 'pair' }))

export const has = (input: unknown, key: string) => typeof input === 'object' && input !== null && key in input

/** One of two shapes, chosen before either is checked, so that what is said is about the shape that was meant. */
export const either = <A extends v.GenericSchema, B extends v.GenericSchema>(isSecond: (input: unknown) => boolean, first: A, second: B) =>
  Object.assign(
    v.lazy((input: unknown): A | B => (isSecond(input) ? second : first)),
    { choices: [first, second] as const },
  )
