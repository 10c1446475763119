import type { PlayedBlock } from '#engine/played.ts'
import type { Bike } from '#plan/model.ts'
import { formatSetting } from '#units/formatSetting.ts'

/** "you 3½": what the leader rides beside what the class is told; empty where it is the same, or where totals are read on another bike. */
export function sayOwnTotal(
  { block: { ownTotal }, ledger }: Pick<PlayedBlock, 'block' | 'ledger'>,
  { stepsPerUnit }: Pick<Bike, 'stepsPerUnit'>,
): string {
  return ownTotal === undefined || ledger.reading ? '' : `you ${formatSetting(ownTotal, stepsPerUnit)}`
}
