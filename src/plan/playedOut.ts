import { patched } from '#plan/edits.ts'
import { callOfRound, NO_CARRY } from '#plan/ledger/roundShift.ts'
import type { Block, SetBlock } from '#plan/model.ts'

/** The parts of a set round by round, with what its rounds add written into each block's own call; every round has the parts' ids. */
export function playedOut(set: SetBlock): Block[][] {
  let carry = NO_CARRY
  return Array.from({ length: set.rounds }, (_, before) =>
    set.parts.map((part) => {
      const called = callOfRound(part.resistance, set, before + 1, carry)
      carry = called.carry
      return patched(part, { resistance: called.call })
    }),
  )
}
