import type { DraftAction } from '#features/drafting/actions/draftAction.ts'
import { chooseTarget } from '#features/drafting/actions/gettingAbout/stops.ts'
import { addOwnPattern, addPattern, addSection } from '#features/drafting/draftActions.ts'
import type { Own } from '#features/drafting/ownPatternCommand.ts'
import type { BlockPattern } from '#plan/patterns/blockPattern.ts'
import { say } from '#words/said.ts'

/** Adds a block of a pattern after the selection. */
export const addBlock = (pattern: BlockPattern, keys: DraftAction['keys'] = []): DraftAction => ({
  id: `add.${pattern.id}`,
  name: say('actions.addBlock', { pattern: pattern.name }),
  words: () => pattern.name,
  does: say('actions.addBlockDo', { pattern: pattern.name }),
  keys,
  writes: true,
  do: (on) => {
    const { store, tools, stop } = on
    // By its key it goes after what has the focus, and the focus goes along.
    if (stop) chooseTarget(on)
    const added = addPattern(store, pattern)
    if (!added) return
    store.getState().selectItem(added.id)
    if (stop) tools.focus(added.id)
    else tools.reveal(added.id)
    tools.note(added.note)
  },
})

/** Adds what is kept as a pattern after the selection. */
export const addOwn = (own: Own): DraftAction => ({
  id: `add.own.${own.id}`,
  name: say('ownPatterns.add', { name: own.name }),
  words: () => own.name,
  does: say('ownPatterns.addDo', { name: own.name, items: own.pattern.items.length }),
  writes: true,
  do: ({ store, tools }) => {
    const added = addOwnPattern(store, own)
    if (!added) return
    store.getState().selectItems(added.ids)
    tools.reveal(added.ids[0]!)
    tools.note(added.note)
  },
})

export const ADD_SECTION: DraftAction = {
  id: 'add.section',
  name: say('actions.addSong'),
  words: () => say('actions.addSongButton'),
  does: say('actions.addSongDo'),
  writes: true,
  inMenu: true,
  do: ({ store, tools }) => {
    const id = addSection(store)
    if (id === null) return
    store.getState().selectSection(id)
    tools.reveal(id)
  },
}
