import type { Problem } from '#units/problem.ts'
import type { en } from './en/index.ts'

/** Every text in one language. English is the pattern: another language has the same entries with the same values. */
export type Catalogue = typeof en

/** An entry that is a text, or makes one of values. */
type Entry = string | ((values: never) => string)

/** "checks.recoveryDebt": where an entry stands in the catalogue. */
type Path = {
  [Area in keyof Catalogue & string]: {
    [Key in keyof Catalogue[Area] & string]: Catalogue[Area][Key] extends Entry ? `${Area}.${Key}` : never
  }[keyof Catalogue[Area] & string]
}[keyof Catalogue & string]

type EntryOf<P extends Path> = P extends `${infer Area}.${infer Key}`
  ? Area extends keyof Catalogue
    ? Key extends keyof Catalogue[Area]
      ? Catalogue[Area][Key]
      : never
    : never
  : never

/** Where an entry takes a text it may be given one by name. */
type Given<T> = T extends string
  ? string extends T
    ? Text
    : T
  : T extends readonly string[]
    ? readonly Text[]
    : T extends (...args: never) => unknown
      ? T
      : T extends object
        ? { readonly [K in keyof T]: Given<T[K]> }
        : T

type ValuesOf<P extends Path> = EntryOf<P> extends (values: infer V) => string ? [values: Given<V>] : []

/**
 * A text of ours by its name and values, in no language yet. The engine and the plan say
 * what is so; whoever shows it tells it in a language. It is plain data but for this: to be
 * put into a string unnoticed is an error and not "[object Object]".
 */
export class Said {
  readonly say: Path
  readonly values: unknown

  constructor(path: Path, values: unknown) {
    this.say = path
    if (values !== undefined) this.values = values
  }

  toString(): never {
    throw new Error(`“${this.say}” was put into a string without being told in a language`)
  }
}

/** Somebody's own words as they stand, or ours by name. */
export type Text = string | Said

/** Why a typed text is not taken: in a text, or as a problem that reading it had. */
export type Refusal = Text | Problem

/** A text of ours with its values. */
export function say<P extends Path>(path: P, ...[values]: ValuesOf<P>): Said {
  return new Said(path, values)
}

/** A text in the language of a catalogue, with all texts among its values. */
export function tellIn(catalogue: Catalogue, text: Text): string {
  if (typeof text === 'string') return text
  const [area, key] = text.say.split('.') as [keyof Catalogue, string]
  const entry = (catalogue[area] as Readonly<Record<string, Entry>>)[key]!
  return typeof entry === 'string' ? entry : entry(toldValues(catalogue, text.values) as never)
}

/** The same values with every text told, and what somebody wrote from right to left kept apart from the words around it. */
function toldValues(catalogue: Catalogue, value: unknown): unknown {
  if (typeof value === 'string') return isolated(value)
  if (isSaid(value)) return tellIn(catalogue, value)
  if (Array.isArray(value)) return value.map((item) => toldValues(catalogue, item))
  if (typeof value !== 'object' || value === null) return value
  return Object.fromEntries(Object.entries(value).map(([key, item]) => [key, toldValues(catalogue, item)]))
}

/** By its form: what comes back from a worker or a store is of no class. */
const isSaid = (value: unknown): value is Said => value instanceof Said || (typeof value === 'object' && value !== null && 'say' in value)

/** Somebody's own words that run the other way, between U+2068 and U+2069 (Unicode Bidirectional Algorithm, UAX #9): our words and numbers stay where they are. */
const isolated = (text: string): string => (RIGHT_TO_LEFT.test(text) ? `\u2068${text}\u2069` : text)

/** Scripts that are written from right to left. */
const RIGHT_TO_LEFT = /[\p{Script=Hebrew}\p{Script=Arabic}\p{Script=Syriac}\p{Script=Thaana}\p{Script=Nko}\p{Script=Adlam}]/u
