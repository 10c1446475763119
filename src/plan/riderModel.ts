import type { Seconds, Setting, Watts } from '#units/units.ts'

/** A modelled participant. */
export interface Rider {
  readonly id: string
  readonly name: string
  readonly massKg: number
  readonly age: number
  /** mL/kg/min */
  readonly vo2max: number
  readonly criticalPower: Watts
  /** Work capacity above critical power, joules. */
  readonly wPrime: number
  readonly restingHr: number
  readonly maxHr?: number
  /** Heart rates at the first and second threshold, as a test found them. */
  readonly firstThresholdHr?: number
  readonly secondThresholdHr?: number
  /** Whether critical power and W′ are taken to be so or come from a test; absent, they are assumed. */
  readonly basis?: 'assumed' | 'tested'
  /** All-out trials to exhaustion that critical power can be found from. */
  readonly trials?: readonly Trial[]
  readonly threeMinuteTest?: ThreeMinuteTest
  /** This rider's base above or below the bike's, in the bike's unit. */
  readonly baseOffset: Setting
}

/** One all-out trial: how long it was held, and the mean power. */
export interface Trial {
  readonly seconds: Seconds
  readonly watts: Watts
}

/** Three minutes all out against one resistance. */
export interface ThreeMinuteTest {
  /** What the mean power is of: all of it, or all but the last thirty seconds. */
  readonly over: 180 | 150
  readonly watts: Watts
  /** Mean power of the last thirty seconds. */
  readonly endWatts: Watts
  /** Second at which power was highest, where it was noted. */
  readonly peakSecond?: Seconds
}
