import type { PlayedBlock } from '#engine/played.ts'
import type { Ride } from '#plan/model.ts'
import type { KnobSteps } from '#units/units.ts'
import { paceOf } from './paceOf.ts'
import { type Line, sizeOfTurns, stepsOfTurns } from './stepsOfTurns.ts'

/** A ride, of which only the bike is asked. */
type OnBike = { ride: Pick<Ride, 'bike'> }

/** A rule of turns over base, in whole steps over the base of the ride's bike at a played block's cadence. */
export const ruleAt = ({ ride: { bike } }: OnBike, played: PlayedBlock, turns: number, line: Line): KnobSteps =>
  stepsOfTurns(turns, bike, paceOf(played, bike.referenceRpm), line)

/** A rule about a size in turns: how much is added, how far riders are apart. */
export const sizeAt = ({ ride: { bike } }: OnBike, played: PlayedBlock, turns: number): KnobSteps =>
  sizeOfTurns(turns, bike, paceOf(played, bike.referenceRpm))
