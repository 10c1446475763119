import type { PlayedBlock } from '#engine/report.ts'
import type { Bike, Ride } from '#plan/model.ts'
import type { AppState } from '#store/state.ts'
import { useApp } from '#store/useApp.ts'

/** The first time a block is played, as it is shown now. */
export const playedNow = ({ shownReport }: AppState, blockId: string): PlayedBlock | undefined =>
  shownReport?.blocks.find((played) => played.block.id === blockId)

/** The same for a component. It is another object after every change to the ride, so only small parts should ask for it. */
export const usePlayed = (blockId: string): PlayedBlock | undefined => useApp((state) => playedNow(state, blockId))

/** "turns over base", "levels": the unit of totals with what they count from. */
export function unitOfTotals({ unit }: Bike, datum: Ride['datum']): string {
  return datum === 'base' ? `${unit}s over base` : `${unit}s`
}
