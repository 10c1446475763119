import type { PlayedCadence } from '#engine/played.ts'
import type { Laid } from '#engine/timeline/laySection.ts'
import type { Section } from '#plan/model.ts'
import { beatCadence } from './beatCadence.ts'
import { steadyCadence } from './steadyCadence.ts'

/** The cadence a block is ridden at: what it states, else what the beat gives. Off the bike nothing turns, whatever is stated. */
export function playCadence(laid: Laid, section: Section): PlayedCadence {
  const { cadence, posture } = laid.block
  if (cadence === 'legsStill' || posture === 'offBike') return { kind: 'still' }
  if (cadence) return steadyCadence(cadence.rpm, cadence.rampTo)
  return beatCadence(laid, section) ?? { kind: 'unknown' }
}
