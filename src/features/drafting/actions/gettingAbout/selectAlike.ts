import type { DraftAction } from '#features/drafting/actions/draftAction.ts'
import type { DraftGround } from '#features/drafting/actions/draftGround.ts'
import { type Block, isSet } from '#plan/model.ts'
import { itemName } from '#plan/names.ts'
import { findBlock } from '#plan/places.ts'
import { say } from '#words/said.ts'
import { tell, words } from '#words/words.ts'

/** All blocks of the ride that are the same to ride as this one: terrain, posture, and move. */
export const SELECT_ALIKE: DraftAction = {
  id: 'stage.selectAlike',
  name: say('many.alike'),
  does: say('many.alikeDo'),
  keys: ['Mod+Shift+A'],
  inMenu: true,
  keyOnly: true,
  can: (on) => on.target.kind === 'block' && (alikeTo(on).length > 0 || say('many.noneAlike')),
  do: (on) => {
    const { target, store } = on
    const { shown, selectItems, announce } = store.getState()
    const block = target.kind === 'block' && shown ? findBlock(shown, target.id)?.block : undefined
    if (!block) return
    // The one it is about comes last: what is done next is about where the focus is.
    const ids = [...alikeTo(on), block.id]
    selectItems(ids)
    announce(words.many.alikeSelected({ count: ids.length, name: tell(itemName(block)) }))
  },
}

/** Ids of the others. */
function alikeTo({ store, target }: DraftGround): string[] {
  const { shown } = store.getState()
  const one = shown && target.kind === 'block' ? findBlock(shown, target.id)?.block : undefined
  if (!shown || !one) return []
  const blocks = shown.sections.flatMap((section) =>
    section.blocks.flatMap((item): readonly Block[] => (isSet(item) ? item.parts : [item])),
  )
  return blocks.filter((other) => other !== one && isAlike(other, one)).map(({ id }) => id)
}

const isAlike = (a: Block, b: Block): boolean => a.terrain === b.terrain && a.posture === b.posture && a.move?.name === b.move?.name
