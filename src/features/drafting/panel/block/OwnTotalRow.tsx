import { memo } from 'react'
import type { LedgerEntry } from '#engine/played.ts'
import { parseOneTotal } from '#features/drafting/panel/block/call.ts'
import { OptionalQuantityRow } from '#features/drafting/panel/rows/OptionalQuantityRow.tsx'
import { isSingle } from '#plan/ledger/ledgerState.ts'
import type { Limits } from '#plan/ledger/limits.ts'
import type { Bike } from '#plan/model.ts'
import type { KnobSteps } from '#units/units.ts'
import { setting } from '#words/forms.ts'
import { say, type Text } from '#words/said.ts'
import { tell, words } from '#words/words.ts'

interface OwnTotalRowProps {
  ownTotal: KnobSteps | undefined
  /** The block's ledger as it stands: without a total of their own the leader rides what the class is told. */
  total: Text | undefined
  entryNow: () => LedgerEntry | undefined
  bike: Bike
  limits: Limits
  onChange: (ownTotal: KnobSteps | undefined) => void
}

/** What the leader has on, where that is another total than the class is told. */
export const OwnTotalRow = memo(function OwnTotalRow({ ownTotal, total, entryNow, bike, limits, onChange }: OwnTotalRowProps) {
  return (
    <OptionalQuantityRow
      label={words.panelsBlock.youRide}
      value={ownTotal}
      placeholder={total === undefined ? words.panelsBlock.sameAsClass : words.panelsBlock.totalAsClass({ total: tell(total) })}
      format={(steps) => setting(steps, bike.stepsPerUnit)}
      parse={(text) => parseOneTotal(text, bike, limits, say('panelsBlock.oneForYou'))}
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
