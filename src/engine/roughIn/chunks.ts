import type { Effort } from '#units/units.ts'

/** One block of a draft before it is made: a pattern, a length and how hard. */
export interface Chunk {
  pattern: string
  eights: number
  effort: Effort
  /** Where it has another name than its pattern. */
  label?: string
  water?: boolean
  /** The lead foot changes here. */
  swap?: boolean
}

/** Rounds of the same chunks. */
interface Rounds {
  rounds: number
  parts: Chunk[]
}

export type Planned = Chunk | Rounds

export const isRounds = (planned: Planned): planned is Rounds => 'rounds' in planned

/** Eights of a list of planned things. */
export const eightsOf = (planned: readonly Planned[]): number =>
  planned.reduce((sum, one) => sum + (isRounds(one) ? one.rounds * eightsOf(one.parts) : one.eights), 0)

/** What is pushed or surged at less than work is ridden as … instead. */
const INSTEAD: Readonly<Record<string, string>> = { push: 'flat', surge: 'tempo' }

/** The same list with nothing harder than an effort; pushes and surges that this makes none are ridden steadily. */
export const keptUnder = (planned: readonly Planned[], most: Effort): Planned[] =>
  planned.map((one) => (isRounds(one) ? { ...one, parts: one.parts.map((part) => kept(part, most)) } : kept(one, most)))

/** The same ridden steadily; undefined for what is steady already. */
export function steadier(chunk: Chunk): Chunk | undefined {
  const pattern = INSTEAD[chunk.pattern]
  return pattern === undefined ? undefined : { ...chunk, pattern }
}

function kept(chunk: Chunk, most: Effort): Chunk {
  return chunk.effort <= most ? chunk : { ...(steadier(chunk) ?? chunk), effort: most }
}

/** Neighbours that ask for the same are one block. */
export function joined(planned: readonly Planned[]): Planned[] {
  const result: Planned[] = []
  for (const one of planned) {
    const before = result.at(-1)
    if (before && !isRounds(before) && !isRounds(one) && asksTheSame(before, one)) {
      result[result.length - 1] = { ...before, eights: before.eights + one.eights }
    } else result.push(one)
  }
  return result
}

const asksTheSame = (a: Chunk, b: Chunk): boolean =>
  a.pattern === b.pattern && a.effort === b.effort && a.label === b.label && !b.water && !b.swap
