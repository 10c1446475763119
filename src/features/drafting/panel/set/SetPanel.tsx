import { ActionButton } from '#actions/ActionButton.tsx'
import { UNGROUP } from '#features/drafting/actions/changing/ungroup.ts'
import { useSelectedGround } from '#features/drafting/actions/draftGround.ts'
import { blockFigure } from '#features/drafting/blockFigure.ts'
import { FactRow } from '#features/drafting/panel/rows/FactRow.tsx'
import { QuantityRow } from '#features/drafting/panel/rows/QuantityRow.tsx'
import { TextRow } from '#features/drafting/panel/rows/TextRow.tsx'
import { SetHeader } from '#features/drafting/panel/set/SetHeader.tsx'
import { patchSet, type SetPatch } from '#plan/commands/patchSet.ts'
import type { SetBlock } from '#plan/model.ts'
import { itemName, lengthText } from '#plan/names.ts'
import { findSet } from '#plan/places.ts'
import { eightOf } from '#plan/songs/beatGrid.ts'
import { useApp, useAppStore } from '#store/useApp.ts'
import { Figure } from '#ui/figures/Figure.tsx'
import { type NumberRules, parseNumber } from '#units/parseNumber.ts'
import { parseSetting } from '#units/parseSetting.ts'
import { effortRange, signedSetting } from '#words/forms.ts'
import { tell, words } from '#words/words.ts'
import './SetPanel.css'

const ROUNDS: NumberRules = { of: 'rounds', min: 1, max: 100, suffixes: ['rounds', 'round', 'runden', 'runde', '×', 'x'] }

/** Everything about one set: how often it is played, what each round adds, and the parts it is made of. */
export function SetPanel({ setId }: { setId: string }) {
  const set = useApp((state) => state.shown && findSet(state.shown, setId)?.set)
  return set ? <SetFields set={set} /> : null
}

function SetFields({ set }: { set: SetBlock }) {
  const store = useAppStore()
  const on = useSelectedGround()
  const bike = useApp((state) => state.shown!.bike)
  const eight = useApp((state) => state.shown && eightOf(findSet(state.shown, set.id)?.section.song?.grid))
  // How many are to go, as each round begins: in the report, so that it follows the rounds.
  const counted = useApp((state) =>
    state.shownReport?.cues.repeats
      .filter(({ setId }) => setId === set.id)
      .map((call) => tell(call.words))
      .join(', '),
  )
  const now = () => store.getState()
  const edit = (patch: SetPatch) => void now().run(patchSet(now().ride!, { setId: set.id, patch }))
  return (
    <>
      <SetHeader set={set} />
      <div className="panel-rows">
        <QuantityRow
          label={words.panels.rounds}
          value={set.rounds}
          format={String}
          parse={(text) => parseNumber(text, ROUNDS)}
          onChange={(rounds) => edit({ rounds })}
          step={(rounds, direction) => Math.min(ROUNDS.max, Math.max(ROUNDS.min, rounds + direction))}
        />
        <QuantityRow
          label={words.panels.eachAdds}
          value={set.perRound?.steps ?? 0}
          unit={words.panels.perRound({ units: words.measures.unitOf(bike.unit, true) })}
          format={(steps) => signedSetting(steps, bike.stepsPerUnit)}
          parse={(text) => parseSetting(text, bike)}
          onChange={(steps) => edit({ perRound: steps === 0 ? undefined : { steps } })}
          step={(steps, direction, large) => steps + direction * (large ? bike.stepsPerUnit : 1)}
        />
        {counted && (
          <FactRow label={words.panels.countdown}>
            <q>{counted}</q>
            <p className="panel-note">{words.panels.countdownNote}</p>
          </FactRow>
        )}
        <TextRow
          label={words.panels.name}
          value={set.label}
          placeholder={words.panels.whatYouCallIt}
          longest={120}
          onChange={(label) => edit({ label })}
        />
      </div>
      <section className="panel-group" aria-label={words.panels.parts}>
        <h3>{words.panels.parts}</h3>
        <ol className="panel-parts">
          {set.parts.map((part) => (
            <li key={part.id}>
              <button type="button" className="panel-part" onClick={() => now().selectItem(part.id)}>
                <Figure name={blockFigure(part)} />
                <span className="panel-name">{tell(itemName(part))}</span>
                <span className="panel-quiet">
                  {words.panels.partSays({ length: tell(lengthText(part.length, eight ?? 8)), effort: effortRange(part.effort) })}
                </span>
              </button>
            </li>
          ))}
        </ol>
        <ActionButton action={UNGROUP} on={on} className="panel-edit-only" />
        <p className="panel-note panel-edit-only">{words.panels.expandNote}</p>
      </section>
    </>
  )
}
