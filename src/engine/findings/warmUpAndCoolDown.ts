import { type EffortLine, effortLines, partFrom, secondsUpTo } from '#engine/recovery/effortLines.ts'
import type { Finding, Fix } from '#engine/report.ts'
import { EIGHT, type Seconds } from '#units/units.ts'
import { say } from '#words/said.ts'
import type { Facts } from './facts.ts'
import { ofRide } from './finding.ts'
import { lengthFix } from './fixes/lengthFix.ts'
import { hasNoEnd } from './hasNoEnd.ts'

const WHY = say('sources.warmUp')

const MISSING = { warmUp: 'checksRide.noWarmUp', coolDown: 'checksRide.noCoolDown' } as const
const SHORT = { warmUp: 'checksRide.shortWarmUp', coolDown: 'checksRide.shortCoolDown' } as const

/** The time before the first working effort and the easy time at the end, against their share of the class and their minutes. */
export function warmUpAndCoolDown(facts: Facts): Finding[] {
  const { rules, timeline, ride, measures } = facts
  const { warmUp, coolDown, riding } = measures
  const lines = effortLines(timeline.blocks)
  if (lines.length === 0) return []
  const start = ride.briefingSeconds
  const end = timeline.sections.at(-1)!.to
  const full = ride.slotMinutes >= rules.fullClassMinutes
  const found: Finding[] = []
  const hard = lines.find((line) => partFrom(line, rules.warmUpEffort))
  if (hard && warmUp !== null) {
    const need = Math.max((rules.warmUpShare / 100) * riding, full ? rules.warmUpMinutes * 60 : 0)
    const before = lines[lines.indexOf(hard) - 1]
    const fixes = [extendByClock(facts, before, need - warmUp, { easy: 1, need: rules.warmUpShare / 100 })]
    if (warmUp < need - 0.5) found.push(tooShort('warmUp', warmUp, need, start, fixes))
  }
  if (hasNoEnd(facts)) return found
  const need = Math.max((rules.coolDownShare / 100) * riding, full ? rules.coolDownMinutes * 60 : 0)
  const last = lines.at(-1)!
  // Of a ramp only the easy end counts, and stretching it stretches that end in proportion.
  const growth = { easy: secondsUpTo(last, rules.coolDownEffort) / (last.to - last.from), need: rules.coolDownShare / 100 }
  const fixes = [coolDown > 0 ? extendByClock(facts, last, need - coolDown, growth) : undefined]
  if (coolDown < need - 0.5) found.push(tooShort('coolDown', coolDown, need, end, fixes))
  return found
}

function tooShort(rule: 'warmUp' | 'coolDown', have: Seconds, need: Seconds, at: Seconds, fixes: (Fix | undefined)[]): Finding {
  const text = have < 0.5 ? say(MISSING[rule], { need }) : say(SHORT[rule], { have, need })
  return ofRide({ rule, severity: 'warning', text, why: WHY, amount: need - have, fixes }, at)
}

/**
 * A block without a song can simply be longer; under one it would run past the music. With every second added, what counts
 * as easy grows by one share of it and what is needed of the longer class by another; a block that is mostly hard is left.
 */
function extendByClock({ blocks, ride }: Facts, line: EffortLine | undefined, missing: Seconds, growth: { easy: number; need: number }) {
  const played = line && blocks[line.block]!
  if (!played || played.set || growth.easy < 0.5 || ride.sections[played.section]!.song) return undefined
  return lengthFix(played.block, Math.ceil(missing / (growth.easy - growth.need)), EIGHT)
}
