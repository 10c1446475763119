import type { Constants } from '#engine/constants.ts'
import type { PlayedBlock } from '#engine/played.ts'
import type { Block, Ride } from '#plan/model.ts'
import type { Rider } from '#plan/riderModel.ts'
import type { Effort, KnobSteps, Seconds } from '#units/units.ts'
import type { Said } from '#words/said.ts'
import { cadenceStretches } from './cadenceStretches.ts'
import { calibrationOf, reachOf } from './calibration.ts'
import { type DemandPiece, demandPieces, effortWith, meanDemand, standingBonus } from './demandOfBlock.ts'
import { apartWithin, gapPieces, TOUCHING } from './intentGap.ts'
import { legsOf, levelShare, pedalling } from './ridden.ts'
import { riderSetting } from './riderSetting.ts'

/** Why whole steps do not close a difference. */
type Prevented = 'step' | 'room' | 'calibration' | 'ramp'

/** The totals a played block may be brought to, and what ends them, as the end of a sentence. */
export interface Room {
  least: { total: KnobSteps; reason: Said }
  most: { total: KnobSteps; reason: Said }
}

/** The whole steps that bring what is asked nearest to what is planned. */
export interface Closing {
  steps: KnobSteps
  /** True when the difference then stays within the limit, or beyond it for no longer than allowed. */
  closes: boolean
  /** Mean demand with those steps. */
  demand: Effort
  /** What then still lies beyond the limit, effort × seconds. */
  excess: number
  /** Mean demand of the neighbouring step on the other side of the intent, where steps are too coarse. */
  beyond?: Effort
  prevented?: Prevented
  /** What ends the room, in words, where that prevents it. */
  reason?: Said
}

export interface ClosingSetup {
  ride: Pick<Ride, 'bike' | 'datum'>
  rider: Rider
  roomOf: (played: PlayedBlock) => Room
  rules: Pick<Constants, 'intentGap' | 'intentGapSeconds'>
}

/** How a block stands as it is planned, before anything is tried. */
export const asPlanned = (played: readonly PlayedBlock[], setup: ClosingSetup): Tried => tried(played, 0, setup)

/**
 * Looks for the whole number of steps, the same in every round, that brings a block's demand
 * nearest to its intent and its total inside its room. Demand never falls when resistance rises, so the search walks from
 * where the block is towards the intent and stops when it gets worse, or where the room of a
 * round ends.
 *
 * @param played the same block in every round it is played, at least once
 * @param here how it stands
 */
export function stepsToClose(played: readonly PlayedBlock[], here: Tried, setup: ClosingSetup): Closing {
  const direction = here.mean > 0 ? -1 : 1
  const room = roomFor(played, direction, setup)
  let best = here
  let before = here
  for (let taken = 1; taken <= room.steps; taken++) {
    const next = tried(played, direction * taken, setup)
    // Where another rule already has it too heavy or too light, less than that rule asks for is no answer.
    if (taken < room.atLeast) {
      before = next
      continue
    }
    if (isBetter(next, best) && !joinsBeyond(next, here)) best = next
    const passed = next.mean * direction >= 0
    if (passed) return explained(best, setup, ramps(played) ? 'ramp' : 'step', best === next ? before : next)
    if (next.byFeel === direction && next.demand === before.demand) return explained(best, setup, 'calibration')
    before = next
  }
  return { ...explained(best, setup, 'room'), reason: room.reason }
}

/** True where planning another effort leaves less beyond the limit, and nothing that could join the neighbour's. */
export function effortHelps(played: readonly PlayedBlock[], here: Tried, setup: ClosingSetup, effort: Block['effort']): boolean {
  const planned = played.map((one) => ({ ...one, block: { ...one.block, effort } }))
  const next = tried(planned, 0, setup)
  return next.excess < here.excess && !joinsBeyond(next, here)
}

const ramps = (played: readonly PlayedBlock[]): boolean =>
  played.some(
    ({ block, cadence }) => block.effort.from !== block.effort.to || (cadence.kind === 'turning' && cadence.least !== cadence.most),
  )

/** What was found and, where it does not close, what keeps it from it; `other` is the step on the far side of the intent. */
function explained(best: Tried, setup: ClosingSetup, prevented: Prevented, other?: Tried): Closing {
  const closing = judged(best, setup)
  if (closing.closes) return closing
  return { ...closing, prevented, ...(prevented === 'step' && other && { beyond: other.demand }) }
}

/** What a number of steps would make of a block. */
export interface Tried {
  steps: KnobSteps
  demand: Effort
  /** Mean of demand less intent, over all rounds. */
  mean: number
  /** Area beyond the limit, effort × seconds, over all rounds. */
  excess: number
  longest: Seconds
  /** Stretches apart that reach an end of a block, where they may go on in the next: those above intent, those below. */
  touchesOver: boolean
  touchesUnder: boolean
  /** 1 where every round is already above the calibrated points, −1 where below, else 0. */
  byFeel: -1 | 0 | 1
}

function tried(played: readonly PlayedBlock[], steps: KnobSteps, setup: ClosingSetup): Tried {
  const { ride, rider, rules } = setup
  const calibration = calibrationOf(ride.bike)
  const legs = legsOf(rider)
  const sum: Tried = { steps, demand: 0, mean: 0, excess: 0, longest: 0, touchesOver: false, touchesUnder: false, byFeel: 0 }
  let seconds = 0
  let above = true
  let below = true
  for (const one of played) {
    const setting = riderSetting(ride.bike, ride.datum, rider, one.ledger.after.nominal + steps)
    const reach = reachOf(calibration, setting)
    above = above && reach === 'above'
    below = below && reach === 'below'
    seconds += one.to - one.from
    const { cadence, block } = one
    if (
      cadence.kind === 'turning' &&
      cadence.least === cadence.most &&
      block.effort.from === block.effort.to &&
      block.posture !== 'offBike'
    ) {
      addLevel(sum, one, effortWith(levelShare(cadence.from, setting, calibration, legs), standingBonus(block)), rules.intentGap)
      continue
    }
    const pieces = cadenceStretches(one, one).flatMap((stretch) => {
      const span = pedalling(stretch, stretch, setting, calibration, legs)
      return demandPieces(span, span.turning ? standingBonus(block) : 0)
    })
    addPieces(sum, one, pieces, rules.intentGap)
  }
  sum.byFeel = above ? 1 : below ? -1 : 0
  sum.demand /= seconds || 1
  sum.mean /= seconds || 1
  return sum
}

/** A block whose demand and intent are both level: apart throughout or not at all. */
function addLevel(sum: Tried, { from, to, block }: PlayedBlock, demand: Effort, limit: Effort): void {
  const length = to - from
  const gap = demand - block.effort.from
  sum.demand += demand * length
  sum.mean += gap * length
  if (Math.abs(gap) <= limit + TOUCHING) return
  sum.excess += (Math.abs(gap) - limit) * length
  sum.longest = Math.max(sum.longest, length)
  if (gap > 0) sum.touchesOver = true
  else sum.touchesUnder = true
}

function addPieces(sum: Tried, played: PlayedBlock, pieces: readonly DemandPiece[], limit: Effort): void {
  const length = played.to - played.from
  const gap = gapPieces(played, pieces)
  sum.demand += meanDemand(pieces) * length
  sum.mean += meanDemand(gap) * length
  for (const { from, to, excess, sign } of apartWithin(gap, limit)) {
    sum.excess += excess
    sum.longest = Math.max(sum.longest, to - from)
    if (from > played.from && to < played.to) continue
    if (sign > 0) sum.touchesOver = true
    else sum.touchesUnder = true
  }
}

/** Less beyond the limit is better; with nothing beyond it a smaller mean difference. */
function isBetter(next: Tried, best: Tried): boolean {
  if (best.excess > 0) return next.excess < best.excess - 1e-9
  return next.excess === 0 && Math.abs(next.mean) < Math.abs(best.mean) - 1e-9
}

/** A change may not pass the intent so far that what is then beyond it could join the neighbour's. */
const joinsBeyond = (next: Tried, here: Tried): boolean => (here.mean > 0 ? next.touchesUnder : next.touchesOver)

function judged({ steps, demand, excess, longest, touchesOver, touchesUnder }: Tried, { rules }: ClosingSetup): Closing {
  const touchesEnd = touchesOver || touchesUnder
  return { steps, demand, excess, closes: excess === 0 || (longest <= rules.intentGapSeconds && !touchesEnd) }
}

/** How many steps there are in a direction before the room of a round ends, what ends it, and how many lead into it. */
function roomFor(
  played: readonly PlayedBlock[],
  direction: number,
  { roomOf }: ClosingSetup,
): { steps: KnobSteps; reason: Said; atLeast: KnobSteps } {
  const rooms = played.map((one) => {
    const { least, most } = roomOf(one)
    const { nominal } = one.ledger.after
    return direction > 0
      ? { steps: most.total - nominal, reason: most.reason, atLeast: least.total - nominal }
      : { steps: nominal - least.total, reason: least.reason, atLeast: nominal - most.total }
  })
  const tightest = rooms.reduce((least, one) => (one.steps < least.steps ? one : least))
  return { ...tightest, steps: Math.max(0, tightest.steps), atLeast: Math.max(...rooms.map(({ atLeast }) => atLeast)) }
}
