import { type Constants, constantsOf } from '#engine/constants.ts'
import { isLocked, type Role, rolesOf, sectionShapes } from '#engine/fit/shapeOf.ts'
import { lastPasses, without } from '#engine/leading/acts/takeCuts.ts'
import { startOf } from '#engine/leading/items.ts'
import type { Cut } from '#engine/leading/leadLog.ts'
import { type Led, type LedItem, type LedSection, type Measure, type Plan, sectionOf } from '#engine/leading/led.ts'
import type { LedClass } from '#engine/leading/ledClass.ts'
import { ledTimes, measureClock } from '#engine/leading/ledTimes.ts'
import { countingUnit } from '#engine/timeline/countingUnit.ts'
import type { Effort, Seconds } from '#units/units.ts'
import { songCost } from './songCost.ts'

/** One thing the class could do without, what that saves and what it costs; costs only compare. */
export interface Candidate {
  cut: Cut
  seconds: Seconds
  cost: number
}

/** A trim costs little, one of a recovery more; much less than leaving out a song (common practice). */
const TRIM = 0.35
const RECOVERY_TRIM = 0.7
/** Phrases a song may end early by, and the share of it that is left at least (common practice). */
const MOST_PHRASES = 2
const LEAST_SHARE = 0.5
/** Rounds of a set that may go, while one stays. */
const MOST_ROUNDS = 2

interface Trimming {
  plan: Plan
  section: LedSection
  rules: Constants
  /** From here on nothing has begun. */
  from: Measure
}

/**
 * Everything still to come that may go: whole songs with their gap, last rounds of a set, a phrase
 * of a block that goes on for two or more, the end of a song. Warm-up, cool-down and finish stay,
 * and so does what is locked; every song still ends on a phrase. Cost: linear in what is to come.
 */
export function cutCandidates({ plan, led, ride }: LedClass, now: Seconds): Candidate[] {
  // While something is held, nothing after it has begun.
  const at = led.hold?.at ?? now
  const rules = constantsOf(plan.ride)
  const roles = rolesOf(sectionShapes(plan.ride), rules.warmUpEffort, rules.coolDownEffort)
  const times = ledTimes(plan, led)
  const shapes = sectionShapes(ride)
  const total = times.at(-1)?.end ?? 0
  const saved = (cut: Cut): Seconds => total - (ledTimes(plan, without(led, cut)).at(-1)?.end ?? 0)
  return led.sections.flatMap((section, i): Candidate[] => {
    if (times[i]!.to <= at || staysWhole(plan, section, roles)) return []
    const place = measureClock(plan, section, times[i]!.one).placeAt(at)
    const trims = trimsOf({ plan, section, rules, from: Math.max(0, place) })
    const song: Cut = { kind: 'song', section: section.planned }
    const whole = times[i]!.from > at ? [{ cut: song, cost: songCost({ plan, led, shapes, rules }, i) }] : []
    return [...whole, ...trims].map((found) => ({ ...found, seconds: saved(found.cut) })).filter(({ seconds }) => seconds > 0)
  })
}

function staysWhole(plan: Plan, section: LedSection, roles: readonly Role[]): boolean {
  return roles[section.planned] !== 'middle' || isLocked(sectionOf(plan, section))
}

type Trim = Omit<Candidate, 'seconds'>

function trimsOf(trimming: Trimming): Trim[] {
  if (!trimming.section.counted) return []
  return [...roundTrims(trimming), ...phraseTrims(trimming), ...outroTrims(trimming)]
}

function roundTrims(trimming: Trimming): Trim[] {
  const { section } = trimming
  const setIds = new Set(section.items.flatMap(({ pass }) => (pass ? [pass.setId] : [])))
  return [...setIds].flatMap((setId) => {
    const passes = new Set(section.items.flatMap(({ pass }) => (pass?.setId === setId ? [pass.number] : []))).size
    return count(Math.min(MOST_ROUNDS, passes - 1)).flatMap((rounds): Trim[] => {
      const gone = lastPasses(section.items, setId, rounds)
      const counts = [...gone].reduce((sum, { length }) => sum + length, 0)
      if (![...gone].every((item) => isToCome(trimming, item)) || !endsOnPhrase(trimming, section.end - counts)) return []
      return [{ cut: { kind: 'rounds', section: section.planned, setId, rounds }, cost: TRIM * rounds }]
    })
  })
}

function phraseTrims(trimming: Trimming): Trim[] {
  const { section, plan, rules } = trimming
  const phrase = phraseOf(trimming)
  if (!endsOnPhrase(trimming, section.end - phrase)) return []
  return section.items.flatMap((item): Trim[] => {
    const { block } = plan.report.blocks[item.planned]!
    const least = Math.max(phrase, (block.minEights ?? 0) * section.eight)
    const gives = item.pass === undefined && !block.allOut && peakOf(plan, item) < rules.hardEffort && item.length - phrase >= least
    if (!gives || !isToCome(trimming, item)) return []
    const cut: Cut = { kind: 'phrase', section: section.planned, block: item.planned, counts: phrase }
    return [{ cut, cost: peakOf(plan, item) <= rules.recoveryEffort ? RECOVERY_TRIM : TRIM }]
  })
}

/** Phrase ends before the end, as long as what goes is easy and has not begun. */
function outroTrims(trimming: Trimming): Trim[] {
  const { section, plan, rules, from } = trimming
  const phrase = phraseOf(trimming)
  const offset = offsetOf(trimming)
  const last = Math.ceil((section.end + offset) / phrase - 1e-6) * phrase - offset
  return count(MOST_PHRASES).flatMap((phrases): Trim[] => {
    const end = last - phrases * phrase
    if (end < section.end * LEAST_SHARE || end <= from) return []
    const goes = section.items.filter((item) => startOf(section.items, section.items.indexOf(item)) + item.length > end)
    if (goes.some((item) => peakOf(plan, item) >= rules.workEffort || plan.report.blocks[item.planned]!.block.allOut)) return []
    return [{ cut: { kind: 'outro', section: section.planned, counts: section.end - end }, cost: TRIM * phrases }]
  })
}

const count = (most: number): number[] => Array.from({ length: Math.max(0, most) }, (_, i) => i + 1)

const isToCome = ({ section, from }: Trimming, item: LedItem): boolean => startOf(section.items, section.items.indexOf(item)) > from

const peakOf = ({ report }: Plan, { planned }: LedItem): Effort => {
  const { effort } = report.blocks[planned]!.block
  return Math.max(effort.from, effort.to)
}

const phraseOf = ({ plan, section }: Trimming): Measure => countingUnit(sectionOf(plan, section)).phrase

/** Phrases count from the song's first beat where the section starts on an eight of it. */
function offsetOf({ plan, section }: Trimming): Measure {
  const { inCount = 0 } = sectionOf(plan, section)
  return inCount % section.eight === 0 ? inCount : 0
}

function endsOnPhrase(trimming: Trimming, end: Measure): boolean {
  const phrases = (end + offsetOf(trimming)) / phraseOf(trimming)
  return end >= trimming.section.end * LEAST_SHARE && Math.abs(phrases - Math.round(phrases)) < 1e-6
}

/** The class without some things. */
export const withoutAll = (led: Led, cuts: readonly Cut[]): Led => cuts.reduce(without, led)
