import type { DraftAction } from '#features/drafting/actions/draftAction.ts'
import type { DraftGround } from '#features/drafting/actions/draftGround.ts'
import { splitSection } from '#plan/commands/splitSection.ts'
import { findBlock } from '#plan/places.ts'
import { say } from '#words/said.ts'
import { carryOut } from './carryOut.ts'

export const CUT_SECTION: DraftAction = {
  id: 'stage.cutSection',
  name: say('actions.splitSong'),
  does: say('actions.splitSongDo'),
  keys: ['C'],
  writes: true,
  inMenu: true,
  over: ['block', 'set'],
  can: (on) => {
    const itemId = wholeOf(on)
    const { ride } = on.store.getState()
    if (!ride || itemId === null) return false
    return ride.sections.every(({ blocks }) => blocks[0]?.id !== itemId) || say('actions.songStarts')
  },
  do: (on) => {
    const { ride, report, newId } = on.store.getState()
    const itemId = wholeOf(on)
    if (!ride || !report || itemId === null) return
    // The block or set keeps the foot it has.
    const first = report.blocks.find(({ block, set }) => block.id === itemId || set?.set.id === itemId)
    carryOut(on, splitSection(ride, { itemId, foot: first?.foot ?? null, newId }), 'same')
  },
}

/** The block, or the whole set that it is a part of; null where several are meant. */
function wholeOf({ store, target }: DraftGround): string | null {
  const { ride } = store.getState()
  if (!ride || target.kind === 'ride' || target.kind === 'section' || target.kind === 'several') return null
  return findBlock(ride, target.id)?.set?.id ?? target.id
}
