import type { Chance } from './chance.ts'
import { FILES } from './corpus.ts'

/** A file that was damaged, edited by hand, or made by someone who means harm. */
export const hostileFile = (chance: Chance): string => chance.pick(MAKERS)(chance)

type Maker = (chance: Chance) => string
type Holder = Record<string | number, unknown>

/** Values that trip up who trusts them. The text of each is put in as it stands, since JSON can say what no object can. */
const NASTY: readonly string[] = [
  ...['null', 'true', '""', '[]', '{}', '0', '-0', '-1', '0.5', '1e308', '-1e308', '1e400', '5e-324', '9007199254740993', '100000'],
  ...['"\\ud800"', '"\\udc00x"', '"\\u0000"', '"__proto__"', '"NaN"', '"2000-01-01"', '"<img src=x onerror=alert(1)>"', '"\u202e"'],
  ...['{"__proto__":{"polluted":true}}', '{"constructor":{"prototype":{"polluted":true}}}', '{"toString":1,"valueOf":null}'],
  ...['[[[[[[[[[[]]]]]]]]]]', '{"length":1e9}', '{"counts":-8}', '{"counts":1e15}', '{"seconds":1e300}', '{"from":10,"to":-10}'],
  `"${'a'.repeat(20_000)}"`,
  `[${'0,'.repeat(3000)}0]`,
  `${'['.repeat(40)}${']'.repeat(40)}`,
  `${'['.repeat(50_000)}${']'.repeat(50_000)}`,
]

/** A place in the text that will stand for one of them. */
const MARK = '\u0001nasty'

const damagedText: Maker = (chance) => {
  let text = chance.pick(FILES)
  for (let times = 1 + chance.below(3); times > 0; times--) {
    const at = chance.below(text.length)
    text = text.slice(0, at) + chance.pick(['', '"', '{', '}', '[', ']', ',', ':', '0', '-', '9', 'e', '\\', '\ud800']) + text.slice(at + 1)
  }
  return text
}

const changedTree: Maker = (chance) => {
  const document = JSON.parse(chance.pick(FILES)) as Holder
  for (let times = 1 + chance.below(3); times > 0; times--) change(document, chance)
  return JSON.stringify(document).replaceAll(JSON.stringify(MARK), () => chance.pick(NASTY))
}

/** Changes one place somewhere inside. */
function change(document: Holder, chance: Chance): void {
  const holders = holdersIn(document)
  const holder = chance.pick(holders)
  const keys = Object.keys(holder)
  const key = keys.length > 0 ? chance.pick(keys) : 'new'
  const act = chance.below(7)
  if (act <= 2) holder[key] = MARK
  if (act === 3) delete holder[key]
  if (act === 4 && !Array.isArray(holder))
    define(holder, chance.pick(['__proto__', 'constructor', 'parts', 'id', 'extra', 'length', 'toJSON']))
  // The same ids a second time, and one part of the ride where another should be.
  if (act === 5) repeat(holder, chance)
  if (act === 6) holder[key] = structuredClone(chance.pick(holders))
}

/** As a key of its own, `__proto__` too, as JSON has it. */
const define = (holder: Holder, key: string) =>
  Object.defineProperty(holder, key, { value: MARK, enumerable: true, configurable: true, writable: true })

function repeat(holder: Holder, chance: Chance): void {
  if (!Array.isArray(holder) || holder.length === 0) return
  const one: unknown = chance.pick(holder)
  const times = chance.oneIn(8) ? 60 : 1
  for (let i = 0; i < times; i++) holder.push(structuredClone(one))
}

function holdersIn(value: unknown): Holder[] {
  if (typeof value !== 'object' || value === null) return []
  return [value as Holder, ...Object.values(value).flatMap(holdersIn)]
}

/** Far too deep, far too wide, or no ride at all. */
const overgrown: Maker = (chance) => {
  const size = chance.pick([33, 1000, 100_000])
  const ride = chance.pick(FILES)
  return chance.pick([
    `${'['.repeat(size)}${']'.repeat(size)}`,
    `${'{"a":'.repeat(size)}1${'}'.repeat(size)}`,
    `[${'{},'.repeat(size)}{}]`,
    ride.replace('"sections":[', `"sections":[${'{},'.repeat(size)}`),
    ride.replace('"title":"', `"title":"${'x'.repeat(size)}`),
    `{"schema":${chance.pick(['1', '2', '1e9', '-1', '"1"', 'null'])},${ride.slice(1)}`,
    ride.replace('{', `{${'"__proto__":{"polluted":1},'.repeat(3)}`),
    chance.pick(['', 'null', '0', '"ride"', '[]', '{}', '\ufeff{}', 'undefined', '<ride/>']),
  ])
}

const MAKERS: readonly Maker[] = [damagedText, changedTree, changedTree, changedTree, changedTree, overgrown]
