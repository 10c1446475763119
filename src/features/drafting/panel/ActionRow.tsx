import { useMemo } from 'react'
import { actOnItem, actOnSection, type ItemAction, type SectionAction } from '#features/drafting/stageActions.ts'
import { isSet } from '#plan/model.ts'
import { type BlockPlace, findBlock } from '#plan/places.ts'
import { amountOf } from '#plan/remeasure.ts'
import { useApp, useAppStore } from '#store/useApp.ts'
import './ActionRow.css'

/** What stands on the buttons, and the keys that do the same on the stage. */
const WORDS: Readonly<Record<ItemAction, { words: string; key: string; does: string }>> = {
  duplicate: { words: 'duplicate', key: 'D', does: 'a copy of it, right after it' },
  split: { words: 'split', key: 'S', does: 'two of it, cut in the middle' },
  join: { words: 'join', key: 'J', does: 'one with the next block' },
  group: { words: 'rounds', key: 'G', does: 'a set of two rounds of it' },
  ungroup: { words: 'play out', key: 'U', does: 'every round as blocks of its own' },
  section: { words: 'new section', key: 'C', does: 'cuts the section in two before it; the song goes on' },
  delete: { words: 'delete', key: 'Delete', does: 'takes it out of the ride' },
}

const FOR_BLOCK: readonly ItemAction[] = ['duplicate', 'split', 'join', 'group', 'section', 'delete']
/** A set is played out, and several blocks are grouped, further down in words of their own. */
const FOR_SET: readonly ItemAction[] = ['duplicate', 'section', 'delete']
const FOR_MORE: readonly ItemAction[] = ['duplicate', 'delete']
const FOR_SECTION: readonly SectionAction[] = ['duplicate', 'delete']

/** What can be done to the chosen section, block, set or blocks without a keyboard; what would change nothing cannot be pressed. */
export function ActionRow({ onFocus = () => undefined }: { onFocus?: ((id: string) => void) | undefined }) {
  const store = useAppStore()
  const ride = useApp((state) => state.ride)
  const { ids, sectionId } = useApp((state) => state.selection)
  const id = ids.at(-1)
  const place = useMemo(() => (ride && ids.length === 1 ? findBlock(ride, ids[0]!) : undefined), [ride, ids])
  const item = place?.set?.id ?? id
  const isFirst = item !== undefined && ride?.sections.some(({ blocks }) => blocks[0]?.id === item)
  if (id === undefined && sectionId === null) return null
  const actions = id === undefined ? FOR_SECTION : place ? FOR_BLOCK : ids.length === 1 ? FOR_SET : FOR_MORE
  const tools = { store, focus: onFocus }
  const act = (action: ItemAction) => {
    if (id !== undefined) actOnItem(tools, action, id)
    else if (sectionId !== null && (action === 'duplicate' || action === 'delete')) actOnSection(tools, action, sectionId)
  }
  return (
    <div className="panel-actions panel-edit-only">
      {actions.map((action) => (
        <button
          key={action}
          type="button"
          className="panel-action"
          disabled={(place && !isPossible(action, place)) || (action === 'section' && isFirst)}
          title={`${WORDS[action].does} (${WORDS[action].key})`}
          onClick={() => act(action)}
        >
          {WORDS[action].words}
          {id === undefined && ' section'}
        </button>
      ))}
    </div>
  )
}

function isPossible(action: ItemAction, { block, list, index, set }: BlockPlace): boolean {
  const next = list[index + 1]
  if (action === 'split') return amountOf(block.length) > 1
  if (action === 'join') return next !== undefined && !isSet(next)
  return action !== 'group' || set === undefined
}
