import { stepsOfTurns } from '#engine/anotherBike/stepsOfTurns.ts'
import type { PlayedBlock } from '#engine/played.ts'
import type { RideReport } from '#engine/report.ts'
import type { Ride } from '#plan/model.ts'
import type { Effort } from '#units/units.ts'

/** How hard a block is, as far as words about it go. */
export interface Load {
  /** Least and most of its planned effort. */
  from: Effort
  to: Effort
  /** What the model makes of it for the rider the class is judged for; null where it has no figure. */
  demand: Effort | null
  /** Whether there is enough on the knob for it to be heavy under the legs. */
  weighted: boolean
  /** Which way the knob goes into it. */
  knob: 'up' | 'down' | 'same'
  allOut: boolean
}

/** Less than this over base is nothing heavy, at any cadence (common practice: a hill is a turn and more). */
const WEIGHT_TURNS = 1.25

/** The load of every played block. */
export function loadsOf(ride: Ride, { blocks, riders }: Pick<RideReport, 'blocks' | 'riders'>): Load[] {
  const demands = riders.find(({ reference }) => reference)?.demand ?? []
  return blocks.map((played) => loadOf(ride, played, demands[played.index]?.mean ?? null))
}

/** The load of one, with what the model makes of it. */
export function loadOf(ride: Ride, { block, ledger, cadence }: PlayedBlock, demand: Effort | null): Load {
  const { effort } = block
  const base = ride.datum === 'base' ? 0 : Math.round(ride.bike.base * ride.bike.stepsPerUnit)
  const rpm = cadence.kind === 'turning' ? cadence.from : ride.bike.referenceRpm
  const { before, after } = ledger
  return {
    from: Math.min(effort.from, effort.to),
    to: Math.max(effort.from, effort.to),
    demand,
    weighted: after.nominal - base >= stepsOfTurns(WEIGHT_TURNS, ride.bike, rpm, 'atMost'),
    knob: after.nominal > before.nominal ? 'up' : after.nominal < before.nominal ? 'down' : 'same',
    allOut: block.allOut === true,
  }
}
