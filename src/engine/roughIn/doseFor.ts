import { computeRide } from '#engine/computeRide.ts'
import type { Level, Ride } from '#plan/model.ts'
import type { SongDraft } from './draftSongs.ts'
import { LEVEL_RANGES } from './levels.ts'
import { settle } from './settle.ts'

interface Made {
  drafts: SongDraft[]
  filled: Ride
}

/** How far a draft may go, of what its level takes. */
const DOSES = [0.5, 0.25, 0.75, 0, 1] as const

/**
 * The draft whose difficulty comes nearest to what its level looks for: made at several doses, the one that promises most
 * settled by the engine's own repairs; where that leaves the level's band the next one, if it promised to lie inside.
 */
export function doseFor(level: Level, make: (dose: number) => Made): { proposal: Ride; drafts: SongDraft[] } {
  const { aim } = LEVEL_RANGES[level]
  const rated = (ride: Ride) => {
    const { points, level: levels } = computeRide(ride).difficulty
    return { off: Math.abs(points - aim), inside: levels[level] === 'inside' }
  }
  const made = DOSES.map((dose) => make(dose)).map((each) => ({ ...each, ...rated(each.filled) }))
  const [best, next] = made.toSorted((a, b) => a.off - b.off)
  const settled = ({ drafts, filled }: Made) => settle(filled, new Set(drafts.map(({ stretch }) => stretch.section.id)))
  const first = { proposal: settled(best!), drafts: best!.drafts }
  if (rated(first.proposal).inside || !next?.inside) return first
  return { proposal: settled(next), drafts: next.drafts }
}
