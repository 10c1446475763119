import type { DraftAction } from '#features/drafting/actions/draftAction.ts'
import { duplicateItems } from '#plan/commands/duplicateItems.ts'
import { duplicateSection } from '#plan/commands/duplicateSection.ts'
import { carryOut } from './carryOut.ts'
import { carryOutOnSection } from './carryOutOnSection.ts'

export const DUPLICATE: DraftAction = {
  id: 'stage.duplicate',
  name: 'duplicate',
  words: ({ target }) => (target.kind === 'section' ? 'duplicate section' : 'duplicate'),
  does: 'duplicate: a copy right after it',
  keys: ['D'],
  writes: true,
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
