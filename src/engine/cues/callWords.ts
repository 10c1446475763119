import { sayTotal } from '#engine/ledger/sayCall.ts'
import type { PlayedBlock } from '#engine/played.ts'
import type { Ride } from '#plan/model.ts'
import { POSTURE_WORDS } from '#plan/posture.ts'
import type { Change } from './changeAt.ts'

/**
 * The words that call a change, from the ledger: resistance first, then posture, pace, foot
 * and move; only what is the same in every round. Empty where there is nothing to call.
 */
export function callWords(
  { bike, datum }: Pick<Ride, 'bike' | 'datum'>,
  blocks: readonly PlayedBlock[],
  { block: index, kinds, pace }: Change,
): string {
  const played = blocks[index]!
  const rounds = played.set ? blocks.filter(({ block }) => block.id === played.block.id) : [played]
  const { block, ledger } = played
  const parts: string[] = []
  if (kinds.includes('resistance')) {
    if (rounds.every((round) => round.ledger.call === ledger.call)) parts.push(ledger.call)
    else if (rounds.every((round) => round.ledger.total === ledger.total)) parts.push(sayTotal(ledger.after, bike, datum))
  }
  if (kinds.includes('posture')) parts.push(POSTURE_WORDS[block.posture].call)
  if (pace) parts.push(pace.words)
  if (kinds.includes('foot') && played.foot !== null) parts.push(`${played.foot} foot leads now`)
  if (kinds.includes('move') && block.move) parts.push(`${block.move.name} on ${block.move.counts}`)
  return parts.map((part) => `${part[0]!.toUpperCase()}${part.slice(1)}.`).join(' ')
}
