import { memo } from 'react'
import type { Limits } from '#engine/ledger/limits.ts'
import type { LedgerEntry } from '#engine/report.ts'
import {
  type CallKind,
  callOfKind,
  formatTotals,
  kindOfCall,
  nudgeTotals,
  parseChange,
  parseTotal,
} from '#features/drafting/panel/block/call.ts'
import { OptionalQuantityRow } from '#features/drafting/panel/rows/OptionalQuantityRow.tsx'
import { QuantityRow } from '#features/drafting/panel/rows/QuantityRow.tsx'
import { SelectRow } from '#features/drafting/panel/rows/SelectRow.tsx'
import { patched } from '#plan/edits.ts'
import type { Bike, Resistance, StepRange } from '#plan/model.ts'
import type { Choice } from '#ui/Select.tsx'
import { formatSetting } from '#units/formatSetting.ts'
import { parsed, refused } from '#units/parsed.ts'

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

type Change = Extract<Resistance, { kind: 'change' }>
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
    </>
  )
})

function ChangeRows({ change, bike, limits, onChange }: ResistanceFieldsProps & { change: Change }) {
  const { stepsPerUnit, unit } = bike
  const direction = change.steps < 0 ? -1 : 1
  return (
    <>
      <QuantityRow
        label="by"
        value={change.steps}
        unit={`${unit}s`}
        format={(steps) => formatSetting(Math.abs(steps), stepsPerUnit)}
        parse={(text) => parseChange(text, bike, direction)}
        onChange={(steps) => onChange({ ...change, steps })}
        step={(steps, up, large) => direction * Math.max(1, Math.abs(steps) + up * (large ? stepsPerUnit : 1))}
      />
      <SelectRow label="how" value={change.mode} choices={MODES} onChange={(mode) => onChange({ ...change, mode })} />
      <OptionalQuantityRow
        label="should be at"
        value={change.checkpoint}
        placeholder="no checkpoint"
        format={(range) => formatTotals(range, bike)}
        parse={(text) => parseTotal(text, bike, limits)}
        onChange={(checkpoint) => onChange(patched(change, { checkpoint }))}
        step={(range, direction, large) => nudgeTotals(range, direction * (large ? stepsPerUnit : 1), limits)}
      />
    </>
  )
}

type Totals = Extract<Resistance, { kind: 'total' | 'byFeel' }>

function TotalRows({ total, bike, limits, over, onChange }: ResistanceFieldsProps & { total: Totals }) {
  const aim = total.kind === 'total' ? total.aim : undefined
  return (
    <>
      <QuantityRow
        label={total.kind === 'total' ? 'to' : 'about'}
        value={{ from: total.from, to: total.to }}
        unit={over}
        format={(range) => formatTotals(range, bike)}
        parse={(text) => parseTotal(text, bike, limits)}
        onChange={(range) => onChange(withRange(total, range))}
        step={(range, direction, large) => nudgeTotals(range, direction * (large ? bike.stepsPerUnit : 1), limits)}
      />
      {total.kind === 'total' && total.from !== total.to && (
        <OptionalQuantityRow
          label="aim at"
          value={aim}
          placeholder="nearest end"
          format={(steps) => formatSetting(steps, bike.stepsPerUnit)}
          parse={(text) => {
            const range = parseTotal(text, bike, limits)
            if (!range.ok) return range
            const inside = range.value.from === range.value.to && range.value.from >= total.from && range.value.to <= total.to
            return inside ? parsed(range.value.from) : refused(`The aim is one total from ${formatTotals(total, bike)}.`)
          }}
          onChange={(next) => onChange(patched(total, { aim: next }))}
          step={(steps, direction) => Math.min(total.to, Math.max(total.from, steps + direction))}
        />
      )}
    </>
  )
}

/** A range with the aim it had, where that still lies inside it. */
function withRange(total: Totals, { from, to }: StepRange): Resistance {
  if (total.kind === 'byFeel') return { kind: 'byFeel', from, to }
  const keepsAim = total.aim !== undefined && from !== to && total.aim >= from && total.aim <= to
  return { kind: 'total', from, to, ...(keepsAim && { aim: total.aim }) }
}
