import type { Led, Plan } from '#engine/leading/led.ts'
import type { LedTimes } from '#engine/leading/ledTimes.ts'
import type { Seconds } from '#units/units.ts'
import type { Text } from '#words/said.ts'

/** What an act works on: the class as it stands at a time on its clock. */
export interface Standing {
  plan: Plan
  led: Led
  times: readonly LedTimes[]
  at: Seconds
}

/** The class after an act, and what the act did, in words for the one who leads. */
export interface Acted {
  led: Led
  said: Text
}

/** Nothing changed, and why. */
export const nothing = ({ led }: Standing, said: Text): Acted => ({ led, said })
