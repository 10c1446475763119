import { sayTotal } from '#engine/ledger/sayCall.ts'
import type { Finding } from '#engine/report.ts'
import { editBlock, patched } from '#plan/edits.ts'
import { isSingle, mayBeAt } from '#plan/ledger/ledgerState.ts'
import { formatSetting } from '#units/formatSetting.ts'
import type { Facts } from './facts.ts'
import { COMMON_PRACTICE, eachBlock, fix, inQuotes, playsOf } from './finding.ts'

/** A leader on a total outside the range the class is told; a class told one total may well ride another than the leader. */
export function ownTotals(facts: Facts): Finding[] {
  const { bike, datum } = facts.ride
  return eachBlock(facts, (played) => {
    const { block } = played
    const { after } = played.ledger
    const own = block.ownTotal
    if (own === undefined || isSingle(after) || mayBeAt(after, own)) return undefined
    const nearest = after.low !== null && own < after.low ? after.low : after.high!
    const fitsEachRound = playsOf(facts, played).every(({ ledger }) => mayBeAt(ledger.after, nearest))
    const say = (steps: number) => formatSetting(steps, bike.stepsPerUnit)
    return {
      rule: 'ownTotals',
      severity: 'hint',
      text: `You ride ${inQuotes(block)} at ${say(own)} where the class is told ${sayTotal(after, bike, datum)}; riders copy what they see.`,
      why: COMMON_PRACTICE,
      amount: Math.abs(own - nearest),
      fixes: [
        // One total of the leader's own cannot follow rounds that add to the class's.
        fitsEachRound
          ? fix(`Ride it at ${say(nearest)}`, `Set your own total in ${inQuotes(block)} to ${say(nearest)}`, (ride) =>
              editBlock(ride, block.id, (before) => patched(before, { ownTotal: nearest })),
            )
          : undefined,
      ],
    }
  })
}
