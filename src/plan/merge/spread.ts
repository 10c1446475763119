import { patched } from '#plan/edits.ts'
import { UNSHARED } from '#plan/link/shareable.ts'
import type { Block, Cue, Ride, Section, SetBlock, Song } from '#plan/model.ts'
import type { Node } from './tree.ts'

/**
 * A thing as the values that are decided one by one. What only makes sense together is one
 * value: a resistance call (its kind says what its numbers mean), a length, an effort with
 * its ramp, a cadence with its own, a move with its counts, the fewest and most eights, the
 * in- and out-point. A song is taken apart while all have the same song, since its name, its
 * beats and its marks are seen to by different people; another song is one value, with the
 * points that are counts of it.
 */
export type Spread = Record<string, unknown>

const isGiven = (value: unknown) => value !== undefined

const given = (spread: Spread): Spread => Object.fromEntries(Object.entries(spread).filter(([, value]) => isGiven(value)))

/** Several fields as one value; absent where none of them is given. */
const together = (fields: Spread): Spread | undefined => (Object.values(fields).some(isGiven) ? given(fields) : undefined)

/** Fields under longer names. */
export const prefixed = (prefix: string, fields: object): Spread =>
  Object.fromEntries(Object.entries(fields).map(([key, value]) => [`${prefix}${key}`, value]))

/** The fields of a thing but its children. */
export function spreadOf(node: Node, songApart: boolean): Spread {
  switch (node.of) {
    case 'section':
      return spreadSection(node.value, songApart)
    case 'set': {
      const { parts: _parts, ...rest } = node.value
      return given(rest)
    }
    case 'block': {
      const { cues: _cues, minEights, maxEights, ...rest } = node.value
      return given({ ...rest, eights: together({ minEights, maxEights }) })
    }
    case 'cue':
      return given({ ...node.value })
  }
}

function spreadSection({ blocks: _blocks, song, inCount, outCount, ...rest }: Section, songApart: boolean): Spread {
  if (!songApart || !song) return given({ ...rest, song: together({ song, inCount, outCount }) })
  return given({ ...rest, ...prefixed(SONG, song), ridden: together({ inCount, outCount }) })
}

const SONG = 'song.'

/** The fields of such names, under their own. */
export const within = (prefix: string, spread: Spread): Spread =>
  Object.fromEntries(Object.entries(spread).flatMap(([key, value]) => (key.startsWith(prefix) ? [[key.slice(prefix.length), value]] : [])))

const without = (prefix: string, spread: Spread): Spread =>
  Object.fromEntries(Object.entries(spread).filter(([key]) => !key.startsWith(prefix)))

/** The inverse of `spreadOf`, with the children put in. */
export function gatherSection(spread: Spread, blocks: Section['blocks']): Section {
  const { song: whole, ridden, ...rest } = without(SONG, spread)
  const song = within(SONG, spread) as unknown as Song
  const apart = Object.keys(song).length > 0 ? { song } : {}
  return { ...rest, ...Object(whole), ...apart, ...Object(ridden), blocks } as Section
}

export function gatherBlock({ eights, ...rest }: Spread, cues: Cue[]): Block {
  return { ...rest, ...Object(eights), cues } as Block
}

export const gatherSet = (spread: Spread, parts: Block[]): SetBlock => ({ ...spread, parts }) as unknown as SetBlock

/** What belongs to the person who keeps the ride, and is never taken from another's. */
export const OWN = ['id', 'schema', 'parent', 'ancestors', ...UNSHARED] as const satisfies readonly (keyof Ride)[]
/** What is decided elsewhere. */
const APART: readonly string[] = ['sections', 'bike', 'datum', 'leaders']
const NOT_SPREAD = new Set<string>([...OWN, ...APART])

/** Objects of a ride whose fields are seen to one by one: each rule of the house, each note for a substitute. */
const BY_FIELD = ['houseRules', 'standIn'] as const
/** Whether the ride has such an object, were it empty. */
export type Has = Record<(typeof BY_FIELD)[number], boolean>

/** The ride's own fields that are shared and stand for themselves; house rules and the notes for a substitute are one value each. */
export function spreadRide(ride: Ride): Spread {
  const shared = Object.fromEntries(Object.entries(ride).filter(([key]) => !NOT_SPREAD.has(key) && !isByField(key)))
  return given({ ...shared, ...Object.assign({}, ...BY_FIELD.map((field) => prefixed(`${field}.`, ride[field] ?? {}))) })
}

/** The ride with those fields in place of its own; an object of them that is empty stays only where it is to be there. */
export function gatherRide(ride: Ride, spread: Spread, has: Has): Ride {
  const own = (fields: Spread) => BY_FIELD.reduce((rest, field) => without(`${field}.`, rest), fields)
  const cleared = Object.fromEntries(Object.keys(own(spreadRide(ride))).map((key) => [key, undefined]))
  const gathered = BY_FIELD.map((field) => {
    const fields = within(`${field}.`, spread)
    return [field, has[field] || Object.keys(fields).length > 0 ? fields : undefined]
  })
  return patched(ride, { ...cleared, ...own(spread), ...Object.fromEntries(gathered) } as Partial<Ride>)
}

const isByField = (key: string): boolean => (BY_FIELD as readonly string[]).includes(key)
