import type { NumberedId } from './columns.ts'
import { given, type Shape, signed, text } from './shapes.ts'

/** What an id was found to be, most likely first. */
const AS_PLACED = 0
const NEXT = 1
const SAME_STEM = 2
const OTHER = 3

/** An id that ends in a running number to base 36: "k3f09q-1c" is the stem "k3f09q-" and 48. */
const NUMBERED = /^(.*-)(0|[1-9a-z][0-9a-z]{0,7})$/

/**
 * An id. It costs next to nothing where it names its place ("s2b3"), or where it has its
 * stem in common with the last numbered one.
 */
export function idShape(form: number, step: number, full: number): Shape<string> {
  const steps = signed(step)
  const spelled = text(full, 'small')
  return {
    write(id, to, place) {
      const numbered = partsOf(id)
      const rise = numbered && numbered.stem === to.memory.lastId?.stem ? numbered.number - to.memory.lastId.number : undefined
      const kind = id === place ? AS_PLACED : rise === undefined ? OTHER : rise === 1 ? NEXT : SAME_STEM
      to.put(form, kind)
      if (kind === OTHER) spelled.write(id, to, place)
      if (kind === SAME_STEM) steps.write(given(rise), to, place)
      if (kind !== AS_PLACED && numbered) to.memory.lastId = numbered
    },
    read(from, place) {
      const kind = from.take(form)
      if (kind === AS_PLACED) return place
      const id = kind === OTHER ? spelled.read(from, place) : neighbour(from.memory.lastId, kind === NEXT ? 1 : steps.read(from, place))
      from.memory.lastId = partsOf(id) ?? from.memory.lastId
      return id
    },
  }
}

function partsOf(id: string): NumberedId | undefined {
  const parts = NUMBERED.exec(id)
  return parts ? { stem: parts[1]!, number: Number.parseInt(parts[2]!, 36) } : undefined
}

const neighbour = (last: NumberedId | undefined, rise: number) => given(last).stem + Math.max(0, given(last).number + rise).toString(36)
