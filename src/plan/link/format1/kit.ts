import type { Foot, StrikesPerBeat } from '#plan/model.ts'
import { idShape } from './idShape.ts'
import { nameShape } from './nameShape.ts'
import { count, group, list, mapped, number, oneOf, optional, type Shape, signed, text, usually } from './shapes.ts'

/** From here to there. */
export interface Range {
  from: number
  to: number
}

/**
 * Shapes for a layout, each with the next free columns, numbered from 0 in the order in
 * which they are asked for. That order is the format.
 */
export function layoutKit() {
  let used = 0
  const column = () => used++

  const id = idShape(column(), column(), column())
  const [letters, otherLetters] = [column(), column()]
  const whole = () => count(column())
  const signedWhole = () => signed(column())
  const anyNumber = (value = column(), written = signed(value)) => number(column(), value, written)
  const maybe = <T>(shape: Shape<T>) => optional(column(), shape)

  /** The second number is written only where it differs. */
  const range = (from: Shape<number>, to: Shape<number>): Shape<Range> =>
    mapped(
      group<{ from: number; to: number | undefined }>({ from, to: maybe(to) }),
      (value) => ({ from: value.from, to: value.to === value.from ? undefined : value.to }),
      (written) => ({ from: written.from, to: written.to ?? written.from }),
    )

  /** One of two shapes, by a property that tells them apart. */
  const either = <A, B>(isFirst: (value: A | B) => value is A, first: Shape<A>, second: Shape<B>): Shape<A | B> => {
    const which = column()
    return {
      write(value, to, place) {
        const goesFirst = isFirst(value)
        to.put(which, goesFirst ? 0 : 1)
        if (goesFirst) first.write(value, to, place)
        else second.write(value as B, to, place)
      },
      read: (from, place) => (from.take(which) === 0 ? first : second).read(from, place),
    }
  }

  return {
    column,
    columnCount: () => used,
    id,
    whole,
    signedWhole,
    anyNumber,
    maybe,
    range,
    either,
    words: () => text(column(), 'sentences'),
    smallWords: () => text(column(), 'small'),
    name: () => nameShape(column(), letters, otherLetters),
    yes: () => oneOf<boolean>()(column(), [true, false]),
    foot: () => oneOf<Foot>()(column(), ['left', 'right']),
    strikes: () => oneOf<StrikesPerBeat>()(column(), [1, 2, 0.5, null]),
    usual: <T>(value: T, shape: Shape<T>) => usually(column(), value, shape),
    several: <T>(mark: string, shape: Shape<T>) => list(column(), mark, shape),
  }
}

export type Kit = ReturnType<typeof layoutKit>
