import type { PlayedBlock } from '#engine/played.ts'
import type { Bike } from '#plan/model.ts'
import { say, type Text } from '#words/said.ts'

/** "you 3½": what the instructor rides beside what the class is told; empty where it is the same, or where totals are read on another bike. */
export function sayOwnTotal(
  { block: { ownTotal }, ledger }: Pick<PlayedBlock, 'block' | 'ledger'>,
  { stepsPerUnit }: Pick<Bike, 'stepsPerUnit'>,
): Text {
  return ownTotal === undefined || ledger.reading ? '' : say('figures.youRide', { steps: ownTotal, stepsPerUnit })
}
