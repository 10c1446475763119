import type { PlayedBlock } from '#engine/played.ts'
import { isSingle, type LedgerState } from '#plan/ledger/ledgerState.ts'
import type { Bike, Ride } from '#plan/model.ts'
import type { AppState } from '#store/state.ts'
import { useApp } from '#store/useApp.ts'
import { words } from '#words/words.ts'

/** The first time a block is played, as it is shown now. */
export const playedNow = ({ shownReport }: AppState, blockId: string): PlayedBlock | undefined =>
  shownReport?.blocks.find((played) => played.block.id === blockId)

/** The same for a component. It is another object after every change to the ride, so only small parts should ask for it. */
export const usePlayed = (blockId: string): PlayedBlock | undefined => useApp((state) => playedNow(state, blockId))

/** "turns over base", "levels": the unit of resistance with what it counts from; singular for a single setting of one or less. */
export function unitOfTotals({ unit, stepsPerUnit }: Bike, datum: Ride['datum'], total?: LedgerState): string {
  const one = total && isSingle(total) && total.nominal !== 0 && Math.abs(total.nominal) <= stepsPerUnit
  const units = words.measures.unitOf(unit, !one)
  return datum === 'base' ? words.panelsBlock.overBase({ units }) : units
}
