import type { MeaningOf } from '#engine/cues/claims/claim.ts'
import type { PlayedBlock } from '#engine/played.ts'
import { isSingle, type LedgerState, mayBeAt } from '#plan/ledger/ledgerState.ts'
import type { Bike, Ride } from '#plan/model.ts'
import type { KnobSteps } from '#units/units.ts'
import type { PlanView } from './planView.ts'
import type { Spoken } from './spoken.ts'
import { rest } from './stretches.ts'
import { HOLDS, type Verdict } from './verdict.ts'

/** Spoken amounts are told to three places: thirds and sevenths of a unit have no more. */
const isSaid = (value: number, steps: KnobSteps, { stepsPerUnit }: Pick<Bike, 'stepsPerUnit'>): boolean =>
  Math.abs(value - steps / stepsPerUnit) < 0.0005 + 1e-9

/**
 * The blocks a call may be about. An announcement tells the next thing only; words inside a block are about its own call
 * or the next one, a preview about all that follows, and a story about none.
 */
function calledBy({ view, moment, played }: Spoken): PlayedBlock[] {
  if (moment === 'story') return []
  if (moment === 'preview') return [played, ...rest(view, played)]
  const next = moment === 'form' ? view.blocks[played.index + 1] : undefined
  return next ? [played, next] : [played]
}

/** "half a turn on". */
export function judgeChange({ low, high }: Pick<MeaningOf<'change'>, 'low' | 'high'>, spoken: Spoken): Verdict {
  const { view } = spoken
  const called = calledBy(spoken)
  if (called.length === 0) return null
  if (called.some((played) => changes(view, played, low, high))) return HOLDS
  const [first] = called
  const call = view.callOf(first!.index)
  if (call.kind === 'allOff') return { holds: false, right: {}, call: 'allOff' }
  const steps = stepsOf(view, first!)
  const value = steps / view.ride.bike.stepsPerUnit
  return { holds: false, right: { low: value, high: value }, ...(steps === 0 && { call: 'stay' as const }) }
}

function changes(view: PlanView, played: PlayedBlock, low: number, high: number): boolean {
  const call = view.callOf(played.index)
  if (call.kind === 'allOff') return low < 0
  const { bike } = view.ride
  const steps = stepsOf(view, played)
  if (low === high) return isSaid(low, steps, bike)
  // A plan that states a total is not told as a range of changes.
  return call.kind === 'change' && low <= steps / bike.stepsPerUnit && steps / bike.stepsPerUnit <= high
}

function stepsOf(view: PlanView, played: PlayedBlock): KnobSteps {
  const call = view.callOf(played.index)
  const { before, after } = played.ledger
  return call.kind === 'change' ? call.steps : after.nominal - before.nominal
}

/** "same gear": inside a block nothing is turned. */
export function judgeStay(spoken: Spoken): Verdict {
  return spoken.inside ? null : judgeChange({ low: 0, high: 0 }, spoken)
}

/** "up to two and a half". */
export function judgeTotal(meaning: MeaningOf<'total'>, spoken: Spoken): Verdict {
  const { ride } = spoken.view
  const called = calledBy(spoken)
  if (called.length === 0) return null
  if (called.some(({ ledger }) => totalHolds(meaning, ledger.after, ride))) return HOLDS
  return rightTotal(meaning, called[0]!.ledger.after, ride)
}

/** A place on the scale as it is said. */
type SaidTotal = Pick<MeaningOf<'total'>, 'low' | 'high' | 'orMore' | 'overBase'>

/** Whether riders may be told so: their one total, one inside their range, or the range itself; of an open one any part of it. */
function totalHolds(said: SaidTotal, state: LedgerState, ride: Pick<Ride, 'bike' | 'datum'>): boolean {
  const { bike } = ride
  const { low, nominal, high } = state
  const over = baseOf(said, ride)
  const steps = (value: number): KnobSteps => (value + over) * bike.stepsPerUnit
  if (said.orMore) return isSaid(said.low + over, low ?? nominal, bike)
  if (said.low === said.high) return isSaid(said.low + over, nominal, bike) || (!isSingle(state) && mayBeAt(state, steps(said.low)))
  if (low === null || high === null) return mayBeAt(state, steps(said.low)) && mayBeAt(state, steps(said.high))
  return isSaid(said.low + over, low, bike) && isSaid(said.high + over, high, bike)
}

/** The state of the ledger as that total would be said; of an open one its known end. */
function rightTotal(said: SaidTotal, { low, nominal, high }: LedgerState, ride: Pick<Ride, 'bike' | 'datum'>): Verdict {
  const say = (steps: KnobSteps): number => steps / ride.bike.stepsPerUnit - baseOf(said, ride)
  const one = (steps: KnobSteps, call?: 'orMore' | 'orLess'): Verdict => ({
    holds: false,
    right: { low: say(steps), high: say(steps) },
    ...(call && { call }),
  })
  if (said.orMore) return one(low ?? nominal)
  if (said.low === said.high || (low === null && high === null)) return one(nominal)
  if (high === null) return one(low!, 'orMore')
  return low === null ? one(high, 'orLess') : { holds: false, right: { low: say(low), high: say(high) } }
}

/** What "over base" adds to a total that counts from the loose wheel. */
const baseOf = ({ overBase }: SaidTotal, { bike, datum }: Pick<Ride, 'bike' | 'datum'>): number =>
  overBase && datum === 'loose' ? bike.base : 0
