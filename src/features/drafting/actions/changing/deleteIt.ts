import type { DraftAction } from '#features/drafting/actions/draftAction.ts'
import { deleteItems } from '#plan/commands/deleteItems.ts'
import { deleteSection } from '#plan/commands/deleteSection.ts'
import { say } from '#words/said.ts'
import { carryOut } from './carryOut.ts'
import { carryOutOnSection } from './carryOutOnSection.ts'

export const DELETE: DraftAction = {
  id: 'stage.delete',
  name: say('actions.delete'),
  words: ({ target }) => (target.kind === 'section' ? say('actions.deleteSong') : say('actions.delete')),
  does: say('actions.deleteDo'),
  keys: ['Delete', 'Backspace'],
  writes: true,
  inMenu: true,
  over: ['section', 'set', 'block', 'several'],
  can: ({ target }) => target.kind !== 'ride',
  do: (on) => {
    const { ride } = on.store.getState()
    const { target } = on
    if (!ride || target.kind === 'ride') return
    if (target.kind !== 'section') carryOut(on, deleteItems(ride, target.ids), 'neighbour')
    else carryOutOnSection(on, target.id, deleteSection(ride, { sectionId: target.id }), 'neighbour')
  },
}
