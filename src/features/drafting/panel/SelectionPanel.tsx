import { ActionRow } from '#features/drafting/panel/ActionRow.tsx'
import { BlockPanel } from '#features/drafting/panel/block/BlockPanel.tsx'
import { BlocksPanel } from '#features/drafting/panel/blocks/BlocksPanel.tsx'
import { PanelPath } from '#features/drafting/panel/PanelPath.tsx'
import { RidePanel } from '#features/drafting/panel/ride/RidePanel.tsx'
import { SectionPanel } from '#features/drafting/panel/section/SectionPanel.tsx'
import { SetPanel } from '#features/drafting/panel/set/SetPanel.tsx'
import { findSet } from '#plan/places.ts'
import { useApp } from '#store/useApp.ts'
import { words } from '#words/words.ts'
import './panel.css'

interface Props {
  /** Goes to a block. */
  onShow?: (blockId: string) => void
}

/**
 * Details of what is chosen: the ride when nothing is, a section, a block, a set, or several
 * blocks at once, and what can be done to it. Fields commit on Enter or on leaving them, each as one undo step.
 */
export function SelectionPanel({ onShow }: Props) {
  const open = useApp((state) => state.shown !== null)
  const readOnly = useApp((state) => state.received !== null)
  if (!open) return null
  return (
    <aside className="panel" aria-label={words.panels.detailsOfSelection}>
      <PanelPath />
      <fieldset className="panel-body" disabled={readOnly}>
        <legend className="ui-hidden">{words.panels.details}</legend>
        <ActionRow />
        <Chosen onShow={onShow} />
      </fieldset>
    </aside>
  )
}

/** Every part has the id of what it edits as its key: text being typed for one thing never ends up in another. */
function Chosen({ onShow }: { onShow?: (blockId: string) => void }) {
  const ids = useApp((state) => state.selection.ids)
  const sectionId = useApp((state) => state.selection.sectionId)
  const isSet = useApp((state) => ids.length === 1 && findSet(state.shown!, ids[0]!) !== undefined)
  if (ids.length > 1) return <BlocksPanel key={ids.join(' ')} ids={ids} />
  if (ids.length === 1) return isSet ? <SetPanel key={ids[0]} setId={ids[0]!} /> : <BlockPanel key={ids[0]} blockId={ids[0]!} />
  return sectionId === null ? <RidePanel onShow={onShow} /> : <SectionPanel key={sectionId} sectionId={sectionId} />
}
