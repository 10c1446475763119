import type { Cadence, Hands, Move, Posture, Terrain } from '#plan/model.ts'
import type { Effort, KnobSteps, Seconds } from '#units/units.ts'
import type { Text } from '#words/said.ts'

export type PatternId =
  | 'flat'
  | 'standing-flat'
  | 'seated-hill'
  | 'standing-hill'
  | 'hover'
  | 'hold'
  | 'jumps-16'
  | 'jumps-8'
  | 'jumps-4'
  | 'push'
  | 'run'
  | 'leans'
  | 'presses'
  | 'corners'
  | 'travel-backs'
  | 'tempo'
  | 'surge'
  | 'standing-surge'
  | 'recover'
  | 'flush'
  | 'stretch'

/** A kind of block to start from. Its values are common practice for a mixed class and meant to be changed. */
export interface BlockPattern {
  id: PatternId
  /** As the page has it; the block it makes is labelled in the language of the ride. */
  name: Text
  terrain: Terrain
  posture: Posture
  hands: Hands
  effort: { from: Effort; to: Effort }
  /** Total over base in steps of the default bike (quarter turns). */
  total: { from: KnobSteps; to: KnobSteps }
  /** Length under a song with beats. */
  eights: number
  /** Length by the clock. */
  seconds: Seconds
  /** Stated where no beat gives it. */
  cadence: Cadence
  /** Rides off the beat even under a song. */
  offBeat?: boolean
  move?: Move
}
