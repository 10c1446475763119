import { computeRide } from '#engine/computeRide.ts'
import { constantsOf } from '#engine/constants.ts'
import type { Ride } from '#plan/model.ts'
import type { Seconds } from '#units/units.ts'
import { say, type Text } from '#words/said.ts'
import { endsOf, sectionShapes } from './shapeOf.ts'

/** What a class in another length is held against. */
interface Judge {
  /** The least warm-up and cool-down: what is usual for its length, or as much less as its parent has. */
  least: { warmUp: Seconds; coolDown: Seconds }
  /** What speaks against a variant, in one sentence; null where nothing does. */
  against: (variant: Ride) => Text | null
}

/** As the finding about them has it. */
const NEAR: Seconds = 0.5

/** The judge of the variants of a class: ends long enough, and no problem that the class itself has not. */
export function judgeOf(parent: Ride, minutes: number): Judge {
  const rules = constantsOf(parent)
  const was = endsOf(sectionShapes(parent))
  const usual = (share: number, fullMinutes: number, slotMinutes: number): Seconds =>
    Math.max((share / 100) * ridingOf(parent, slotMinutes), slotMinutes >= rules.fullClassMinutes ? fullMinutes * 60 : 0)
  const leastOf = (share: number, fullMinutes: number, had: Seconds): Seconds => {
    const needed = usual(share, fullMinutes, parent.slotMinutes)
    return usual(share, fullMinutes, minutes) * (had < needed - NEAR ? had / needed : 1)
  }
  const least = {
    warmUp: leastOf(rules.warmUpShare, rules.warmUpMinutes, was.warmUp),
    coolDown: leastOf(rules.coolDownShare, rules.coolDownMinutes, was.coolDown),
  }
  const known = new Set(computeRide(parent).findings.flatMap(({ rule, severity }) => (severity === 'problem' ? [rule] : [])))
  const against = (variant: Ride): Text | null => {
    const { findings, measures } = computeRide(variant)
    const problem = findings.find(({ rule, severity }) => severity === 'problem' && !known.has(rule))
    if (problem) return say('fit.variantProblem', { problem: problem.text })
    if (measures.warmUp !== null && measures.warmUp < least.warmUp - NEAR) return tooShort('warmUp', measures.warmUp, least.warmUp, minutes)
    if (measures.coolDown < least.coolDown - NEAR) return tooShort('coolDown', measures.coolDown, least.coolDown, minutes)
    return null
  }
  return { least, against }
}

const ridingOf = ({ briefingSeconds, clearUpSeconds }: Ride, minutes: number): Seconds =>
  Math.max(1, minutes * 60 - briefingSeconds - clearUpSeconds)

const tooShort = (end: 'warmUp' | 'coolDown', has: Seconds, needs: Seconds, minutes: number): Text =>
  say('fit.endTooShort', { end, minutes, has, needs })
