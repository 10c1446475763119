import type { RuleName } from '#engine/findings/ruleNames.ts'
import type { Cut } from '#engine/leading/leadLog.ts'
import { classOf, heldSeconds, type LedClass } from '#engine/leading/ledClass.ts'
import type { RideReport } from '#engine/report.ts'
import type { Seconds } from '#units/units.ts'
import type { Text } from '#words/said.ts'
import { type Candidate, cutCandidates, withoutAll } from './cutCandidates.ts'
import { sayProposal } from './sayProposal.ts'

/** One way to end inside the slot. */
export interface Proposal {
  cuts: readonly Cut[]
  /** What it saves, and what is then left of the slot; never negative. */
  seconds: Seconds
  spare: Seconds
  /** In a sentence, with the call that is worded anew. */
  text: Text
  cost: number
}

/** Cuts taken together at most: more is more than can be led (common practice). */
const MOST_TOGETHER = 3
/** Of the cheapest combinations, how many are computed in full. */
const WEIGHED = 8
/** What it costs to lead one cut more, to save a minute more than needed, and each new warning. */
const ONE_MORE = 0.5
const MINUTE_OVER = 0.5
const WARNING = 0.3

/**
 * What to leave out so that the class ends inside its slot, the best first; empty when it does, or
 * when nothing that may go is long enough. Every proposal has been computed as a whole ride, feet
 * and ledger included: none puts riders under base, adds to a missing recovery, or breaks a rule
 * that speaks of a problem. Cost: one computation of the ride for each of the eight cheapest ways.
 * Goes in steps of one computation each, so that a page can draw in between.
 */
export function* weighCuts(led: LedClass, at: Seconds, most = 3): Generator<undefined, Proposal[]> {
  const need = needOf(led, at)
  if (need <= 0) return []
  const found: Proposal[] = []
  for (const way of cheapestWays(cutCandidates(led, at), need)) {
    const proposal = judged(led, at, way, need)
    if (proposal) found.push(proposal)
    yield
  }
  return unlike(found.sort((a, b) => a.cost - b.cost)).slice(0, most)
}

/** Without those that touch the same songs as a better one: another phrase of the same song is no other choice. */
function unlike(proposals: readonly Proposal[]): Proposal[] {
  const songs = ({ cuts }: Proposal) =>
    cuts
      .map(({ section }) => section)
      .sort((a, b) => a - b)
      .join()
  return proposals.filter((one, i) => proposals.findIndex((other) => songs(other) === songs(one)) === i)
}

/** Seconds by which the class as it comes would end after its slot. */
export function needOf(led: LedClass, at: Seconds): Seconds {
  return led.report.overall.total + heldSeconds(led, at) + led.late - led.ride.slotMinutes * 60
}

interface Way {
  parts: Candidate[]
  cost: number
}

/**
 * The cheapest ways to save enough, by the sum of what each part costs. A search with a bound: a
 * start that costs more than the last way kept, or cannot reach the need any more, is left.
 */
function cheapestWays(candidates: readonly Candidate[], need: Seconds): Candidate[][] {
  const cheap = candidates.toSorted((a, b) => a.cost - b.cost)
  const longest = Math.max(0, ...cheap.map(({ seconds }) => seconds))
  const ways: Way[] = []
  const keep = (way: Way) => {
    ways.push(way)
    ways.sort((a, b) => a.cost - b.cost)
    ways.length = Math.min(ways.length, WEIGHED)
  }
  const grow = (parts: Candidate[], seconds: Seconds, from: number, size: number): void => {
    for (let i = from; i < cheap.length; i++) {
      const part = cheap[i]!
      const next = seconds + part.seconds
      const cost = costOf([...parts, part], Math.max(0, next - need))
      if (ways.length === WEIGHED && costOf([...parts, part], 0) >= ways.at(-1)!.cost) return
      if (parts.some(({ cut }) => cut.section === part.cut.section)) continue
      const left = size - parts.length - 1
      if (left === 0) {
        if (next >= need && isLean([...parts, part], next - need)) keep({ parts: [...parts, part], cost })
      } else if (next < need && next + left * longest >= need) grow([...parts, part], next, i + 1, size)
    }
  }
  for (let size = 1; size <= MOST_TOGETHER; size++) grow([], 0, 0, size)
  return ways.map(({ parts }) => parts)
}

/** Nothing is cut that need not be. */
const isLean = (parts: readonly Candidate[], over: Seconds): boolean => parts.every(({ seconds }) => seconds > over)

const costOf = (parts: readonly Candidate[], over: Seconds): number =>
  parts.reduce((sum, { cost }) => sum + cost, 0) + ONE_MORE * (parts.length - 1) + (MINUTE_OVER * over) / 60

/** Rules whose findings no cut may add to, whatever their severity. */
const UNTOUCHED: readonly RuleName[] = ['underBase', 'allOff', 'warmUp', 'coolDown', 'beyondOut']

function judged(led: LedClass, at: Seconds, parts: readonly Candidate[], need: Seconds): Proposal | null {
  const cuts = parts.map(({ cut }) => cut)
  const cut = classOf(led.plan, withoutAll(led.led, cuts), led.late)
  const seconds = led.report.overall.total - cut.report.overall.total
  if (seconds < need) return null
  if (cut.report.recovery.totalDebt > led.report.recovery.totalDebt + 0.5) return null
  const grown = grownRules(led.report, cut.report)
  if (grown.some(({ rule, severity }) => severity === 'problem' || UNTOUCHED.includes(rule))) return null
  const warnings = grown.filter(({ severity }) => severity === 'warning').length
  const balance = Math.max(0, (cut.report.balance.imbalance ?? 0) - (led.report.balance.imbalance ?? 0))
  const spare = -needOf(led, at) + seconds
  return {
    cuts,
    seconds,
    spare,
    text: sayProposal(led, cut, cuts, seconds, spare),
    cost: costOf(parts, seconds - need) + WARNING * warnings + balance,
  }
}

/** Rules with more findings than before, once each. */
function grownRules(before: RideReport, after: RideReport): { rule: RuleName; severity: string }[] {
  const counts = new Map<string, number>()
  for (const { rule, severity } of before.findings) counts.set(`${rule} ${severity}`, (counts.get(`${rule} ${severity}`) ?? 0) + 1)
  const seen = new Map<string, { rule: RuleName; severity: string; times: number }>()
  for (const { rule, severity } of after.findings) {
    const key = `${rule} ${severity}`
    seen.set(key, { rule, severity, times: (seen.get(key)?.times ?? 0) + 1 })
  }
  return [...seen].filter(([key, { times }]) => times > (counts.get(key) ?? 0)).map(([, one]) => one)
}
