import type { PlayedBlock } from '#engine/played.ts'
import type { Speech } from '#engine/speech/speech.ts'
import type { Seconds } from '#units/units.ts'

/** What is called as a round of a set begins: how many there are to go, this one included. */
export interface RepeatCall {
  readonly setId: string
  readonly round: number
  readonly at: Seconds
  /** "four" … "two", "last one". */
  readonly words: string
}

/** The count-down of every set of more than one round. */
export function repeatCalls(blocks: readonly PlayedBlock[], { calls }: Speech): RepeatCall[] {
  return blocks.flatMap(({ set, from }) => {
    if (set?.part !== 1 || set.set.rounds < 2) return []
    const left = set.set.rounds - set.round + 1
    return [{ setId: set.set.id, round: set.round, at: from, words: calls.round(left) }]
  })
}
