import type { Finding } from '#engine/report.ts'
import { editBlock, patched } from '#plan/edits.ts'
import { isSingle, mayBeAt } from '#plan/ledger/ledgerState.ts'
import { quotedItem } from '#plan/names.ts'
import { say } from '#words/said.ts'
import type { Facts } from './facts.ts'
import { COMMON_PRACTICE, eachBlock, fix, playsOf } from './finding.ts'

/** A leader on a total outside the range the class is told; a class told one total may well ride another than the leader. */
export function ownTotals(facts: Facts): Finding[] {
  const { stepsPerUnit } = facts.ride.bike
  return eachBlock(facts, (played) => {
    const { block } = played
    const { after } = played.ledger
    const own = block.ownTotal
    if (own === undefined || isSingle(after) || mayBeAt(after, own)) return undefined
    const nearest = after.low !== null && own < after.low ? after.low : after.high!
    const fitsEachRound = playsOf(facts, played).every(({ ledger }) => mayBeAt(ledger.after, nearest))
    const here = quotedItem(block)
    const { low, nominal, high } = after
    const stated = { total: nearest, stepsPerUnit }
    return {
      rule: 'ownTotals',
      severity: 'hint',
      text: say('checksKnob.ownTotals', { block: here, own, told: { low, nominal, high }, stepsPerUnit }),
      why: COMMON_PRACTICE,
      amount: Math.abs(own - nearest),
      fixes: [
        // One total of the leader's own cannot follow rounds that add to the class's.
        fitsEachRound
          ? fix(say('checksKnob.rideItAt', stated), say('checksKnob.ownTotalSet', { block: here, ...stated }), (ride) =>
              editBlock(ride, block.id, (before) => patched(before, { ownTotal: nearest })),
            )
          : undefined,
      ],
    }
  })
}
