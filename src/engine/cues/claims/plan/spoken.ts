import type { CueLine } from '#engine/cues/placeCues.ts'
import type { PlayedBlock } from '#engine/played.ts'
import type { CueMoment } from '#plan/model.ts'
import type { Seconds } from '#units/units.ts'
import type { PlanView } from './planView.ts'

/** A number at the moment it is said. */
export interface Spoken {
  view: PlanView
  moment: CueMoment
  /** The block its cue belongs to: the one that comes, or for form and story the one that is ridden. */
  played: PlayedBlock
  /** True for words inside their block. */
  inside: boolean
  at: Seconds
  /** When the last word of its cue is said. */
  over: Seconds
  /** The block riders are in when it is said. */
  ridden: PlayedBlock
  /** The block they are about to be in, where the change is near. */
  coming: PlayedBlock | undefined
}

/** Index of the last block up to one that has begun at a moment; the first where none has. By halving. */
function lastBegunBy(at: Seconds, most: number, blocks: PlanView['blocks']): number {
  let low = 0
  let high = most
  while (low < high) {
    const middle = (low + high + 1) >> 1
    if (blocks[middle]!.from <= at) low = middle
    else high = middle - 1
  }
  return low
}

/** Words are said evenly from a line's start to its end, so a number further on in the text is said later. */
export function spokenAt(view: PlanView, line: CueLine, share: number): Spoken {
  const { blocks, rules } = view
  const played = blocks[line.block]!
  const inside = line.moment === 'form' || line.moment === 'story'
  const at = line.from + (line.to - line.from) * share
  const ridden = inside ? played : blocks[lastBegunBy(at, played.index, blocks)]!
  const next = blocks[played.index + 1]
  const near = inside && next !== undefined && next.from - at <= rules.announceSeconds
  return {
    view,
    moment: line.moment,
    played,
    inside,
    at,
    over: Math.max(at, line.to),
    ridden,
    coming: inside ? (near ? next : undefined) : played,
  }
}
