import { limitsOf } from '#plan/ledger/limits.ts'
import type { ByFeel, Resistance, Ride, Total } from '#plan/model.ts'
import { wholeStep } from '#plan/tidyBlock.ts'
import type { KnobSteps, StepRange } from '#units/units.ts'

/** What steps are counted in, and from where. */
export type Scale = Pick<Ride, 'bike' | 'datum'>

/** Steps of one scale in those of another, not rounded: those counted from the datum, and those that are a change. */
export interface Reading {
  total: (steps: KnobSteps) => number
  change: (steps: KnobSteps) => number
}

/** A turn stays a turn: steps keep what they say in the bike's unit, and the knob stays where it was when they are counted from elsewhere. */
export function readingOf(from: Scale, to: Scale): Reading {
  const share = to.bike.stepsPerUnit / from.bike.stepsPerUnit
  const change = (steps: KnobSteps) => steps * share
  const datum = from.datum === to.datum ? 0 : limitsOf({ ...to, datum: 'loose' }).base * (to.datum === 'loose' ? 1 : -1)
  return { total: (steps) => change(steps) + datum, change }
}

/** A range to the nearest whole steps, with the aim inside it; what is not counted in steps stays. */
export function readRange<Range extends StepRange | Total | ByFeel>(range: Range, total: Reading['total']): Range {
  const read = (steps: KnobSteps) => wholeStep(total(steps))
  const aim = 'aim' in range && range.aim !== undefined ? { aim: read(range.aim) } : {}
  return { ...range, from: read(range.from), to: read(range.to), ...aim }
}

/** The call with where riders should be as the other scale has it. */
export function readCheckpoint<Call extends Resistance>(call: Call, total: Reading['total']): Call {
  return 'checkpoint' in call && call.checkpoint ? { ...call, checkpoint: readRange(call.checkpoint, total) } : call
}
