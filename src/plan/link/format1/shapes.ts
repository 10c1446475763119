import { BrokenColumns, type ColumnReader, type ColumnWriter, latestOf, type Memory, toFront } from './columns.ts'
import type { Manner } from './spelling.ts'

/**
 * How one kind of value lies in the columns. `place` names where in the ride it stands
 * ("s2b3"), for what is guessed from the place.
 */
export interface Shape<T> {
  write(value: T, to: ColumnWriter, place: string): void
  read(from: ColumnReader, place: string): T
}

/** A whole number from 0 up. */
export const count = (column: number): Shape<number> => ({
  write: (value, to) => to.put(column, value),
  read: (from) => from.take(column),
})

/** A number written as its difference from the last one of its column in a like scene. */
export const near = (column: number, like: (scene: Memory['scene']) => string): Shape<number> => {
  const difference = signed(column)
  const lastOf = ({ scene, numbers }: Memory) => {
    const key = `${column} ${like(scene)}`
    return { key, last: numbers.get(key) ?? numbers.get(`${column}`) ?? 0 }
  }
  const remember = ({ numbers }: Memory, key: string, value: number) => void numbers.set(key, value).set(`${column}`, value)
  return {
    write(value, to, place) {
      const { key, last } = lastOf(to.memory)
      difference.write(value - last, to, place)
      remember(to.memory, key, value)
    },
    read(from, place) {
      const { key, last } = lastOf(from.memory)
      const value = last + difference.read(from, place)
      remember(from.memory, key, value)
      return value
    },
  }
}

/** A whole number of either sign: 0, −1, 1, −2, … */
export const signed = (column: number): Shape<number> =>
  mapped(
    count(column),
    (value) => (value < 0 ? -2 * value - 1 : 2 * value),
    (value) => (value % 2 === 1 ? -(value + 1) / 2 : value / 2),
  )

/** A whole number as its multiples of a larger unit and what is over. */
export const inUnits = (unit: number, multiples: Shape<number>, over: Shape<number>): Shape<number> => ({
  write(value, to, place) {
    multiples.write(Math.floor(value / unit), to, place)
    over.write(value % unit, to, place)
  },
  read: (from, place) => multiples.read(from, place) * unit + over.read(from, place),
})

/** The scales at which a number is tried as a whole one, by their index in the column of forms. */
const SCALES = [1, 4, 1000] as const
const BITS = SCALES.length

/** Any number: whole, in quarters, in thousandths, or else as the 64 bits it is. */
export const number = (form: number, column: number, whole = signed(column)): Shape<number> => {
  return {
    write(value, to, place) {
      const scale = SCALES.findIndex((by) => isWholeAt(value, by))
      to.put(form, scale < 0 ? BITS : scale)
      if (scale >= 0) whole.write(Math.round(value * SCALES[scale]!), to, place)
      else for (const half of bitsOf(value)) to.put(column, half)
    },
    read(from, place) {
      const scale = from.take(form)
      if (scale < SCALES.length) return whole.read(from, place) / SCALES[scale]!
      return numberOf(from.take(column), from.take(column))
    },
  }
}

const isWholeAt = (value: number, scale: number) => Math.abs(value) < 2 ** 40 && Math.round(value * scale) / scale === value

function bitsOf(value: number): [high: number, low: number] {
  const view = new DataView(new ArrayBuffer(8))
  view.setFloat64(0, value)
  return [view.getUint32(0), view.getUint32(4)]
}

function numberOf(high: number, low: number): number {
  const view = new DataView(new ArrayBuffer(8))
  view.setUint32(0, high)
  view.setUint32(4, low)
  return view.getFloat64(0)
}

/** One of a fixed list, which must name every value of its type; the list may grow at its end and never change. */
export const oneOf =
  <T>() =>
  <const Choices extends readonly T[]>(column: number, choices: Exclude<T, Choices[number]> extends never ? Choices : never): Shape<T> => ({
    write: (value, to) => to.put(column, choices.indexOf(value)),
    read: (from) => given(choices[from.take(column)]),
  })

/** One of a fixed list as its place among them, latest first. */
export const latestOneOf =
  <T>() =>
  <const Choices extends readonly T[]>(column: number, choices: Exclude<T, Choices[number]> extends never ? Choices : never): Shape<T> => ({
    write: (value, to) => to.put(column, toFront(latestOf<T>(to.memory, column, choices), value)),
    read(from) {
      const latest = latestOf<T>(from.memory, column, choices)
      const value = given(latest[from.take(column)])
      toFront(latest, value)
      return value
    },
  })

export const text = (column: number, manner: Manner): Shape<string> => ({
  write: (value, to) => to.putText(column, value, manner),
  read: (from) => from.takeText(column, manner),
})

/** A value that may be left out. */
export const optional = <T>(column: number, shape: Shape<T>): Shape<T | undefined> => ({
  write(value, to, place) {
    to.put(column, value === undefined ? 0 : 1)
    if (value !== undefined) shape.write(value, to, place)
  },
  read: (from, place) => (from.take(column) === 0 ? undefined : shape.read(from, place)),
})

/** A value that most often is the usual one, and then takes no room. */
export const usually = <T>(column: number, usual: T, shape: Shape<T>): Shape<T> => ({
  write(value, to, place) {
    const isUsual = JSON.stringify(value) === JSON.stringify(usual)
    to.put(column, isUsual ? 0 : 1)
    if (!isUsual) shape.write(value, to, place)
  },
  read: (from, place) => (from.take(column) === 0 ? (JSON.parse(JSON.stringify(usual)) as T) : shape.read(from, place)),
})

/** A list; each entry's place is the list's own with a mark and its number. */
export const list = <T>(column: number, mark: string, shape: Shape<T>): Shape<readonly T[]> => ({
  write(values, to, place) {
    to.put(column, values.length)
    for (const [i, value] of values.entries()) shape.write(value, to, `${place}${mark}${i + 1}`)
  },
  read(from, place) {
    const values: T[] = []
    for (let left = from.take(column); left > 0; left--) values.push(shape.read(from, `${place}${mark}${values.length + 1}`))
    return values
  },
})

export const pair = <A, B>(first: Shape<A>, second: Shape<B>): Shape<readonly [A, B]> => ({
  write([a, b], to, place) {
    first.write(a, to, place)
    second.write(b, to, place)
  },
  read: (from, place) => [first.read(from, place), second.read(from, place)],
})

/** Named values, every one of the type's, in the order they are named here. */
export const group = <T extends object>(shapes: { [Key in keyof T]-?: Shape<T[Key]> }): Shape<T> => ({
  write(value, to, place) {
    for (const key in shapes) shapes[key].write(value[key], to, place)
  },
  read(from, place) {
    const value: Partial<T> = {}
    for (const key in shapes) {
      const held = shapes[key].read(from, place)
      if (held !== undefined) value[key] = held
    }
    return value as T
  },
})

/** Written as something else. */
export const mapped = <T, Written>(
  shape: Shape<Written>,
  toWritten: (value: T) => Written,
  fromWritten: (written: Written) => T,
): Shape<T> => ({
  write: (value, to, place) => shape.write(toWritten(value), to, place),
  read: (from, place) => fromWritten(shape.read(from, place)),
})

/** A value found in a table, or the end of reading where there is none. */
export function given<T>(value: T | undefined): T {
  if (value === undefined) throw new BrokenColumns()
  return value
}
