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
import { formatSetting } from '#units/formatSetting.ts'
import { type Parsed, refused } from '#units/parsed.ts'
import type { KnobSteps, StepRange } from '#units/units.ts'
import type { Refusal } from '#words/said.ts'

interface ResistanceFieldsProps {
  resistance: Resistance
  /** The block's ledger as it stands, for a call that becomes one of another kind. */
  entryNow: () => LedgerEntry | undefined
  bike: Bike
  /** Lowest and highest total of the bike. */
  limits: Limits
  /** The unit in the plural with what a total counts from: "turns over base". */
  over: string
  onChange: (resistance: Resistance) => void
}

const KINDS: readonly Choice<CallKind>[] = [
  { value: 'stay', label: 'stay' },
  { value: 'total', label: 'to a total' },
  { value: 'add', label: 'add' },
  { value: 'takeOff', label: 'take off' },
  { value: 'byFeel', label: 'by feel' },
  { value: 'allOff', label: 'all off' },
]

const MODES: readonly Choice<Change['mode']>[] = [
  { value: 'exact', label: 'exactly' },
  { value: 'atLeast', label: 'at least' },
  { value: 'ifYouHaveIt', label: 'if you have it' },
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
      <SelectRow label="knob" value={kindOfCall(resistance)} choices={KINDS} onChange={choose} />
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
        label="by"
        value={change}
        unit={`${unit}s`}
        format={({ steps }) => formatSetting(Math.abs(steps), stepsPerUnit)}
        parse={(text) => parseChange(text, bike, change)}
        onChange={onChange}
        step={({ steps }, up, large) => changeOf(change, direction * Math.max(1, Math.abs(steps) + up * (large ? stepsPerUnit : 1)))}
      />
      <SelectRow label="how" value={change.mode} choices={MODES} onChange={(mode) => onChange({ ...change, mode })} />
    </>
  )
}

/** Where riders should be by then. */
function CheckpointRow({ call, bike, limits, onChange }: ResistanceFieldsProps & { call: Keep | Change | Total }) {
  return (
    <OptionalQuantityRow
      label="should be at"
      value={call.checkpoint}
      placeholder="no checkpoint"
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
        label={total.kind === 'total' ? 'to' : 'about'}
        value={{ from, to, orMore }}
        unit={over}
        format={(range) => formatTotals(range, bike)}
        parse={(text) => parseTotal(text, bike, limits)}
        onChange={(range) => onChange(withRange(total, range))}
        step={(range, direction, large) => nudgeTotals(range, direction * (large ? bike.stepsPerUnit : 1), limits)}
      />
      {total.kind === 'total' && from !== to && (
        <OptionalQuantityRow
          label="aim at"
          value={total.aim}
          placeholder="nearest end"
          format={(steps) => formatSetting(steps, bike.stepsPerUnit)}
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
  const problem = `The aim is one total from ${formatTotals({ from, to }, bike)}.`
  const aim = parseOneTotal(text, bike, limits, problem)
  return aim.ok && (aim.value < from || aim.value > to) ? refused(problem) : aim
}
