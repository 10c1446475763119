import type { PlayedBlock, Span } from '#engine/played.ts'
import type { Bike, Block, Ride } from '#plan/model.ts'
import type { Rider } from '#plan/riderModel.ts'
import type { Rpm, Seconds, Setting, Watts } from '#units/units.ts'
import { speedFactor, speedFactorAlong } from './brakeLaw.ts'
import { cadenceStretches, heldAtEnd, type Pedalled } from './cadenceStretches.ts'
import { type Calibration, calibrationOf, type Reach, reachOf, referenceWatts, wattsAt } from './calibration.ts'
import { reserveOfEffort } from './effortOfReserve.ts'
import { legCost, legCostOver, OXYGEN, wattsForUptake } from './oxygenCost.ts'
import { constant, isConstant, type Quadratic, quadraticAt, scaled } from './quadratic.ts'
import { riderSetting } from './riderSetting.ts'

/** What one rider does in one span of the ride. */
export interface Ridden {
  from: Seconds
  to: Seconds
  /** Power over the span; 0 with the legs still. */
  watts: Quadratic
  /** Oxygen uptake over rest, mL/kg/min, as if seated. */
  uptake: Quadratic
  /** The same as a share of the oxygen-uptake reserve, 0–1 and beyond. */
  share: Quadratic
  /** Uptake of turning the legs alone, at the middle of the span: the part no bike has a say in. */
  legs: number
  turning: boolean
  /** Out of the saddle, and turning the legs. */
  standing: boolean
  /** Where watts come from: the calibrated points, beyond them (by feel), or, where no cadence is known, the intended effort. */
  source: Reach | 'intent'
  /** Index into the report's blocks: the block itself, or the one a lead-in carries on; −1 at rest. */
  block: number
  /** True for the span of a block, false for what carries it on and for rest. */
  own: boolean
}

/** What the spans of a ride are ridden with; the same for every rider. */
export interface RidingContext {
  bike: Bike
  datum: Ride['datum']
  blocks: readonly PlayedBlock[]
}

/**
 * One rider's power, uptake and share of reserve over the ride, span by span. Where nothing is
 * planned nothing is known of the rider: what follows goes on from how the last block left them.
 *
 * @param planned the spans of the ride but those of which the plan says nothing
 */
export function riddenBy(rider: Rider, planned: readonly Span[], context: RidingContext): Ridden[] {
  const legs = legsOf(rider)
  const calibration = calibrationOf(context.bike)
  let last = -1
  return planned.flatMap((span) => {
    if (span.kind === 'block') last = span.block!
    const carried = span.kind === 'leadIn'
    const played = span.kind === 'block' || carried ? context.blocks[last] : undefined
    if (played === undefined) return resting(span)
    const setting = riderSetting(context.bike, context.datum, rider, played.ledger.after.nominal)
    return cadenceStretches(carried ? heldAtEnd(played) : played, span).map((stretch) => {
      const ridden = pedalling(stretch, stretch, setting, calibration, legs)
      ridden.block = last
      ridden.own = !carried
      return ridden
    })
  })
}

/** One rider's uptake and reserve, as lines over power. */
interface Legs {
  massKg: number
  reserve: number
  uptakePerWatt: number
}

export const legsOf = (rider: Rider): Legs => ({
  massKg: rider.massKg,
  reserve: rider.vo2max - OXYGEN.rest,
  uptakePerWatt: OXYGEN.perWattPerKg / rider.massKg,
})

/** Power and share of reserve for a setting of the knob, over a stretch in which the cadence holds or ramps. */
export function pedalling({ cadence, block }: Pedalled, span: Times, setting: Setting, calibration: Calibration, legs: Legs): Ridden {
  if (cadence.kind === 'still' || block.posture === 'offBike') return resting(span)
  const standing = block.posture === 'standing'
  if (cadence.kind === 'unknown') {
    return turning(span, constant(wattsFor(block.effort, legs)), constant(OXYGEN.unloaded), standing, legs, 'intent')
  }
  const reference = referenceWatts(calibration, setting)
  const source = reachOf(calibration, setting)
  const start = cadence.from / calibration.referenceRpm
  const { law } = calibration
  if (cadence.from === cadence.to) {
    return turning(span, constant(reference * speedFactor(law, start)), constant(legCost(cadence.from)), standing, legs, source)
  }
  const rise = (cadence.to - cadence.from) / (span.to - span.from || 1)
  const speed = speedFactorAlong(law, start, rise / calibration.referenceRpm)
  return turning(span, scaled(speed, reference), legCostOver(cadence.from, rise), standing, legs, source)
}

/** Share of the reserve at a steady cadence and setting. */
export function levelShare(rpm: Rpm, setting: Setting, calibration: Calibration, legs: Legs): number {
  return (legs.uptakePerWatt * wattsAt(calibration, setting, rpm) + legCost(rpm)) / legs.reserve
}

interface Times {
  from: Seconds
  to: Seconds
}

function turning(
  { from, to }: Times,
  watts: Quadratic,
  turned: Quadratic,
  standing: boolean,
  legs: Legs,
  source: Ridden['source'],
): Ridden {
  const { uptakePerWatt: cost, reserve } = legs
  // Written out: this runs for every span of every rider.
  const [a, b, c] = [cost * watts[0] + turned[0], cost * watts[1] + turned[1], cost * watts[2] + turned[2]]
  const uptake: Quadratic = [a, b, c]
  const share: Quadratic = [a / reserve, b / reserve, c / reserve]
  const middle = isConstant(turned) ? turned[0] : quadraticAt(turned, (to - from) / 2)
  return { from, to, watts, uptake, share, legs: middle, turning: true, standing, source, block: -1, own: true }
}

const NOTHING = constant(0)

const resting = ({ from, to }: Times): Ridden => ({
  from,
  to,
  watts: NOTHING,
  uptake: NOTHING,
  share: NOTHING,
  legs: 0,
  turning: false,
  standing: false,
  source: 'calibrated',
  block: -1,
  own: false,
})

/** Without a cadence there is no power to compute: the rider is taken to give what is asked, at the power that costs it. */
function wattsFor(effort: Block['effort'], legs: Legs): Watts {
  const share = reserveOfEffort((effort.from + effort.to) / 2)
  return Math.max(0, wattsForUptake(OXYGEN.rest + share * legs.reserve, legs.massKg))
}
