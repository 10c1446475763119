import type { DraftAction } from '#features/drafting/actions/draftAction.ts'
import type { Ride, Section } from '#plan/model.ts'
import { findBlock, findItem, findSection } from '#plan/places.ts'
import { say } from '#words/said.ts'

/** All of the song, and where that is selected already, or no song is meant, all of the ride. */
export const SELECT_ALL: DraftAction = {
  id: 'stage.selectAll',
  name: say('clipboard.selectAll'),
  does: say('clipboard.selectAllDo'),
  keys: ['Mod+A'],
  inMenu: true,
  keyOnly: true,
  can: ({ store }) => store.getState().shown?.sections.some(({ blocks }) => blocks.length > 0) ?? false,
  do: ({ store, target }) => {
    const { shown, selection, selectItems } = store.getState()
    if (!shown) return
    const song = (target.kind === 'ride' ? undefined : sectionOf(shown, target.id))?.blocks.map(({ id }) => id) ?? []
    const isAll = song.every((id) => selection.ids.includes(id))
    selectItems(isAll ? shown.sections.flatMap(({ blocks }) => blocks.map(({ id }) => id)) : song)
  },
}

const sectionOf = (ride: Ride, id: string): Section | undefined =>
  findSection(ride, id) ?? findBlock(ride, id)?.section ?? findItem(ride, id)?.section
