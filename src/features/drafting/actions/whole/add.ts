import type { DraftAction } from '#features/drafting/actions/draftAction.ts'
import { addPattern, addSection } from '#features/drafting/draftActions.ts'
import type { BlockPattern } from '#plan/patterns/blockPattern.ts'

/** Adds a block of a pattern after the selection. */
export const addBlock = (pattern: BlockPattern): DraftAction => ({
  id: `add.${pattern.id}`,
  name: `add ${pattern.name}`,
  words: () => pattern.name,
  does: `Add ${pattern.name} after the selection, or drag it onto the stage.`,
  writes: true,
  do: ({ store, tools }) => {
    const added = addPattern(store, pattern)
    if (!added) return
    store.getState().selectItem(added.id)
    tools.reveal(added.id)
    tools.note(added.note)
  },
})

export const ADD_SECTION: DraftAction = {
  id: 'add.section',
  name: 'add a section',
  words: () => '+ section',
  does: 'an empty section, after the one that is chosen',
  writes: true,
  do: ({ store, tools }) => {
    const id = addSection(store)
    if (id === null) return
    store.getState().selectSection(id)
    tools.reveal(id)
  },
}
