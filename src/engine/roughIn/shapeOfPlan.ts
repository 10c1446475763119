import { PATTERNS } from '#plan/patterns/patterns.ts'
import { type Chunk, isRounds, type Planned } from './chunks.ts'

/** What a chunk is ridden as: terrain, posture, and the move with its counts. */
function keyOf({ pattern, terrain, counts }: Pick<Chunk, 'pattern' | 'terrain' | 'counts'>): string {
  const own = PATTERNS.find(({ id }) => id === pattern)!
  const move = own.move && ` ${own.move.name} ${counts ?? own.move.counts}`
  return `${terrain ?? own.terrain} ${own.posture}${move ?? ''}`
}

/** The shape of a song as riders tell it from others: what it is ridden as in order, neighbours of a kind as one. */
export function shapeOfPlan(planned: readonly Planned[]): string {
  const keys = planned.map((one) => (isRounds(one) ? `(${one.parts.map(keyOf).join(', ')})` : keyOf(one)))
  return keys.filter((key, i) => key !== keys[i - 1]).join(', ')
}

/** All that a song is ridden as. */
export const keysOfPlan = (planned: readonly Planned[]): Set<string> =>
  new Set(planned.flatMap((one) => (isRounds(one) ? one.parts.map(keyOf) : [keyOf(one)])))
