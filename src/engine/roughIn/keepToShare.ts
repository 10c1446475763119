import type { Constants } from '#engine/constants.ts'
import { mostWork } from '#engine/shape/mostWork.ts'
import type { Level } from '#plan/model.ts'
import type { Seconds } from '#units/units.ts'
import { type Chunk, isRounds, keptUnder, type Planned, peakOf } from './chunks.ts'

/** A song's plan, and what it weighs. */
export interface Draft {
  planned: Planned[]
  intensity: number
  eightSeconds: Seconds
}

/** Less than the level takes, as other songs of the ride and rounding want some of it. */
const SHARE_USED = 0.95

/**
 * The drafts with no more work than the level takes: the easiest songs give theirs up first,
 * down to half a point under what counts as work.
 *
 * @param seconds of riding in the whole class
 * @param spent of them at work already, in songs that are not drafted
 */
export function keepToShare<T extends Draft>(drafts: readonly T[], seconds: Seconds, spent: Seconds, level: Level, rules: Constants): T[] {
  const most = (SHARE_USED * seconds * mostWork(level, rules)) / 100
  const under = rules.workEffort - 0.5
  const result = [...drafts]
  let work = spent + result.reduce((sum, draft) => sum + workOf(draft, rules), 0)
  const easiestFirst = result.map((_, index) => index).sort((a, b) => result[a]!.intensity - result[b]!.intensity || a - b)
  for (const index of easiestFirst) {
    if (work <= most) break
    const draft = result[index]!
    const before = workOf(draft, rules)
    if (before === 0) continue
    result[index] = { ...draft, planned: keptUnder(draft.planned, under) }
    work -= before
  }
  return result
}

function workOf({ planned, eightSeconds }: Draft, { workEffort }: Constants): Seconds {
  const own = (chunk: Chunk) => (peakOf(chunk) >= workEffort ? chunk.eights * eightSeconds : 0)
  return planned.reduce(
    (sum, one) => sum + (isRounds(one) ? one.rounds * one.parts.reduce((all, part) => all + own(part), 0) : own(one)),
    0,
  )
}
