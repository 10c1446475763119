import type { Constants } from '#engine/constants.ts'
import type { BalanceReport } from '#engine/report.ts'
import { beatsIn } from '#engine/timeline/beatsIn.ts'
import type { Placed } from '#engine/timeline/layTimeline.ts'
import type { Foot, Ride, Section } from '#plan/model.ts'
import { secondAt } from '#plan/songs/beatGrid.ts'
import type { Counts, Seconds } from '#units/units.ts'
import { accentPeriod } from './moves.ts'
import { type Footing, footAfter, otherFoot } from './trackFeet.ts'

export interface Sides {
  right: number
  left: number
}

/**
 * One-sided accents of a ride by the foot on their first beat, and seconds held on either
 * side. Of a move that alternates the side it starts on takes the odd one.
 */
export function balanceSides(
  { sections }: Pick<Ride, 'sections'>,
  blocks: readonly Placed[],
  footings: readonly Footing[],
  rules: Constants,
): BalanceReport {
  const accents = { right: 0, left: 0 }
  const holds = { right: 0, left: 0 }
  for (const [index, played] of blocks.entries()) {
    if (played.rideTo <= played.rideFrom || !played.block.move) continue
    const section = sections[played.section]!
    const sides = accentsOf(played, section, footings[index]!)
    accents.right += sides.right
    accents.left += sides.left
    const held = holdsOf(played, section)
    holds.right += held.right
    holds.left += held.left
  }
  return { ...accents, imbalance: imbalanceOf(accents, rules.balanceSilentBelow), holdSeconds: holds }
}

/** |R − L| ÷ (R + L); null below the number of accents that says anything. */
export function imbalanceOf({ right, left }: Sides, silentBelow: number): number | null {
  return right + left < Math.max(1, silentBelow) ? null : Math.abs(right - left) / (right + left)
}

/** Accents of one played block, by foot. */
export function accentsOf(played: Placed, section: Section, footing: Footing): Sides {
  const { move } = played.block
  const none = { right: 0, left: 0 }
  if (move?.then === 'alternate') return alternating(played)
  if (!move || footing.foot === null || footing.strikesPerBeat === null) return none
  const times = accentPeriod(move.name)
  if (times === undefined || !(move.counts > 0) || played.countFrom === undefined || played.countTo === undefined) return none
  const period = move.counts * times
  const count = Math.floor((played.countTo - played.countFrom) / period + 1e-9)
  if (section.song?.grid?.odd) return oneByOne(played, section, footing.foot, footing.strikesPerBeat, { count, period })
  return spreadAccents(footing.foot, count, period * footing.strikesPerBeat)
}

/** Where a song has beats over or missing accents are not evenly apart, so that each is counted out. */
function oneByOne(
  { countFrom = 0 }: Placed,
  section: Section,
  foot: Foot,
  strikesPerBeat: number,
  { count, period }: { count: number; period: Counts },
): Sides {
  const sides = { right: 0, left: 0 }
  for (let i = 0; i < count; i++) {
    const lands = footAfter(foot, beatsIn(section, countFrom, countFrom + i * period) * strikesPerBeat)
    if (lands) sides[lands]++
  }
  return sides
}

/** Accents of a move that goes from side to side, the first on the side it names. */
function alternating({ block: { move }, countFrom, countTo }: Placed): Sides {
  const times = move && accentPeriod(move.name)
  if (!move?.side || times === undefined || countFrom === undefined || countTo === undefined) return { right: 0, left: 0 }
  const count = Math.floor((countTo - countFrom) / (move.counts * times) + 1e-9)
  const first = Math.ceil(count / 2)
  return move.side === 'right' ? { right: first, left: count - first } : { right: count - first, left: first }
}

/**
 * `count` accents, the first on `foot`, `strikes` strikes apart: all on one foot where they
 * are even, turn about where odd; half a strike apart only every second one meets a foot.
 */
function spreadAccents(foot: Foot, count: number, strikes: number): Sides {
  const sides = { right: 0, left: 0 }
  // The pattern repeats after four accents at the latest (strikes come in halves).
  for (let i = 0; i < 4; i++) {
    const lands = footAfter(foot, strikes * i)
    if (lands) sides[lands] += Math.floor((count + 3 - i) / 4)
  }
  return sides
}

/** Seconds a hold spends on each side: a move that names its side and is no accent. */
export function holdsOf({ block, rideFrom, rideTo, countFrom, countTo }: Placed, section: Section): Sides {
  const { move } = block
  const sides = { right: 0, left: 0 }
  if (!move?.side || accentPeriod(move.name) !== undefined) return sides
  const seconds = rideTo - rideFrom
  const share = move.then === 'alternate' ? shareOfFirst(section, countFrom, countTo, move.counts) : 1
  sides[move.side] = seconds * share
  sides[otherFoot(move.side)] = seconds * (1 - share)
  return sides
}

/** Share of the time of an alternating move that falls to its first side; half where it is not counted. */
function shareOfFirst(section: Section, from: Counts | undefined, to: Counts | undefined, turn: Counts): number {
  if (from === undefined || to === undefined) return 0.5
  const { song, inCount = 0 } = section
  const grid = song?.grid
  if (grid && (grid.odd || grid.anchors.length > 2)) return shareByClock((count) => secondAt(grid, inCount + count), from, to, turn)
  const counts = to - from
  const pairs = Math.floor(counts / (2 * turn))
  return (pairs * turn + Math.min(turn, counts - pairs * 2 * turn)) / counts
}

/** The same where counts are not all as long. */
function shareByClock(at: (count: Counts) => Seconds, from: Counts, to: Counts, turn: Counts): number {
  let first: Seconds = 0
  for (let start = from; start < to; start += 2 * turn) first += at(Math.min(to, start + turn)) - at(start)
  return to > from ? first / (at(to) - at(from)) : 0.5
}
