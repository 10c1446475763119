import { useMemo } from 'react'
import { computeRide } from '#engine/computeRide.ts'
import type { RideReport } from '#engine/report.ts'
import type { Difference, Side } from '#plan/merge/difference.ts'
import { mergeRides } from '#plan/merge/mergeRides.ts'
import type { Merging } from '#store/mergeSlice.ts'
import type { Seconds } from '#units/units.ts'
import { clock } from '#words/forms.ts'
import { words } from '#words/words.ts'
import { CurveSketch } from './CurveSketch.tsx'
import { startOf, type Told } from './words/sayDifference.ts'

interface Props {
  difference: Difference
  told: Told
  merging: Merging
  /** The plan of what is chosen so far. */
  report: RideReport
  onChoose: (side: Side) => void
}

const SIDES = ['mine', 'theirs'] as const

/** Two answers to one question, side by side, each with the curve and the times it gives. */
export function ConflictCard({ difference, told, merging, report, onChoose }: Props) {
  const { id, chosen } = difference
  const isShape = changesShape(difference)
  const other = useMemo(() => (isShape ? otherPlan(merging, difference) : null), [isShape, merging, difference])
  const planOf = (side: Side) => (side === chosen ? report : other)
  return (
    <fieldset className="merging-conflict">
      <legend>
        {told.at !== undefined && <span className="merging-clock">{clock(told.at)}</span>}
        {told.where && <b> {told.where}</b>} {told.what}
        {merging.base && told.base !== '' && (
          <>
            {' '}
            <span className="merging-was">{words.merging.was({ value: told.base })}</span>
          </>
        )}
      </legend>
      <div className="merging-sides">
        {SIDES.map((side) => {
          const plan = isShape ? planOf(side) : null
          return (
            <label key={side} className="merging-side">
              <span className="merging-side-head">
                <input type="radio" name={id} checked={chosen === side} onChange={() => onChoose(side)} />
                <span>{words.merging.side({ side })}</span>
                <b className="merging-answer">{told[side]}</b>
              </span>
              {plan && <Outcome plan={plan} beside={planOf(side === 'mine' ? 'theirs' : 'mine')} difference={difference} />}
            </label>
          )
        })}
      </div>
    </fieldset>
  )
}

function Outcome({ plan, beside, difference }: { plan: RideReport; beside: RideReport | null; difference: Difference }) {
  const section = plan.sections.find(({ sectionId }) => sectionId === difference.place.sectionId)
  const from = section ? section.from : 0
  // As long for either, so that a longer answer looks longer.
  const to = section ? Math.max(section.to, from + spanOf(beside, section.sectionId)) : undefined
  return (
    <>
      <CurveSketch report={plan} from={from} to={to} />
      <span className="merging-times">{words.merging.times({ times: timesOf(plan, difference), total: plan.overall.total })}</span>
    </>
  )
}

function spanOf(plan: RideReport | null, sectionId: string): Seconds {
  const section = plan?.sections.find((one) => one.sectionId === sectionId)
  return section ? section.to - section.from : 0
}

/** "3:20 to 4:24", or that it is not there. */
function timesOf(plan: RideReport, { place }: Difference): string {
  const id = place.partId ?? place.itemId
  if (place.sectionId === undefined) return words.merging.wholeRide
  const from = startOf(plan, place)
  if (from === undefined) return words.merging.notThere
  if (id === undefined) return words.merging.fromTo({ from, to: plan.sections.find(({ sectionId }) => sectionId === place.sectionId)!.to })
  const played = plan.blocks.filter(({ block, set }) => block.id === id || set?.set.id === id)
  return words.merging.fromTo({ from, to: played.at(-1)!.to })
}

function otherPlan({ base, mine, theirs, choices }: Merging, { id, chosen }: Difference): RideReport {
  const other = { ...choices, [id]: chosen === 'mine' ? 'theirs' : 'mine' } as const
  return computeRide(mergeRides(base, mine, theirs, other).merged)
}

/** Words alone leave curve and clock as they are. */
const WORDS_ONLY = new Set([
  'title',
  'aim',
  'label',
  'notes',
  'feel',
  'text',
  'easier',
  'harder',
  'song.title',
  'song.artist',
  'leader.name',
  'startsAt',
])

const changesShape = (difference: Difference): boolean =>
  !(difference.kind === 'field' && (difference.of === 'cue' || WORDS_ONLY.has(difference.field)))
