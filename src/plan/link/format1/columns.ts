import type { NumberedId } from './idShape.ts'
import type { Manner } from './spelling.ts'

/** Takes values column by column. What the whole numbers of a column, 0 or more, stand for is the layout's affair. */
export interface ColumnWriter {
  /** The last numbered id put, to write the next one by its difference. */
  lastId?: NumberedId
  put(column: number, value: number): void
  putText(column: number, text: string, manner: Manner): void
}

/** Hands the same values out again, in the order in which they were put. */
export interface ColumnReader {
  lastId?: NumberedId
  take(column: number): number
  takeText(column: number, manner: Manner): string
}

/** Thrown while reading bytes that no ride was written to. */
export class BrokenColumns extends Error {}

/** The manners of spelling, in the order in which their texts follow the columns. */
export const MANNERS: readonly Manner[] = ['names', 'small', 'sentences']

/**
 * The head of a column says how it is written: with no value but 0 (or none at all); with
 * no value but the one that follows; 0 but for so many ones, or so many other values, each
 * with its distance from the one before; or as so many values in a row.
 */
export const HEADS = { zeros: 0, equal: 1, someOnes: 2, someOthers: 3, listed: 4 } as const

/** Moves a text to the front of those of its column; returns where it stood, from 1, or 0 for a new one. */
export function toFront(texts: string[], text: string): number {
  const place = texts.indexOf(text)
  if (place >= 0) texts.splice(place, 1)
  texts.unshift(text)
  return place + 1
}
