import { useDeferredValue, useMemo } from 'react'
import { constantsOf } from '#engine/constants.ts'
import { easingsOf } from '#engine/easings.ts'
import { DIFFICULTY_BANDS } from '#engine/shape/difficulty.ts'
import { PreviewButton } from '#features/drafting/PreviewButton.tsx'
import { sayMeasures } from '#features/drafting/panel/ride/sayMeasures.ts'
import { FactRow } from '#features/drafting/panel/rows/FactRow.tsx'
import { useApp } from '#store/useApp.ts'
import { tell, words } from '#words/words.ts'
import './shape.css'

/** The class as a whole in plain words: its arc, its measures, how hard it is for its level and what would make it easier. */
export function ShapeGroup() {
  // Of the committed ride: what a repair would do is seen on the curve, and its button must stay where it is.
  const committedRide = useApp((state) => (state.received ?? state).ride)
  const committedReport = useApp((state) => (state.received ?? state).report)
  const committed = useMemo(() => ({ ride: committedRide, report: committedReport }), [committedRide, committedReport])
  // What would make it easier is found by planning other rides: the stage shows a change first.
  const { ride, report } = useDeferredValue(committed)
  const easings = useMemo(() => (ride && report ? easingsOf(ride, report) : []), [ride, report])
  if (!ride || !report || report.blocks.length === 0) return null
  const { shape, difficulty } = report
  const points = Math.round(difficulty.points)
  const [from, to] = DIFFICULTY_BANDS[ride.level]
  // A class under what is typical of its level needs nothing to make it easier.
  const easy = difficulty.level[ride.level] === 'below'
  return (
    <section className="panel-group" aria-label={words.panelsRide.shape}>
      <h3>{words.panelsRide.shape}</h3>
      <p>{tell(shape.sentence)}</p>
      <div className="panel-rows">
        {sayMeasures(report.measures, report.overall, constantsOf(ride)).map(({ name, says }) => (
          <FactRow key={name} label={name}>
            {says}
          </FactRow>
        ))}
        <FactRow label={words.panelsRide.difficulty}>
          {words.panelsRide.difficultyIn({ points, place: difficulty.level[ride.level], level: ride.level, from, to })}
        </FactRow>
      </div>
      {easings.length > 0 && (
        <ul className="panel-reasons">
          {easings.map(({ part, text, edit }) => (
            <li key={part}>
              <span>{tell(text)}</span>
              {edit && !easy && (
                <span className="panel-edit-only">
                  <PreviewButton command={edit.fix.command}>{tell(edit.fix.label)}</PreviewButton>
                  <span className="panel-quiet"> {sayAfter(points, Math.round(edit.points))}</span>
                </span>
              )}
            </li>
          ))}
        </ul>
      )}
    </section>
  )
}

const sayAfter = (now: number, then: number): string =>
  then < now ? words.panelsRide.bringsTo({ points: then }) : words.panelsRide.bringsUnder({ points: now })
