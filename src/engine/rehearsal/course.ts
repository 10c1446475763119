import type { Seconds } from '#units/units.ts'

/** A stretch of the ride clock, played from its beginning to its end. */
export interface Leg {
  from: Seconds
  to: Seconds
}

/** Stretches of a ride one after another, once or again and again; none is empty. */
export interface Course {
  legs: readonly Leg[]
  repeats: boolean
}

/** A piece of a leg on both clocks: the ride's, and the course's own, which only goes on. */
export interface Piece {
  /** Which leg, counted on through every round. */
  leg: number
  /** The leg's own beginning on the course's clock. */
  legAt: Seconds
  from: Seconds
  to: Seconds
  /** What the course's clock shows at `from`. */
  at: Seconds
}

const roundOf = ({ legs }: Course): Seconds => legs.reduce((sum, { from, to }) => sum + (to - from), 0)

/** How long a course takes; infinite where it repeats. */
export const lengthOf = (course: Course): Seconds => (course.repeats && course.legs.length > 0 ? Number.POSITIVE_INFINITY : roundOf(course))

/** The pieces of the ride that are played while the course's clock goes from one second to another, in their order. */
export function piecesOf(course: Course, from: Seconds, to: Seconds): Piece[] {
  const { legs, repeats } = course
  const round = roundOf(course)
  if (!(round > 0)) return []
  const pieces: Piece[] = []
  // One round earlier than division says: rounding must not lose the end of one.
  for (let number = repeats ? Math.max(0, Math.floor(from / round) - 1) : 0; number === 0 || repeats; number++) {
    let legAt = number * round
    if (legAt >= to) break
    for (const [i, leg] of legs.entries()) {
      const end = i === legs.length - 1 ? (number + 1) * round : legAt + (leg.to - leg.from)
      const [begin, stop] = [Math.max(from, legAt), Math.min(to, end)]
      if (stop > begin) pieces.push({ leg: number * legs.length + i, legAt, ...within(leg, legAt, begin, stop, end), at: begin })
      legAt = end
    }
  }
  return pieces
}

/** A leg's own ends are given as they are: pieces that meet share the very same number. */
const within = (leg: Leg, legAt: Seconds, begin: Seconds, stop: Seconds, end: Seconds): Leg => ({
  from: begin === legAt ? leg.from : leg.from + (begin - legAt),
  to: stop === end ? leg.to : leg.from + (stop - legAt),
})

/** Where in the ride the course is at a second of its own clock; at its end the end of its last leg. */
export function rideTimeAt(course: Course, at: Seconds): Seconds {
  const { legs, repeats } = course
  const round = roundOf(course)
  if (legs.length === 0) return 0
  let left = Math.max(0, repeats && round > 0 ? at - Math.floor(at / round) * round : at)
  for (const leg of legs) {
    const length = leg.to - leg.from
    if (left < length) return leg.from + left
    left -= length
  }
  return legs.at(-1)!.to
}

/** The second of the course's clock at which it is at a place of the ride, or comes to what is next after it; its beginning where that is all behind. Its legs stand in the order of the ride. */
export function courseTimeOf({ legs }: Course, at: Seconds): Seconds {
  let before = 0
  for (const { from, to } of legs) {
    if (at < to) return before + Math.max(0, at - from)
    before += to - from
  }
  return 0
}
