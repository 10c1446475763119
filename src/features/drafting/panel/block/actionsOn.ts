import { placeTyped } from '#engine/cues/placeInside.ts'
import { atMoment, beginsAt } from '#features/drafting/panel/block/momentOf.ts'
import { playedNow } from '#features/drafting/panel/played.ts'
import { patchBlock } from '#plan/commands/patchBlock.ts'
import type { BlockPatch } from '#plan/commands/patchBlocks.ts'
import { renameMove } from '#plan/commands/renameMove.ts'
import { resizeBlock } from '#plan/commands/resizeBlock.ts'
import { startLead } from '#plan/cueStart.ts'
import type { Block, Cue, CueMoment, Length, Move, Resistance } from '#plan/model.ts'
import { findBlock } from '#plan/places.ts'
import type { AppStore } from '#store/state.ts'
import type { KnobSteps } from '#units/units.ts'

/** Cadence a stated one starts from where the music gives none. */
export const USUAL_RPM = 80

/** Changes fields of the block being edited, as one undo step; undefined takes a field out. */
export type EditBlock = (patch: BlockPatch) => void

/** What the panel can do to one block. The same functions for as long as the block is shown, so that fields need not be drawn again for them. */
export function actionsOn(store: AppStore, blockId: string) {
  const change = (patch: BlockPatch) => patchBlock(store.getState().ride!, { blockId, patch })
  const edit: EditBlock = (patch) => void store.getState().run(change(patch))
  return {
    edit,
    setResistance: (resistance: Resistance) => edit({ resistance }),
    setOwnTotal: (ownTotal: KnobSteps | undefined) => edit({ ownTotal }),
    setEffort: (effort: Block['effort']) => edit({ effort }),
    previewEffort: (effort: Block['effort'] | null) => {
      if (effort) store.getState().preview(change({ effort }))
      else store.getState().dropPreview()
    },
    setLength: (length: Length) => void store.getState().run(resizeBlock(store.getState().ride!, { blockId, length })),
    setMove: (move: Move | undefined) => edit({ move }),
    renameMove: (from: string, to: string) => void store.getState().run(renameMove(store.getState().ride!, { from, to })),
    setCues: (cues: Cue[]) => edit({ cues }),
    addCue: (text: string) => {
      const { ride, report, newId } = store.getState()
      const place = ride && findBlock(ride, blockId)
      const played = report?.blocks.find(({ block, from, to }) => block.id === blockId && to > from)
      if (!place) return
      const unit = 'counts' in place.block.length ? 'counts' : 'seconds'
      const lead = played ? placeTyped(ride, report!, played.index, text) : startLead(unit)
      edit({ cues: [...place.block.cues, { id: newId(), moment: 'form', lead, text }] })
    },
    atMoment: (cue: Cue, moment: CueMoment) => atMoment(store.getState().ride!, store.getState().report!, blockId, cue, moment),
    beginsAt: (cueId: string) => beginsAt(store.getState().shownReport!, cueId),
    entryNow: () => playedNow(store.getState(), blockId)?.ledger,
    rpmNow: () => {
      const cadence = playedNow(store.getState(), blockId)?.cadence
      return cadence?.kind === 'turning' ? cadence.from : USUAL_RPM
    },
  }
}
