import { type Lexicon, LINE_MOVES, type LineMove, type Mark, type Ways } from './lexicon.ts'
import type { Block, Foot, Hands, Posture, Strikes, Terrain } from './lineTypes.ts'
import { type Token, tokensOf } from './tokens.ts'

/** What a word of a line may mean. */
export type Meaning =
  | { readonly field: 'terrain'; readonly value: Terrain }
  | { readonly field: 'posture'; readonly value: Posture }
  | { readonly field: 'hands'; readonly value: Hands }
  | { readonly field: 'move'; readonly value: LineMove | 'none' }
  | { readonly field: 'side'; readonly value: Foot }
  | { readonly field: 'then'; readonly value: 'alternate' }
  | { readonly field: 'lead'; readonly value: NonNullable<Block['lead']> }
  | { readonly field: 'strikesPerBeat'; readonly value: Strikes }
  | { readonly field: 'cadence'; readonly value: 'legsStill' | 'none' }
  | { readonly field: 'allOut' | 'water' | 'walk'; readonly value: true }
  | { readonly field: 'mark'; readonly value: Mark }
  | { readonly field: 'number' | 'addition'; readonly value: number }

/** A lexicon by its words: every way to say something, and all it may mean. */
interface Dictionary {
  readonly meanings: ReadonlyMap<string, readonly Meaning[]>
  /** Words of the longest way to say anything. */
  readonly longest: number
  /** Every way as it is written, in the order of the lexicon. */
  readonly ways: readonly { readonly written: string; readonly key: string; readonly meaning: Meaning }[]
}

const made = new WeakMap<Lexicon, Dictionary>()

/** The dictionary of a lexicon; made once for each. */
export function dictionaryOf(lexicon: Lexicon): Dictionary {
  const known = made.get(lexicon)
  if (known) return known
  const dictionary = makeDictionary(lexicon)
  made.set(lexicon, dictionary)
  return dictionary
}

/** A way to say something as it is looked up: its words in lower case, hyphens left out. */
const keyOf = (way: string): string =>
  tokensOf(way)
    .flatMap((token: Token) => (token.kind === 'word' ? [token.text] : []))
    .join(' ')

const STRIKES = { half: 0.5, one: 1, double: 2, off: null } as const

function makeDictionary(lexicon: Lexicon): Dictionary {
  const ways: { written: string; key: string; meaning: Meaning }[] = []
  const add = (written: readonly string[], meaning: Meaning) => {
    for (const way of written) ways.push({ written: way, key: keyOf(way), meaning })
  }
  const each = <K extends string>(table: Readonly<Record<K, Ways>>, meaning: (key: K) => Meaning) => {
    for (const key of Object.keys(table) as K[]) add(table[key], meaning(key))
  }
  each(lexicon.terrain, (value) => ({ field: 'terrain', value }))
  each(lexicon.posture, (value) => ({ field: 'posture', value }))
  each(lexicon.hands, (value) => ({ field: 'hands', value }))
  for (const move of LINE_MOVES) add(lexicon.moves[move], { field: 'move', value: move })
  add(lexicon.noMove, { field: 'move', value: 'none' })
  each(lexicon.side, (value) => ({ field: 'side', value }))
  add(lexicon.alternate, { field: 'then', value: 'alternate' })
  each(lexicon.lead, (value) => ({ field: 'lead', value }))
  each(lexicon.strikes, (key) => ({ field: 'strikesPerBeat', value: STRIKES[key] }))
  add(lexicon.legsStill, { field: 'cadence', value: 'legsStill' })
  add(lexicon.noCadence, { field: 'cadence', value: 'none' })
  for (const flag of ['allOut', 'water', 'walk'] as const) add(lexicon[flag], { field: flag, value: true })
  each(lexicon.marks, (value) => ({ field: 'mark', value }))
  for (const [way, value] of Object.entries(lexicon.numbers)) add([way], { field: 'number', value })
  for (const [way, value] of Object.entries(lexicon.additions)) add([way], { field: 'addition', value })

  const meanings = new Map<string, Meaning[]>()
  for (const { key, meaning } of ways) meanings.set(key, [...(meanings.get(key) ?? []), meaning])
  const longest = Math.max(...ways.map(({ key }) => key.split(' ').length))
  return { meanings, longest, ways }
}
