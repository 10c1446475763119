import type { PlayedBlock } from '#engine/played.ts'
import { speechOf } from '#engine/speech/speechOf.ts'
import type { Ride } from '#plan/model.ts'
import type { Change } from './changeAt.ts'

/**
 * The words that call a change, from the ledger: resistance first, then posture, pace, foot
 * and move; only what is the same in every round. Empty where there is nothing to call.
 */
export function callWords(
  ride: Pick<Ride, 'bike' | 'datum' | 'language'>,
  blocks: readonly PlayedBlock[],
  { block: index, kinds, pace }: Change,
): string {
  const { calls } = speechOf(ride)
  const played = blocks[index]!
  const rounds = played.set ? blocks.filter(({ block }) => block.id === played.block.id) : [played]
  const { block, ledger } = played
  const parts: string[] = []
  if (kinds.includes('resistance')) {
    if (rounds.every((round) => round.ledger.call === ledger.call)) parts.push(ledger.call)
    else if (rounds.every((round) => round.ledger.total === ledger.total)) parts.push(calls.total(ledger.after, ride.bike, ride.datum))
  }
  if (kinds.includes('posture')) parts.push(calls.posture(block.posture))
  if (pace) parts.push(calls.pace(pace.step))
  if (kinds.includes('foot') && played.foot !== null) parts.push(calls.foot(played.foot))
  if (kinds.includes('move') && block.move) parts.push(calls.move(block.move))
  return parts.map((part) => `${part[0]!.toUpperCase()}${part.slice(1)}.`).join(' ')
}
