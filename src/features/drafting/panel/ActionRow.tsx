import { useState } from 'react'
import { useAction } from '#actions/useAction.ts'
import { MENU } from '#features/drafting/actions/clipboard/menu.ts'
import type { DraftAction } from '#features/drafting/actions/draftAction.ts'
import { type DraftGround, useSelectedGround } from '#features/drafting/actions/draftGround.ts'
import { CHANGES } from '#features/drafting/actions/draftPlaces.ts'
import { useApp } from '#store/useApp.ts'
import './ActionRow.css'

/**
 * What can be done to the chosen section, block, set or blocks without a keyboard; what would change nothing cannot be pressed.
 * Rows of buttons push what is edited out of sight, so what is done seldom is only in the menu that the last one opens.
 */
export function ActionRow() {
  const on = useSelectedGround()
  if (on.target.kind === 'ride') return null
  return (
    <div className="panel-actions panel-edit-only">
      {[...CHANGES, MENU]
        .filter(({ over }) => over?.includes(on.target.kind))
        .map((action) => (
          <RowButton key={action.id} action={action} on={on} />
        ))}
    </div>
  )
}

function RowButton({ action, on }: { action: DraftAction; on: DraftGround }) {
  const { words, drawn, props } = useAction(action, on)
  const idle = useApp((state) => state.previewing === null)
  // A preview brings no button and takes none away: the row would grow a line, and move what shows the preview from under the pointer.
  const [stays, setStays] = useState(drawn)
  if (idle && stays !== drawn) setStays(drawn)
  if (!(idle ? drawn : stays)) return null
  return (
    <button type="button" className="panel-action" {...props}>
      {words}
    </button>
  )
}
