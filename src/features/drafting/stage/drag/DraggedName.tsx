import type { Dragged } from '#features/drafting/stage/dragCommand.ts'
import { itemName, sectionName } from '#plan/names.ts'
import { PATTERNS } from '#plan/patterns/patterns.ts'
import { findBlock, findItem, findSection } from '#plan/places.ts'
import { useApp } from '#store/useApp.ts'
import { tell } from '#words/words.ts'

/** What is in the hand, by the name it has or will have. */
export function DraggedName({ dragged: { kind, id } }: { dragged: Dragged }) {
  const name = useApp((state) => {
    if (kind === 'pattern') return tell(PATTERNS.find((pattern) => pattern.id === id)?.name ?? '')
    if (kind === 'own') return state.profiles.find((own) => own.id === id)?.name ?? ''
    if (!state.ride) return id
    const section = kind === 'section' ? findSection(state.ride, id) : undefined
    if (section) return tell(sectionName(state.ride, section))
    const item = findItem(state.ride, id)?.item ?? findBlock(state.ride, id)?.block
    return item && tell(itemName(item))
  })
  return <>{name}</>
}
