import { useContext, useEffect, useEffectEvent } from 'react'
import { findBlock } from '#plan/places.ts'
import { useAppStore } from '#store/useApp.ts'
import { DraftKeeping, DraftScope } from '#ui/draftKeeping.ts'

/** The name of the line's field among those about the same block. */
export const fieldOfCue = (blockId: string, cueId: string | null): string => `cue ${blockId} ${cueId ?? 'new'}`

/** Opens the line again where words were left in it when the page ended: the block is chosen again by then. */
export function useLeftCue(open: (blockId: string, cueId: string | null) => void): void {
  const store = useAppStore()
  const keeper = useContext(DraftKeeping)
  const scope = useContext(DraftScope)
  const look = useEffectEvent(() => {
    const { ride, selection } = store.getState()
    const block = ride && findBlock(ride, selection.ids.at(-1) ?? '')?.block
    if (!block || !keeper) return
    const left = [{ id: null, text: '' }, ...block.cues].find(
      ({ id, text }) => keeper.left(`${scope} ${fieldOfCue(block.id, id)}`, text) !== null,
    )
    if (left) open(block.id, left.id)
  })
  useEffect(() => look(), [])
}
