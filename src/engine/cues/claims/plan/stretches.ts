import type { Subject } from '#engine/cues/claims/claim.ts'
import { nameOf } from '#engine/cues/family.ts'
import type { PlayedBlock } from '#engine/played.ts'
import type { Speech } from '#engine/speech/speech.ts'
import type { Counts, Seconds } from '#units/units.ts'
import { ALIKE, type PlanView } from './planView.ts'
import type { Spoken } from './spoken.ts'

/** Nobody speaks of what comes this many blocks later (common practice; songs have a tenth of it). */
export const AHEAD = 60

/** A stretch of the ride that a number may be about; counts only where it is counted throughout. */
export interface StretchLength {
  seconds: Seconds
  counts: Counts | null
}

/** A block, and the stretches of like blocks it opens: its work, its terrain, its posture, its round and set. */
export function stretchesFrom(view: PlanView, played: PlayedBlock, { posture, quality, kind }: Subject = {}): StretchLength[] {
  const ends = new Set([played.index])
  const named = kind !== undefined && isOf(played, kind, view.speech)
  for (const alike of ALIKE) {
    // "Three minutes up" is as long as riders are up, whatever else goes on.
    if (posture && (alike === 'work' || alike === 'terrain')) continue
    // Nobody counts how long riders sit or do not work, unless the words say so.
    if (alike === 'posture' && played.block.posture === 'seated' && !posture) continue
    if (alike === 'work' && !view.works(played) && quality !== 'easy') continue
    // A round is told with the word, or it is the effort in it that is meant.
    if (alike === 'round' && !(kind !== undefined && /^(?:round|set)$/.test(kind))) continue
    const run = view.runOf(played.index, alike)
    // "Jumps for a minute" is not as long as riders stand, but all rounds of them may be meant.
    if (run === null || (named && alike !== 'set' && !allOf(view, kind, played.index, run.last))) continue
    ends.add(run.last)
  }
  return [...ends].map((last) => between(played, view.blocks[last]!))
}

function between(first: PlayedBlock, last: PlayedBlock): StretchLength {
  const counted = first.countFrom !== undefined && last.countTo !== undefined && first.section === last.section
  return { seconds: last.to - first.from, counts: counted ? last.countTo! - first.countFrom! : null }
}

/** A whole section. */
export function stretchOfSection(view: PlanView, section: number): StretchLength {
  const blocks = view.blocksOf(section)
  const report = view.sections[section]!
  return { seconds: report.to - report.one, counts: blocks.length > 0 && report.counts ? report.counts.total : null }
}

/**
 * The blocks a length or an effort may be about, the likeliest first: the one that comes, unless the words say it is of
 * a kind, hard, easy or ahead.
 */
export function subjectsOf({ view, moment, played, inside, coming }: Spoken, on: Subject = {}): PlayedBlock[] {
  const following = moment === 'preview' || moment === 'story' ? rest(view, played) : []
  const named = on.kind === undefined ? [] : ofKind(view, played, on.kind)
  if (named.length > 0) return [...named, ...following]
  const own = [played, ...(inside && coming && coming !== played ? [coming] : []), ...following]
  const later = on.ahead ? rest(view, played) : []
  if (on.quality === undefined) return [...own, ...later]
  const wanted = on.quality === 'hard'
  const fits = (one: PlayedBlock): boolean => view.works(one) === wanted
  const next = rest(view, played).find(fits)
  const found = [...own.filter(fits), ...later.filter(fits), ...(fits(played) || next === undefined ? [] : [next])]
  // "A minute of work" may be said of a block that is no work by the numbers.
  return found.length === 0 || (wanted && !fits(played)) ? [...found, ...own] : found
}

/**
 * What follows a block in its section, and after the section's last block in the next one; as far ahead as anybody speaks,
 * which also keeps the cost of a number from growing with the length of a song.
 */
export function rest({ blocks, sections }: PlanView, { index, section }: PlayedBlock): readonly PlayedBlock[] {
  const own = sections[section]!.blocks
  const { from, to } = index + 1 < own.to ? { from: index + 1, to: own.to } : (sections[section + 1]?.blocks ?? { from: 0, to: 0 })
  return blocks.slice(from, Math.min(to, from + AHEAD))
}

/** The blocks of a kind from this one on; none where no block is called so. */
function ofKind(view: PlanView, played: PlayedBlock, kind: string): PlayedBlock[] {
  return isOf(played, kind, view.speech) ? [played] : rest(view, played).filter((one) => isOf(one, kind, view.speech))
}

/** Whether blocks are called so, from one to another, as far as anybody speaks. */
function allOf({ blocks, speech }: PlanView, kind: string, first: number, last: number): boolean {
  const end = Math.min(last, first + AHEAD)
  for (let i = first; i <= end; i++) if (!isOf(blocks[i]!, kind, speech)) return false
  return true
}

/** Whether a block is called so; terrains have names in the plural too: "jumps". */
export const isOf = (one: PlayedBlock, kind: string, speech: Speech): boolean =>
  nameOf(one, speech).words.includes(kind) || one.block.terrain === kind || one.block.terrain === `${kind}s`
