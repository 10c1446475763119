import type { DraftAction } from '#features/drafting/actions/draftAction.ts'
import { duplicateItems } from '#plan/commands/duplicateItems.ts'
import { duplicateSection } from '#plan/commands/duplicateSection.ts'
import { say } from '#words/said.ts'
import { carryOut } from './carryOut.ts'
import { carryOutOnSection } from './carryOutOnSection.ts'

export const DUPLICATE: DraftAction = {
  id: 'stage.duplicate',
  name: say('actions.duplicate'),
  words: ({ target }) => (target.kind === 'section' ? say('actions.duplicateSong') : say('actions.duplicate')),
  does: say('actions.duplicateDo'),
  keys: ['D', 'Mod+D'],
  writes: true,
  inMenu: true,
  over: ['section', 'set', 'block', 'several'],
  can: ({ target }) => target.kind !== 'ride',
  do: (on) => {
    const { ride, newId } = on.store.getState()
    const { target } = on
    if (!ride || target.kind === 'ride') return
    if (target.kind !== 'section') carryOut(on, duplicateItems(ride, { ids: target.ids, newId }), 'made')
    else carryOutOnSection(on, target.id, duplicateSection(ride, { sectionId: target.id, newId }), 'copy')
  },
}
