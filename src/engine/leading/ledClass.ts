import { onAnotherBike } from '#engine/anotherBike/onAnotherBike.ts'
import { spokenOnBike } from '#engine/anotherBike/spokenOnBike.ts'
import { computeRide } from '#engine/computeRide.ts'
import type { RideReport } from '#engine/report.ts'
import type { Ride } from '#plan/model.ts'
import type { Seconds } from '#units/units.ts'
import type { Text } from '#words/said.ts'
import { putOff } from './acts/hold.ts'
import { asPlaying } from './items.ts'
import { type LeadLog, lateBy } from './leadLog.ts'
import type { Led, LedSection, Plan } from './led.ts'
import { ledRide } from './ledRide.ts'
import { ledTimes } from './ledTimes.ts'
import { playLog } from './playLog.ts'
import { wordsAnew } from './wordsAnew.ts'

/** A class while it is led, from its last act on until the next. */
export interface LedClass {
  plan: Plan
  /** The class as it comes, as a ride; its clock is the class clock. */
  ride: Ride
  report: RideReport
  led: Led
  /** By block of the report: the block of the plan it is, and which round of how many. */
  blocks: { planned: number; round?: Round }[]
  /** Seconds the class began late. */
  late: Seconds
  /** What the last act did. */
  said: Text
}

export interface Round {
  round: number
  of: number
}

/**
 * The class after everything that had happened by a time on its clock. One computation of the
 * ride as it now comes, two where cues are said otherwise; none where it comes as planned.
 */
export function ledClass(plan: Plan, log: LeadLog, until?: Seconds): LedClass {
  const { led, said } = playLog(plan, log, until)
  return classOf(plan, led, lateBy(log), said)
}

/** The same from what is led. */
export function classOf(plan: Plan, led: Led, late: Seconds, said: Text = ''): LedClass {
  const playing = { ...led, sections: led.sections.map(asPlaying) }
  const blocks = playing.sections.flatMap(roundsOf)
  return { plan, ...asItComes(plan, playing, blocks), led: playing, blocks, late, said }
}

/** The class as a ride and its report: computed a second time where words had to be put right, since they then take another time to say. */
function asItComes(plan: Plan, led: Led, blocks: LedClass['blocks']): Pick<LedClass, 'ride' | 'report'> {
  const ride = ledRide(plan, led)
  if (ride === plan.ride) return { ride, report: plan.report.shownOn ? spokenOnBike(plan.report, ride) : plan.report }
  const report = computeRide(ride)
  const words = wordsAnew(plan, report.cues, blocks)
  if (words.size === 0) return { ride, report: readAs(plan, ride, report) }
  const anew = ledRide(plan, led, words)
  return { ride: anew, report: readAs(plan, anew, computeRide(anew)) }
}

/** The report in the words of the bike the plan is read on. */
const readAs = ({ report: { shownOn } }: Plan, ride: Ride, report: RideReport): RideReport =>
  shownOn ? spokenOnBike(onAnotherBike(ride, report, shownOn.bike), ride) : report

/** Seconds by which the end of the class stands off at a time, for a hold that goes on. */
export const heldSeconds = ({ plan, led }: LedClass, at: Seconds): Seconds =>
  led.hold ? putOff({ led, times: ledTimes(plan, led), at }) : 0

/** Rounds counted as they come. */
function roundsOf({ items }: LedSection): LedClass['blocks'] {
  const passes = new Map<string, number[]>()
  for (const { pass } of items) {
    if (!pass) continue
    const known = passes.get(pass.setId) ?? []
    if (!known.includes(pass.number)) passes.set(pass.setId, [...known, pass.number])
  }
  return items.map(({ planned, pass }) => {
    const known = pass && passes.get(pass.setId)!
    if (!known || known.length < 2) return { planned }
    return { planned, round: { round: known.indexOf(pass.number) + 1, of: known.length } }
  })
}
