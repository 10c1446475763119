import { memo } from 'react'
import type { LedgerEntry } from '#engine/played.ts'
import { parseOneTotal } from '#features/drafting/panel/block/call.ts'
import { OptionalQuantityRow } from '#features/drafting/panel/rows/OptionalQuantityRow.tsx'
import { isSingle } from '#plan/ledger/ledgerState.ts'
import type { Limits } from '#plan/ledger/limits.ts'
import type { Bike } from '#plan/model.ts'
import { formatSetting } from '#units/formatSetting.ts'
import type { KnobSteps } from '#units/units.ts'

interface OwnTotalRowProps {
  ownTotal: KnobSteps | undefined
  /** The block's ledger as it stands: without a total of their own the leader rides what the class is told. */
  total: string | undefined
  entryNow: () => LedgerEntry | undefined
  bike: Bike
  limits: Limits
  onChange: (ownTotal: KnobSteps | undefined) => void
}

/** What the leader has on, where that is another total than the class is told. */
export const OwnTotalRow = memo(function OwnTotalRow({ ownTotal, total, entryNow, bike, limits, onChange }: OwnTotalRowProps) {
  return (
    <OptionalQuantityRow
      label="you ride"
      value={ownTotal}
      placeholder={total === undefined ? 'as the class' : `${total}, as the class`}
      format={(steps) => formatSetting(steps, bike.stepsPerUnit)}
      parse={(text) => parseOneTotal(text, bike, limits, 'You ride one total; the range is the class’s.')}
      onChange={(next) => onChange(next !== undefined && isTold(next, entryNow()) ? undefined : next)}
      step={(steps, direction, large) =>
        Math.min(limits.ceiling, Math.max(limits.floor, steps + direction * (large ? bike.stepsPerUnit : 1)))
      }
    />
  )
})

/** The single total the class is told is no other one. */
const isTold = (steps: KnobSteps, entry: LedgerEntry | undefined): boolean =>
  entry !== undefined && isSingle(entry.after) && entry.after.low === steps
