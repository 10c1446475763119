import { useMemo } from 'react'
import { ActionButton } from '#actions/ActionButton.tsx'
import { shakyLegs } from '#engine/rehearsal/courses.ts'
import type { RehearsalGround } from '#features/drafting/actions/rehearsing/rehearsalGround.ts'
import { REHEARSE_SHAKY } from '#features/drafting/actions/rehearsing/shaky.ts'
import { unmarkShaky } from '#plan/commands/markShaky.ts'
import { itemName } from '#plan/names.ts'
import { useApp, useAppStore } from '#store/useApp.ts'
import { Button } from '#ui/Button.tsx'
import { clock } from '#words/forms.ts'
import { tell, words } from '#words/words.ts'

/** The blocks marked as shaky, in the order of the ride: each to go to and to let go, and all of them to rehearse. */
export function ShakyList({ on, readOnly }: { on: RehearsalGround; readOnly: boolean }) {
  const { rehearsal } = on.rehearsing
  const store = useAppStore()
  const ride = useApp((state) => state.shown)
  const report = useApp((state) => state.shownReport)
  const legs = useMemo(() => (ride && report ? shakyLegs({ ride, report }) : []), [ride, report])
  if (legs.length === 0 || !report) return null
  const unmark = (blockId: string) => store.getState().run(unmarkShaky(store.getState().ride!, { blockId }))
  return (
    <div className="rehearsal-row rehearsal-shaky">
      <ActionButton action={REHEARSE_SHAKY} on={on} tone="action" />
      <ul aria-label={words.rehearsing.markedBlocks}>
        {legs.map(({ blockId, block }) => {
          const played = report.blocks[block]!
          const name = tell(itemName(played.block))
          return (
            <li key={blockId}>
              <Button tone="quiet" onClick={() => rehearsal.seek(played.from)}>
                {name} {clock(played.from)}
              </Button>
              {!readOnly && (
                <Button tone="quiet" aria-label={words.rehearsing.unmark({ name })} onClick={() => unmark(blockId)}>
                  ×
                </Button>
              )}
            </li>
          )
        })}
      </ul>
    </div>
  )
}
