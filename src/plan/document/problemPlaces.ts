import type { Path } from '#plan/rules/rule.ts'
import { type Catalogue, say, type Text } from '#words/said.ts'

type Lists = Parameters<Catalogue['documents']['entry']>[0]['list']

/** Lists whose entries are named by number. */
const NUMBERED: Readonly<Record<Exclude<Lists, 'sets'>, true>> = {
  sections: true,
  blocks: true,
  parts: true,
  cues: true,
  leaders: true,
  riders: true,
  anchors: true,
  odd: true,
  points: true,
  marks: true,
  quiet: true,
  feelAnchors: true,
  avoidMoves: true,
  setAside: true,
  shaky: true,
  trials: true,
  ancestors: true,
}

const isNumbered = (list: unknown): list is keyof typeof NUMBERED => typeof list === 'string' && Object.hasOwn(NUMBERED, list)

/**
 * Where a path leads: "song 3, set 2, part 1: the effort".
 * @param document the ride as read, consulted only to tell a set from a block.
 */
export function placeOf(path: Path, document: unknown): Text {
  const entries: Text[] = []
  let owner = 'ride'
  let rest: string[] = []
  let held = document
  for (const [i, key] of path.entries()) {
    const list = path[i - 1]
    held = stepInto(held, key)
    const isInside = i < path.length - 1
    if (typeof key === 'number' && isNumbered(list)) {
      const isSet = list === 'blocks' && typeof held === 'object' && held !== null && 'parts' in held
      entries.push(say('documents.entry', { list: isSet ? 'sets' : list, place: key + 1 }))
      owner = list === 'parts' ? 'blocks' : list
    } else if (isInside && (key === 'song' || key === 'bike')) {
      // A song is named by its place in the ride already.
      if (key === 'bike') entries.push(say('documents.bike'))
      owner = key
    } else {
      rest.push(String(key))
      continue
    }
    rest = []
  }
  return say('documents.at', { entries, field: fieldOf(owner, rest) })
}

const fieldOf = (owner: string, [first = '', ...rest]: readonly string[]): Text =>
  owner === 'ride' && first === 'houseRules' && rest.length > 0
    ? say('documents.rule', { name: rest.join('.') })
    : say('documents.field', { field: `${owner}.${[first, ...rest].join('.')}` })

const stepInto = (held: unknown, key: string | number): unknown =>
  typeof held === 'object' && held !== null ? (held as Record<string | number, unknown>)[key] : undefined

/** "sections[2].blocks[1].effort.from" */
export const pathText = (path: Path): string =>
  path.map((key, i) => (typeof key === 'number' ? `[${key}]` : i === 0 ? key : `.${key}`)).join('')

/** Order of two paths: entry numbers as numbers, names by letters, an owner before what it holds. */
export function comparePaths(a: Path, b: Path): number {
  for (let i = 0; i < Math.min(a.length, b.length); i++) {
    const [x, y] = [a[i]!, b[i]!]
    if (x === y) continue
    return typeof x === 'number' && typeof y === 'number' ? x - y : String(x) < String(y) ? -1 : 1
  }
  return a.length - b.length
}
