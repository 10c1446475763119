import { useMemo } from 'react'
import type { BoundAction } from '#actions/actionBoard.ts'
import type { AskedMenu } from '#features/drafting/actions/draftGround.ts'
import { itemsText, sectionName } from '#plan/names.ts'
import { findSection } from '#plan/places.ts'
import type { AppState } from '#store/state.ts'
import { useAppStore } from '#store/useApp.ts'
import { ContextMenu, type MenuGroup } from '#ui/ContextMenu.tsx'
import { tell, words } from '#words/words.ts'

interface DraftMenuProps {
  asked: AskedMenu
  /** All that can be done there. */
  actions: readonly BoundAction[]
  onClose: () => void
}

/** The actions of the place as a menu: what can be done now to what it was opened on, and what not, with why. */
export function DraftMenu({ asked, actions, onClose }: DraftMenuProps) {
  const store = useAppStore()
  // As they are when it opens: it closes before anything changes.
  const [groups, label, at] = useMemo(() => {
    const chosen = actions.filter(({ id, inMenu }) => inMenu && (asked.which === 'all' || id.startsWith('clipboard.only')))
    return [groupsOf(chosen), nameOf(store.getState()), pointOf(asked.at)] as const
  }, [asked, actions, store])
  return <ContextMenu label={label} groups={groups} at={at} onClose={onClose} />
}

function groupsOf(actions: readonly BoundAction[]): MenuGroup[] {
  const groups = new Map<string, MenuGroup['entries']>()
  for (const { id, name, keys, group, possible, do: act, words: shown } of actions) {
    const answer = possible()
    if (answer === false) continue
    const title = tell(group)
    const entry = {
      id,
      words: tell(shown ?? name),
      keys: keyOfMachine(keys),
      why: answer === true ? null : tell(answer),
      do: () => act({ timeStamp: performance.now() }),
    }
    groups.set(title, [...(groups.get(title) ?? []), entry])
  }
  return [...groups].map(([title, entries]) => ({ title, entries }))
}

/** The first of its keys: with ⌘ where that is what commands are given by, since there is room for one. */
const keyOfMachine = (keys: readonly string[]): string =>
  (/Mac|iP/.test(navigator.platform) ? keys.find((key) => key.includes('⌘')) : undefined) ?? keys[0] ?? ''

/** What the menu is about. */
function nameOf({ shown, selection }: AppState): string {
  const section = shown && selection.sectionId !== null ? findSection(shown, selection.sectionId) : undefined
  if (!shown || !section) return words.clipboard.menuOfRide
  const name = selection.ids.length > 0 ? itemsText(shown, selection.ids) : sectionName(shown, section)
  return words.clipboard.menuOf({ name: tell(name) })
}

/** Beside what it opens on: a little inside the part of a stop that is in sight, right under a button. */
function pointOf(at: AskedMenu['at']): { x: number; y: number } {
  if (at && 'x' in at) return at
  if (!(at instanceof Element)) return { x: innerWidth / 2, y: innerHeight / 3 }
  const { left, top, bottom } = at.getBoundingClientRect()
  const sight = at.closest('.stage-scroller')?.getBoundingClientRect()
  return sight ? { x: Math.max(left, sight.left) + 12, y: top + Math.min(28, bottom - top) } : { x: left, y: bottom + 4 }
}
