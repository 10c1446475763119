import type { Terrain } from '#plan/model.ts'
import type { Effort } from '#units/units.ts'

/** One block of a draft before it is made: a pattern, a length and how hard. */
export interface Chunk {
  pattern: string
  eights: number
  effort: Effort
  /** How much harder it is at its end: it builds with the music. */
  rise?: Effort
  /** Another terrain and other counts than its pattern has. */
  terrain?: Terrain
  counts?: number
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

/** The most a chunk asks for. */
export const peakOf = ({ effort, rise = 0 }: Chunk): Effort => effort + rise

/** What is pushed or surged at less than work is ridden as … instead. */
const INSTEAD: Readonly<Record<string, string>> = { push: 'flat', surge: 'tempo', 'standing-surge': 'standing-hill' }

/** The same list with nothing harder than an effort; pushes and surges that this makes none are ridden steadily. */
export const keptUnder = (planned: readonly Planned[], most: Effort): Planned[] =>
  planned.map((one) => (isRounds(one) ? { ...one, parts: one.parts.map((part) => kept(part, most)) } : kept(one, most)))

/** The same ridden steadily; undefined for what is steady already. */
export function steadier(chunk: Chunk): Chunk | undefined {
  const pattern = INSTEAD[chunk.pattern]
  return pattern === undefined ? undefined : { ...chunk, pattern }
}

function kept(chunk: Chunk, most: Effort): Chunk {
  if (peakOf(chunk) <= most) return chunk
  const { rise, ...level } = steadier(chunk) ?? chunk
  if (rise === undefined || chunk.effort >= most) return { ...level, effort: Math.min(chunk.effort, most) }
  return { ...level, effort: chunk.effort, rise: most - chunk.effort }
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
  a.pattern === b.pattern &&
  a.effort === b.effort &&
  a.terrain === b.terrain &&
  a.counts === b.counts &&
  a.label === b.label &&
  !a.rise &&
  !b.rise &&
  !b.water &&
  !b.swap
