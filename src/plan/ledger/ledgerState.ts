import type { KnobSteps, StepRange } from '#units/units.ts'

/**
 * Where riders may have the knob, in whole steps counted from the ride's datum: low ≤ nominal ≤ high.
 * Nominal is what the plan means, and what demand is computed with. An end that is null is open: after
 * "at least" nobody knows how far riders went, so no number stands for it, least of all the knob's own end.
 */
export interface LedgerState {
  readonly low: KnobSteps | null
  readonly nominal: KnobSteps
  readonly high: KnobSteps | null
}

/** All riders at one total. */
export const atTotal = (total: KnobSteps): LedgerState => ({ low: total, nominal: total, high: total })

/** Riders anywhere in a stated range. */
export const inRange = ({ from, to, orMore }: StepRange): LedgerState => ({ low: from, nominal: from, high: orMore ? null : to })

/** Whether all riders are at one known total. */
export const isSingle = ({ low, high }: LedgerState): boolean => low !== null && low === high

export const isOpen = ({ low, high }: LedgerState): boolean => low === null || high === null

/** Whether riders may be at a total. */
export const mayBeAt = ({ low, high }: LedgerState, total: KnobSteps): boolean =>
  (low === null || low <= total) && (high === null || total <= high)

export const sameState = (a: LedgerState, b: LedgerState): boolean => a.low === b.low && a.nominal === b.nominal && a.high === b.high
