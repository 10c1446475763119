import type { Seconds, Setting, Watts } from '#units/units.ts'

/** A modelled participant. */
export interface Rider {
  id: string
  name: string
  massKg: number
  age: number
  /** mL/kg/min */
  vo2max: number
  criticalPower: Watts
  /** Work capacity above critical power, joules. */
  wPrime: number
  restingHr: number
  maxHr?: number
  /** Heart rates at the first and second threshold, as a test found them. */
  firstThresholdHr?: number
  secondThresholdHr?: number
  /** Whether critical power and W′ are taken to be so or come from a test; absent, they are assumed. */
  basis?: 'assumed' | 'tested'
  /** All-out trials to exhaustion that critical power can be found from. */
  trials?: Trial[]
  threeMinuteTest?: ThreeMinuteTest
  /** This rider's base above or below the bike's, in the bike's unit. */
  baseOffset: Setting
}

/** One all-out trial: how long it was held, and the mean power. */
export interface Trial {
  seconds: Seconds
  watts: Watts
}

/** Three minutes all out against one resistance. */
export interface ThreeMinuteTest {
  /** What the mean power is of: all of it, or all but the last thirty seconds. */
  over: 180 | 150
  watts: Watts
  /** Mean power of the last thirty seconds. */
  endWatts: Watts
  /** Second at which power was highest, where it was noted. */
  peakSecond?: Seconds
}
