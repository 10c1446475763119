import { steadyCadence } from '#engine/cadence/steadyCadence.ts'
import type { PlayedBlock } from '#engine/played.ts'
import type { Block } from '#plan/model.ts'
import type { Seconds } from '#units/units.ts'

/** What legs do in a stretch: a cadence that holds or ramps. */
export type Pedalled = Pick<PlayedBlock, 'cadence'> & { block: Pick<Block, 'effort' | 'posture'> }

interface Times {
  from: Seconds
  to: Seconds
}

/**
 * A span of a block taken apart where its tempo moves, so that in each stretch the cadence holds. A span that a
 * crossfade ends early has the stretches it still reaches.
 */
export function cadenceStretches({ cadence, block }: Pedalled, { from, to }: Times): (Times & Pedalled)[] {
  if (cadence.kind !== 'turning' || !cadence.pieces) return [{ from, to, cadence, block }]
  const stretches: (Times & Pedalled)[] = []
  let start = from
  for (const [i, { to: end, rpm }] of cadence.pieces.entries()) {
    // The last stretch ends with the span, whatever rounding says.
    const until = i === cadence.pieces.length - 1 ? to : Math.min(to, from + end)
    if (until > start || (to === from && i === 0)) {
      stretches.push({ from: start, to: until, cadence: steadyCadence(rpm), block })
    }
    start = Math.max(start, until)
  }
  return stretches
}

/** How a block ends, and a lead-in after it rides on. */
export function heldAtEnd(played: Pedalled): Pedalled {
  const { cadence, block } = played
  const moves = cadence.kind === 'turning' && (cadence.pieces !== undefined || cadence.from !== cadence.to)
  if (!moves && block.effort.from === block.effort.to) return played
  const level = { effort: { from: block.effort.to, to: block.effort.to }, posture: block.posture }
  return { cadence: moves ? steadyCadence(cadence.pieces?.at(-1)?.rpm ?? cadence.to) : cadence, block: level }
}
