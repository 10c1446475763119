import type { Manner } from './spelling.ts'

/** Takes values column by column. What the whole numbers of a column, 0 or more, stand for is the layout's affair. */
export interface ColumnWriter {
  memory: Memory
  put(column: number, value: number): void
  putText(column: number, text: string, manner: Manner): void
}

/** Hands the same values out again, in the order in which they were put. */
export interface ColumnReader {
  memory: Memory
  take(column: number): number
  takeText(column: number, manner: Manner): string
}

/** What has gone by, the same for the writer and the reader: from it the next value is guessed, and only the difference written. */
export interface Memory {
  /** The last numbered id. */
  lastId?: NumberedId
  /** What the current block asks for, and the one before. */
  scene: { terrain: string; posture: string; postureBefore: string }
  /** What blocks in a scene were called, latest first. */
  labels: Map<string, string[]>
  /** The last number of a column in a scene. */
  numbers: Map<string, number>
  /** The choices or texts of a column, latest first. */
  latest: Map<number, unknown[]>
}

/** The parts of an id that ends in a running number. */
export interface NumberedId {
  stem: string
  number: number
}

export const newMemory = (): Memory => ({
  scene: { terrain: '', posture: '', postureBefore: '' },
  labels: new Map(),
  numbers: new Map(),
  latest: new Map(),
})

/** The values a column has had, latest first. */
export function latestOf<T>(memory: Memory, column: number, initial: readonly T[] = []): T[] {
  const held = memory.latest.get(column) ?? [...initial]
  memory.latest.set(column, held)
  return held as T[]
}

/** Moves a value to the front of its list; returns where it stood, or −1 where it is new. */
export function toFront<T>(values: T[], value: T): number {
  const place = values.indexOf(value)
  if (place >= 0) values.splice(place, 1)
  values.unshift(value)
  return place
}

/** Thrown while reading bytes that no ride was written to. */
export class BrokenColumns extends Error {}

/** The manners of spelling, in the order in which their texts follow one another. */
export const MANNERS: readonly Manner[] = ['small', 'sentences']

/**
 * How a column is written after its first bit, which says that not all its values are 0:
 * one value for all; 0 but for so many ones, or so many other values, each with its
 * distance from the one before; or so many values in a row.
 */
export const KINDS = { equal: 0, listed: 1, someOnes: 2, someOthers: 3 } as const
export const KIND_BITS = 2
