import { type Block, type Item, isSet, type SetBlock } from '#plan/model.ts'

/** One block in the order it is played; `set` names the round and part, counted from 1. */
export interface Unrolled {
  block: Block
  set?: { set: SetBlock; round: number; part: number }
}

/** Sets played out round by round, part by part; blocks as they stand. Cost: linear in what is played. */
export function unrollItems(items: readonly Item[]): Unrolled[] {
  const played: Unrolled[] = []
  for (const item of items) {
    if (!isSet(item)) {
      played.push({ block: item })
      continue
    }
    for (let round = 1; round <= item.rounds; round++) {
      item.parts.forEach((block, part) => {
        played.push({ block, set: { set: item, round, part: part + 1 } })
      })
    }
  }
  return played
}
