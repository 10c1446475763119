import { useDeferredValue, useMemo } from 'react'
import { constantsOf } from '#engine/constants.ts'
import { easingsOf } from '#engine/easings.ts'
import { DIFFICULTY_BANDS } from '#engine/shape/difficulty.ts'
import { PreviewButton } from '#features/drafting/PreviewButton.tsx'
import { sayMeasures } from '#features/drafting/panel/ride/sayMeasures.ts'
import { FactRow } from '#features/drafting/panel/rows/FactRow.tsx'
import type { Level } from '#plan/model.ts'
import { useApp } from '#store/useApp.ts'
import { tell } from '#words/words.ts'
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
  // A class under what its level is looked for needs nothing to make it easier.
  const easy = difficulty.level[ride.level] === 'below'
  return (
    <section className="panel-group" aria-label="shape">
      <h3>shape</h3>
      <p>{shape.sentence}</p>
      <div className="panel-rows">
        {sayMeasures(report.measures, report.overall, constantsOf(ride)).map(({ name, words }) => (
          <FactRow key={name} label={name}>
            {words}
          </FactRow>
        ))}
        <FactRow label="difficulty">
          <b>{points}</b> of 100, {sayBand(difficulty.level[ride.level], ride.level)}
        </FactRow>
      </div>
      {easings.length > 0 && (
        <ul className="panel-reasons">
          {easings.map(({ part, text, edit }) => (
            <li key={part}>
              <span>{text}</span>
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

/** "within the 30 to 60 looked for in a mixed class". */
function sayBand(place: 'below' | 'inside' | 'above', level: Level): string {
  const [from, to] = DIFFICULTY_BANDS[level]
  const where = place === 'inside' ? 'within' : place
  return `${where} the ${from} to ${to} looked for in ${level === 'advanced' ? 'an' : 'a'} ${level} class`
}

const sayAfter = (now: number, then: number): string => (then < now ? `then ${then}` : `a little under ${now}`)
