import { useAction } from '#actions/useAction.ts'
import { Figure, type FigureName } from '#ui/figures/Figure.tsx'
import { words } from '#words/words.ts'
import type { DraftAction } from './actions/draftAction.ts'
import { type DraftGround, useSelectedGround } from './actions/draftGround.ts'
import { ADD_BLOCKS } from './actions/draftPlaces.ts'
import { ADD_SECTION } from './actions/whole/add.ts'
import { blockFigure } from './blockFigure.ts'
import { OwnTray } from './OwnTray.tsx'
import { DragHandle } from './stage/drag/DragHandle.tsx'

/** Patterns to draft with: dragged onto the stage, or pressed to go in after the selection. `note` is what there is to say of what was just added. */
export function Tray({ note }: { note: string | null }) {
  const on = useSelectedGround()
  return (
    <>
      <fieldset className="tray">
        <legend className="ui-hidden">{words.drafting.tray}</legend>
        {ADD_BLOCKS.map(({ pattern, action, key }) => (
          <DragHandle key={pattern.id} kind="pattern" id={pattern.id}>
            <TrayButton action={action} on={on} figure={blockFigure(pattern)} digit={key} />
          </DragHandle>
        ))}
        <TrayButton action={ADD_SECTION} on={on} />
        {note && <p className="tray-note">{note}</p>}
      </fieldset>
      <OwnTray on={on} />
    </>
  )
}

function TrayButton({ action, on, figure, digit }: { action: DraftAction; on: DraftGround; figure?: FigureName; digit?: string }) {
  const { words: name, props } = useAction(action, on)
  return (
    <button type="button" className={figure ? 'tray-pattern' : 'tray-pattern tray-section'} {...props}>
      {figure && <Figure name={figure} />}
      {name}
      {digit && (
        <span className="tray-key" aria-hidden="true">
          {digit}
        </span>
      )}
    </button>
  )
}
