import { memo } from 'react'
import type { LedgerEntry } from '#engine/played.ts'
import {
  type CallKind,
  callOfKind,
  formatTotals,
  kindOfCall,
  nudgeTotals,
  parseChange,
  parseOneTotal,
  parseTotal,
  withRange,
} from '#features/drafting/panel/block/call.ts'
import { OptionalQuantityRow } from '#features/drafting/panel/rows/OptionalQuantityRow.tsx'
import { QuantityRow } from '#features/drafting/panel/rows/QuantityRow.tsx'
import { SelectRow } from '#features/drafting/panel/rows/SelectRow.tsx'
import { patched } from '#plan/edits.ts'
import type { Limits } from '#plan/ledger/limits.ts'
import { changeOf } from '#plan/ledger/turnedBy.ts'
import type { Bike, ByFeel, Change, Keep, Resistance, Total } from '#plan/model.ts'
import type { Choice } from '#ui/Select.tsx'
import { type Parsed, refused } from '#units/parsed.ts'
import type { KnobSteps, StepRange } from '#units/units.ts'
import { setting } from '#words/forms.ts'
import type { Refusal } from '#words/said.ts'
import { words } from '#words/words.ts'

interface ResistanceFieldsProps {
  resistance: Resistance
  /** The block's ledger as it stands, for a call that becomes one of another kind. */
  entryNow: () => LedgerEntry | undefined
  bike: Bike
  /** Lowest and highest total of the bike. */
  limits: Limits
  /** The unit in the plural with what it counts from: "turns over base". */
  over: string
  onChange: (resistance: Resistance) => void
}

export const kindChoices = (): readonly Choice<CallKind>[] => [
  { value: 'stay', label: words.panelsBlock.stay },
  { value: 'total', label: words.panelsBlock.setTo },
  { value: 'add', label: words.panelsBlock.add },
  { value: 'takeOff', label: words.panelsBlock.takeOff },
  { value: 'byFeel', label: words.panelsBlock.byFeel },
  { value: 'allOff', label: words.panelsBlock.allOff },
]

export const modeChoices = (): readonly Choice<Change['mode']>[] => [
  { value: 'exact', label: words.panelsBlock.exactly },
  { value: 'atLeast', label: words.panelsBlock.atLeast },
  { value: 'ifYouHaveIt', label: words.panelsBlock.ifYouHaveIt },
]

/** What riders are told to do with the knob, in words first and numbers after. */
export const ResistanceFields = memo(function ResistanceFields(props: ResistanceFieldsProps) {
  const { resistance, entryNow, bike, onChange } = props
  const choose = (kind: CallKind) => {
    const entry = entryNow()
    if (entry) onChange(callOfKind(kind, resistance, entry, bike.stepsPerUnit))
  }
  return (
    <>
      <SelectRow label={words.panelsBlock.knob} value={kindOfCall(resistance)} choices={kindChoices()} onChange={choose} />
      {resistance.kind === 'change' && <ChangeRows {...props} change={resistance} />}
      {(resistance.kind === 'total' || resistance.kind === 'byFeel') && <TotalRows {...props} total={resistance} />}
      {resistance.kind !== 'byFeel' && resistance.kind !== 'allOff' && <CheckpointRow {...props} call={resistance} />}
    </>
  )
})

function ChangeRows({ change, bike, onChange }: ResistanceFieldsProps & { change: Change }) {
  const { stepsPerUnit, unit } = bike
  const direction = change.steps < 0 ? -1 : 1
  return (
    <>
      <QuantityRow
        label={words.panelsBlock.by}
        value={change}
        unit={words.measures.unitOf(unit, true)}
        format={({ steps }) => setting(Math.abs(steps), stepsPerUnit)}
        parse={(text) => parseChange(text, bike, change)}
        onChange={onChange}
        step={({ steps }, up, large) => changeOf(change, direction * Math.max(1, Math.abs(steps) + up * (large ? stepsPerUnit : 1)))}
      />
      <SelectRow
        label={words.panelsBlock.how}
        value={change.mode}
        choices={modeChoices()}
        onChange={(mode) => onChange({ ...change, mode })}
      />
    </>
  )
}

/** Where riders should be by then. */
function CheckpointRow({ call, bike, limits, onChange }: ResistanceFieldsProps & { call: Keep | Change | Total }) {
  return (
    <OptionalQuantityRow
      label={words.panelsBlock.shouldBeAt}
      value={call.checkpoint}
      placeholder={words.panelsBlock.noCheckpoint}
      format={(range) => formatTotals(range, bike)}
      parse={(text) => parseTotal(text, bike, limits)}
      onChange={(checkpoint) => onChange(patched(call, { checkpoint }))}
      step={(range, direction, large) => nudgeTotals(range, direction * (large ? bike.stepsPerUnit : 1), limits)}
    />
  )
}

function TotalRows({ total, bike, limits, over, onChange }: ResistanceFieldsProps & { total: Total | ByFeel }) {
  const { from, to, orMore } = total
  return (
    <>
      <QuantityRow<StepRange>
        label={total.kind === 'total' ? words.panelsBlock.to : words.panelsBlock.about}
        value={{ from, to, orMore }}
        unit={over}
        format={(range) => formatTotals(range, bike)}
        parse={(text) => parseTotal(text, bike, limits)}
        onChange={(range) => onChange(withRange(total, range))}
        step={(range, direction, large) => nudgeTotals(range, direction * (large ? bike.stepsPerUnit : 1), limits)}
      />
      {total.kind === 'total' && from !== to && (
        <OptionalQuantityRow
          label={words.panelsBlock.aimAt}
          value={total.aim}
          placeholder={words.panelsBlock.nearestEnd}
          format={(steps) => setting(steps, bike.stepsPerUnit)}
          parse={(text) => parseAim(text, total, bike, limits)}
          onChange={(next) => onChange(patched(total, { aim: next }))}
          step={(steps, direction) => Math.min(to, Math.max(from, steps + direction))}
        />
      )}
    </>
  )
}

/** One total inside the range. */
function parseAim(text: string, { from, to }: Total, bike: Bike, limits: Limits): Parsed<KnobSteps, Refusal> {
  const problem = words.panelsBlock.aimProblem({ range: formatTotals({ from, to }, bike) })
  const aim = parseOneTotal(text, bike, limits, problem)
  return aim.ok && (aim.value < from || aim.value > to) ? refused(problem) : aim
}
