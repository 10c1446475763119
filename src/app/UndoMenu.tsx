import { useMemo } from 'react'
import type { Step } from '#store/rideSlice.ts'
import { useAppStore } from '#store/useApp.ts'
import { ContextMenu } from '#ui/ContextMenu.tsx'
import { moment } from '#words/forms.ts'
import { tell, words } from '#words/words.ts'
import { UNDO_LIST } from './actions/undo.ts'

/** Stands for the ride before any change. */
const OPENED = 'opened'

/**
 * Every change that can be undone and, above a line, redone, the newest first: each is the point right after it, and the last
 * entry the ride before all of them.
 */
export function UndoMenu({ open, onClose }: { open: boolean; onClose: () => void }) {
  return open ? <Changes onClose={onClose} /> : null
}

function Changes({ onClose }: { onClose: () => void }) {
  // As they are when it opens: it closes before anything changes.
  const store = useAppStore()
  const [groups, now, at] = useMemo(() => {
    const { past, future, travelBy } = store.getState()
    const goBy = (steps: number) => ({ why: steps === 0 ? words.undoList.now : null, do: () => void travelBy(steps) })
    const redone = future.map((step, i) => ({ ...entryOf(`redo${i}`, step), ...goBy(i - future.length) }))
    const undone = past.map((step, i) => ({ ...entryOf(`undo${i}`, step), ...goBy(past.length - 1 - i) }))
    const opened = { id: OPENED, words: words.undoList.opened, keys: '', ...goBy(past.length) }
    const lists = [
      // The last of each pile is the one next to now.
      { title: words.undoList.undone, entries: redone },
      { title: words.undoList.made, entries: [...undone.toReversed(), opened] },
    ]
    return [lists.filter(({ entries }) => entries.length > 0), undone.at(-1)?.id ?? OPENED, pointUnder()] as const
  }, [store])
  return <ContextMenu label={words.undoList.changes} groups={groups} at={at} beginsAt={now} onClose={onClose} />
}

const entryOf = (id: string, { label, at }: Step) => ({
  id,
  words: tell(label),
  keys: at === undefined ? '' : moment(at, { timeStyle: 'short' }),
})

/** Under the button that opens it. */
function pointUnder(): { x: number; y: number } {
  const box = document.querySelector(`[data-action="${UNDO_LIST.id}"]`)?.getBoundingClientRect()
  return box ? { x: box.left, y: box.bottom + 4 } : { x: innerWidth / 3, y: innerHeight / 4 }
}
