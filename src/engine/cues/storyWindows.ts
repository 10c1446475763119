import type { PlayedBlock, SectionReport } from '#engine/played.ts'
import { momentAt, type StrainCurve } from '#engine/shape/strainCurve.ts'
import type { Ride } from '#plan/model.ts'
import type { Seconds, Stretch } from '#units/units.ts'
import { sectionClock } from './sectionClock.ts'

/** Strain up to which riders can listen to more than the next call, and the least room a story takes (common practice). */
const LISTENING = 5
export const LEAST_ROOM: Seconds = 20

/**
 * Stretches with room for more than calls: low strain throughout, nothing spoken or counted,
 * no music asked to be left alone, inside the blocks of the ride.
 */
export function storyWindows(
  spoken: readonly Stretch[],
  quiet: readonly Stretch[],
  strain: StrainCurve,
  blocks: readonly PlayedBlock[],
): Stretch[] {
  const taken = [...spoken, ...quiet].sort((a, b) => a.from - b.from)
  const rideFrom = blocks[0]?.from ?? 0
  const rideTo = blocks.at(-1)?.to ?? 0
  return lowStrain(strain)
    .flatMap((low) => freeWithin({ from: Math.max(low.from, rideFrom), to: Math.min(low.to, rideTo) }, taken))
    .filter(({ from, to }) => to - from >= LEAST_ROOM)
}

/** Whether riders can listen throughout a stretch; what of it lies before or after the class counts for nothing. */
export function isCalm(strain: StrainCurve, { from, to }: Stretch): boolean {
  const first = Math.max(from, strain.pieces[0]?.from ?? from)
  const last = Math.min(to, strain.pieces.at(-1)?.to ?? to)
  return lowStrain(strain).some((run) => run.from <= first + 1e-9 && run.to >= last - 1e-9)
}

const known = new WeakMap<StrainCurve, Stretch[]>()

/** The runs of low strain, found once for a curve. */
function lowStrain(strain: StrainCurve): readonly Stretch[] {
  const runs = known.get(strain) ?? findLow(strain)
  known.set(strain, runs)
  return runs
}

/** A piece rises or falls throughout, so it is low from the moment it comes down to the limit, or up to the one it leaves it. */
function findLow({ pieces }: StrainCurve): Stretch[] {
  const runs: Stretch[] = []
  for (const [i, piece] of pieces.entries()) {
    const { start } = piece
    const end = pieces[i + 1]?.start ?? start
    if (start > LISTENING && end > LISTENING) continue
    const from = start > LISTENING ? momentAt(piece, LISTENING) : piece.from
    const to = end > LISTENING ? momentAt(piece, LISTENING) : piece.to
    const last = runs.at(-1)
    if (last !== undefined && last.to === from) last.to = to
    else runs.push({ from, to })
  }
  return runs
}

function freeWithin(room: Stretch, taken: readonly Stretch[]): Stretch[] {
  const free: Stretch[] = []
  let from = room.from
  for (const stretch of taken) {
    if (stretch.to <= from) continue
    if (stretch.from >= room.to) break
    if (stretch.from > from) free.push({ from, to: stretch.from })
    from = Math.max(from, stretch.to)
  }
  if (from < room.to) free.push({ from, to: room.to })
  return free
}

/** The stretches of the ride's songs that are to be kept free of speech, on the ride clock. */
export function quietStretches(ride: Ride, sections: readonly SectionReport[]): (Stretch & { section: number })[] {
  return sections.flatMap(({ one, to: end }, section) => {
    const plan = ride.sections[section]!
    const quiet = plan.song?.grid ? (plan.song.quiet ?? []) : []
    const clock = sectionClock(plan, one)
    const first = plan.inCount ?? 0
    return quiet
      .map(({ from, to }) => ({ from: Math.max(one, clock.at(from - first)), to: Math.min(end, clock.at(to - first)), section }))
      .filter(({ from, to }) => to > from)
  })
}
