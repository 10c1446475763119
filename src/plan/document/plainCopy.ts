/** Deepest nesting that is read. A ride needs 11 levels; the rest is room for what a later version may add. */
const MAX_DEPTH = 32

/** Most values read from one document: about 4,000 fully written blocks, far beyond any class. */
const MAX_VALUES = 100_000

/** Most characters of text read from one document, keys included. */
const MAX_CHARACTERS = 1_000_000

/** Why a value could not be read as a document. */
type Unreadable = 'tooDeep' | 'tooLarge' | 'unreadable'

type PlainCopy = { ok: true; value: unknown } | { ok: false; reason: Unreadable }

const LONE_SURROGATE = /[\uD800-\uDBFF](?![\uDC00-\uDFFF])|(?<![\uD800-\uDBFF])[\uDC00-\uDFFF]/g

/** Replaces halves of characters, which no UTF-8 text can carry, by U+FFFD, the character that says "one is missing here". */
export const wellFormed = (text: string): string => text.replace(LONE_SURROGATE, '\uFFFD')

class Refusal extends Error {
  readonly reason: Unreadable
  constructor(reason: Unreadable) {
    super(reason)
    this.reason = reason
  }
}

/**
 * Copies a value from outside into plain objects and lists, reading each property once.
 *
 * What comes from outside may be a proxy, hold getters that throw, run in a circle, or be
 * nested a million deep; after this copy none of that is left. Undefined properties and
 * `__proto__` are dropped, −0 becomes 0, halves of characters become U+FFFD. Functions,
 * symbols and big integers are passed on for the schema to refuse.
 *
 * @returns the copy, or the reason why there is none; never throws. Cost: linear in the values and characters read, at most 100,000 and a million.
 */
export function plainCopy(value: unknown): PlainCopy {
  let left = MAX_VALUES
  let charactersLeft = MAX_CHARACTERS

  const counted = (text: string): string => {
    charactersLeft -= text.length
    if (charactersLeft < 0) throw new Refusal('tooLarge')
    return text
  }

  const copy = (from: unknown, depth: number): unknown => {
    left -= 1
    if (left < 0) throw new Refusal('tooLarge')
    if (typeof from === 'number') return from === 0 ? 0 : from
    if (typeof from === 'string') return wellFormed(counted(from))
    if (typeof from !== 'object' || from === null) return from
    if (depth === MAX_DEPTH) throw new Refusal('tooDeep')
    return Array.isArray(from) ? copyList(from, depth) : copyGroup(from, depth)
  }

  const copyList = (from: readonly unknown[], depth: number): unknown[] => {
    const length = from.length
    if (length > left) throw new Refusal('tooLarge')
    const to: unknown[] = []
    for (let i = 0; i < length; i++) to.push(copy(from[i], depth + 1))
    return to
  }

  const copyGroup = (from: object, depth: number): Record<string, unknown> => {
    const keys = Object.keys(from)
    if (keys.length > left) throw new Refusal('tooLarge')
    const to: Record<string, unknown> = {}
    for (const key of keys) {
      if (counted(key) === '__proto__') continue
      const held = copy((from as Record<string, unknown>)[key], depth + 1)
      if (held !== undefined) to[key] = held
    }
    return to
  }

  try {
    return { ok: true, value: copy(value, 0) }
  } catch (error) {
    return { ok: false, reason: error instanceof Refusal ? error.reason : 'unreadable' }
  }
}
