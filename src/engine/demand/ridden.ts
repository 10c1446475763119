import type { PlayedBlock, Span } from '#engine/report.ts'
import type { Bike, Block, Ride, Rider } from '#plan/model.ts'
import type { KnobSteps, Seconds, Setting } from '#units/units.ts'
import { type Calibration, calibrationOf, type Reach, reachOf, referenceWatts } from './calibration.ts'
import { reserveOfEffort } from './effortOfReserve.ts'
import { OXYGEN, wattsForUptake } from './oxygenCost.ts'
import { constant, type Quadratic, scaled } from './quadratic.ts'
import { riderSetting } from './riderSetting.ts'

/** What one rider does in one span of the ride. */
export interface Ridden {
  from: Seconds
  to: Seconds
  /** Power over the span; 0 with the legs still. */
  watts: Quadratic
  /** Gross oxygen uptake in mL/kg/min. */
  uptake: Quadratic
  /** Share of the oxygen-uptake reserve, 0–1 and beyond. */
  share: Quadratic
  turning: boolean
  /** Where watts come from: the calibrated points, beyond them (by feel), or, where no cadence is known, the intended effort. */
  source: Reach | 'intent'
  /** Index into the report's blocks: the block itself, or the one a lead-in or open tail carries on. */
  block?: number
  /** True for the span of a block, false for what carries it on and for rest. */
  own: boolean
}

/** What the spans of a ride are ridden with; the same for every rider. */
export interface RidingContext {
  bike: Bike
  datum: Ride['datum']
  blocks: readonly PlayedBlock[]
}

/** One rider's power, uptake and share of reserve over the whole ride, span by span. */
export function riddenBy(rider: Rider, spans: readonly Span[], context: RidingContext): Ridden[] {
  const legs = legsOf(rider)
  const calibration = calibrationOf(context.bike)
  let last: number | undefined
  return spans.map((span) => {
    if (span.kind === 'block') last = span.block
    const carried = span.kind === 'leadIn' || span.kind === 'openTail'
    const index = span.kind === 'block' || carried ? last : undefined
    const played = index === undefined ? undefined : context.blocks[index]
    if (played === undefined) return resting(span.from, span.to)
    const setting = riderSetting(context.bike, context.datum, rider, played.ledger.after.nominal)
    const pedalled = carried ? heldAtEnd(played) : played
    return { ...pedalling(pedalled, span, setting, calibration, legs), block: index, own: !carried }
  })
}

/** One rider's uptake and reserve, as lines over power. */
export interface Legs {
  massKg: number
  reserve: number
  uptakePerWatt: number
}

export const legsOf = (rider: Rider): Legs => ({
  massKg: rider.massKg,
  reserve: rider.vo2max - OXYGEN.rest,
  uptakePerWatt: OXYGEN.perWattPerKg / rider.massKg,
})

type Pedalled = Pick<PlayedBlock, 'cadence'> & { block: Pick<Block, 'effort' | 'posture'> }

/** A block's power, uptake and share for a setting of the knob. */
export function pedalling(
  { cadence, block }: Pedalled,
  { from, to }: { from: Seconds; to: Seconds },
  setting: Setting,
  calibration: Calibration,
  legs: Legs,
): Omit<Ridden, 'block' | 'own'> {
  if (cadence.kind === 'still' || block.posture === 'offBike') return resting(from, to)
  if (cadence.kind === 'unknown') return following(block.effort, from, to, legs)
  const start = cadence.from / calibration.referenceRpm
  const slope = (cadence.to / calibration.referenceRpm - start) / (to - from || 1)
  const speed: Quadratic = calibration.brake === 'friction' ? [start, slope, 0] : [start * start, 2 * start * slope, slope * slope]
  const watts = scaled(speed, referenceWatts(calibration, setting))
  return { from, to, turning: true, source: reachOf(calibration, setting), ...ofWatts(watts, legs) }
}

/** Steps' worth of setting are whole; this is one step in the bike's unit. */
export const settingOfSteps = (steps: KnobSteps, bike: Bike): Setting => steps / bike.stepsPerUnit

function ofWatts(watts: Quadratic, legs: Legs): Pick<Ridden, 'watts' | 'uptake' | 'share'> {
  const uptake = scaled(watts, legs.uptakePerWatt, OXYGEN.rest + OXYGEN.unloaded)
  return { watts, uptake, share: scaled(uptake, 1 / legs.reserve, -OXYGEN.rest / legs.reserve) }
}

const STILL: Pick<Ridden, 'watts' | 'uptake' | 'share'> = { watts: constant(0), uptake: constant(OXYGEN.rest), share: constant(0) }

const resting = (from: Seconds, to: Seconds): Ridden => ({ from, to, turning: false, source: 'calibrated', own: false, ...STILL })

/** Without a cadence there is no power: the rider is taken to give what is asked, at the power that costs it. */
function following(effort: Block['effort'], from: Seconds, to: Seconds, legs: Legs): Omit<Ridden, 'block' | 'own'> {
  const mean = reserveOfEffort((effort.from + effort.to) / 2)
  const watts = Math.max(0, wattsForUptake(OXYGEN.rest + mean * legs.reserve, legs.massKg))
  return { from, to, turning: true, source: 'intent', ...ofWatts(constant(watts), legs) }
}

/** A lead-in or open tail rides on as its block ended. */
function heldAtEnd({ cadence, block }: PlayedBlock): Pedalled {
  const effort = { from: block.effort.to, to: block.effort.to }
  const end = cadence.kind === 'turning' ? { ...cadence, from: cadence.to } : cadence
  return { cadence: end, block: { effort, posture: block.posture } }
}
