import type { PlayedBlock } from '#engine/played.ts'
import type { Rpm } from '#units/units.ts'

/**
 * The cadence at which a block's settings of one bike are read on another: its mean.
 *
 * @param quietRpm where nothing turns or is known, the pace the ride's bike was measured at
 */
export function paceOf({ cadence }: Pick<PlayedBlock, 'cadence'>, quietRpm: Rpm): Rpm {
  const rpm = cadence.kind === 'turning' ? cadence.mean : 0
  return rpm > 0 ? rpm : quietRpm
}
