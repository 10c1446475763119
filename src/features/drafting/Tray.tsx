import type { BlockPattern } from '#plan/patterns/blockPattern.ts'
import { PATTERNS } from '#plan/patterns/patterns.ts'
import { Figure } from '#ui/figures/Figure.tsx'
import { blockFigure } from './blockFigure.ts'
import { DragHandle } from './stage/drag/DragHandle.tsx'

interface Props {
  onAdd: (pattern: BlockPattern) => void
  onAddSection: () => void
  /** What there is to say of what was just added. */
  note: string | null
}

/** Patterns to draft with: dragged onto the stage, or pressed to go in after the selection. */
export function Tray({ onAdd, onAddSection, note }: Props) {
  return (
    <fieldset className="tray">
      <legend className="ui-hidden">blocks to add</legend>
      {PATTERNS.map((pattern) => (
        <DragHandle key={pattern.id} kind="pattern" id={pattern.id}>
          <button
            type="button"
            className="tray-pattern"
            onClick={() => onAdd(pattern)}
            title={`Add ${pattern.name} after the selection, or drag it onto the stage.`}
          >
            <Figure name={blockFigure(pattern)} />
            {pattern.name}
          </button>
        </DragHandle>
      ))}
      <button type="button" className="tray-pattern tray-section" onClick={onAddSection}>
        + section
      </button>
      {note && <p className="tray-note">{note}</p>}
    </fieldset>
  )
}
