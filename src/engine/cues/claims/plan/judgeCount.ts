import type { MeaningOf } from '#engine/cues/claims/claim.ts'
import { type Member, type Members, nameOf } from '#engine/cues/family.ts'
import type { PlayedBlock } from '#engine/played.ts'
import type { PlanView } from './planView.ts'
import type { Spoken } from './spoken.ts'
import { rest } from './stretches.ts'
import { anyFits, HOLDS, type Verdict } from './verdict.ts'

/** A row of efforts of one kind, or of rounds, seen from a block. */
interface Row {
  total: number
  /** Done before the block, and to come after it; `own` where the block is one of them, with its place from 1. */
  earlier: number
  later: number
  own?: number
}

/** The row a number is about: of the kind that is said, else of the rounds or the work the block stands in. */
export function rowOf(spoken: Spoken, kind: string | undefined): Row | null {
  const { view, played } = spoken
  if (kind === 'round' || (kind === undefined && played.set !== undefined)) return rowOfRounds(view, played)
  const meant = kind ?? kindMeant(view, played)
  if (meant === undefined) return null
  const here = view.membersIn(played.section, meant)
  const isLast = view.blocksOf(played.section).at(-1) === played
  const row =
    here.members.length === 0 && isLast && played.section + 1 < view.sections.length ? view.membersIn(played.section + 1, meant) : here
  return row.members.length === 0 ? null : seenFrom(row, played)
}

/** The rounds of the set a block stands in, or of the only one of its section, before or behind it. */
function rowOfRounds(view: PlanView, { set, section, index }: PlayedBlock): Row | null {
  if (set === undefined) {
    const [only, ...others] = view.setsIn(section)
    if (only === undefined || others.length > 0) return null
    const total = only.set.rounds
    return only.first > index ? { total, earlier: 0, later: total } : { total, earlier: total, later: 0 }
  }
  const { rounds } = set.set
  return { total: rounds, earlier: set.round - 1, later: rounds - set.round, own: set.round }
}

function seenFrom({ members, total, before, after }: Members, { index }: PlayedBlock): Row {
  const next = placeAmong(members, index)
  const own = members[next]
  const isOne = own !== undefined && own.from <= index
  return {
    total,
    earlier: before[next]!,
    later: after[isOne ? next + 1 : next]!,
    ...(isOne && { own: own.number ?? next + 1 }),
  }
}

/** Place of the first member that ends at a block or later, from 0; their number where all ended before. By halving. */
function placeAmong(members: readonly Member[], block: number): number {
  let low = 0
  let high = members.length
  while (low < high) {
    const middle = (low + high) >> 1
    if (members[middle]!.to < block) low = middle + 1
    else high = middle
  }
  return low
}

/** What "last one" or "one left" is about: the block's own kind at work, else that of the work before it. */
function kindMeant(view: PlanView, played: PlayedBlock): string | undefined {
  if (view.works(played)) return nameOf(played, view.speech).kind
  const before = view.lastWork(played.index)
  return before && nameOf(before, view.speech).kind
}

/** "three pushes", "three of these": all of them, or those still to come, in the section or from here on in the class. */
export function judgeAhead({ value, kind, fresh }: MeaningOf<'ahead'>, spoken: Spoken): Verdict {
  const { view, played } = spoken
  const meant = kind ?? nextKind(view, played)
  const row = meant === undefined ? null : rowOf(spoken, meant)
  if (row === null) return null
  const ahead = row.later + (row.own === undefined ? 0 : 1)
  if (row.own === undefined && row.later === 0) return null
  if (fresh && row.earlier > 0) return null
  const inClass = view.sections.map((_, section) => view.membersIn(section, meant!).total)
  const fromHere = inClass.slice(played.section + 1).reduce((sum, count) => sum + count, ahead)
  const all = inClass.reduce((sum, count) => sum + count, 0)
  return anyFits(
    [ahead, row.total, fromHere, all],
    (real) => real === value,
    (real) => ({ low: real }),
  )
}

/** "three of these": of the work that is announced. */
function nextKind(view: PlanView, played: PlayedBlock): string | undefined {
  if (view.works(played)) return nameOf(played, view.speech).kind
  const next = rest(view, played).find((one) => view.works(one))
  return next ? nameOf(next, view.speech).kind : kindMeant(view, played)
}

/** "Two jumps done", said among jumps: of the figures of the move, and of no row of blocks. */
const countsFigures = (kind: string | undefined, { inside, played }: Spoken): boolean =>
  inside && kind !== undefined && kind === played.block.move?.name

/** "two more", "one left", "two more after this". */
export function judgeMore({ value, kind, after }: MeaningOf<'more'>, spoken: Spoken): Verdict {
  if (countsFigures(kind, spoken)) return null
  const row = rowOf(spoken, kind)
  if (row === null || (row.own === undefined && row.later + row.earlier === 0)) return null
  // "Two pushes after this hill" is told from outside the row; "two more after this" is not.
  if (after && row.own === undefined && kind === undefined) return null
  // Said as a push begins, "two to go" may have it among them.
  const counts = after || row.own === undefined ? [row.later] : [row.later, row.later + 1]
  return anyFits(
    counts,
    (real) => real === value,
    (real) => ({ low: real }),
  )
}

/** "one down", "that was one of three". */
export function judgeDone({ value, kind, of }: MeaningOf<'done'>, spoken: Spoken): Verdict {
  if (countsFigures(kind, spoken)) return null
  const row = rowOf(spoken, kind)
  if (row === null || row.total < 2) return null
  if (of !== undefined && of !== row.total) return { holds: false, right: { low: row.earlier, of: row.total } }
  const done = spoken.inside && row.own !== undefined ? [row.earlier, row.earlier + 1] : [row.earlier]
  return anyFits(
    done,
    (real) => real === value,
    (real) => ({ low: real, ...(of !== undefined && { of: row.total }) }),
  )
}

/** "push two", "first of three". */
export function judgePlace({ value, kind, of }: MeaningOf<'place'>, spoken: Spoken): Verdict {
  const row = rowOf(spoken, kind)
  if (row === null) return null
  // Between two of a row the one before and the one to come may be meant.
  const places = row.own !== undefined ? [row.own] : [row.earlier + 1, row.earlier]
  const right = { low: places[0]!, ...(of !== undefined && { of: row.total }) }
  if (places.includes(value) && (of === undefined || of === row.total)) return HOLDS
  // "The third climb" may be the third of the class.
  if (kind !== undefined && isPlaceInClass(spoken, kind, value, of)) return HOLDS
  return row.own === undefined && value <= row.total && of === undefined ? null : { holds: false, right }
}

function isPlaceInClass({ view, played }: Spoken, kind: string, value: number, of: number | undefined): boolean {
  const inClass = view.sections.map((_, section) => view.membersIn(section, kind).members)
  const before = inClass.slice(0, played.section).reduce((sum, members) => sum + members.length, 0)
  const here = inClass[played.section]!
  const own = placeAmong(here, played.index)
  const all = inClass.reduce((sum, members) => sum + members.length, 0)
  const isOne = own < here.length && here[own]!.from <= played.index
  return isOne && before + own + 1 === value && (of === undefined || of === all)
}

/** "last one", "next to last", "third and last". */
export function judgeLast({ back, kind, value, of, past }: MeaningOf<'last'>, spoken: Spoken): Verdict {
  const row = rowOf(spoken, kind)
  if (row === null || (row.own === undefined && (past ? row.earlier : row.later) === 0)) return null
  if (past && row.own === undefined) return row.later === back ? HOLDS : { holds: false, right: { low: row.earlier, high: row.later } }
  const left = row.own === undefined ? row.later - 1 : row.later
  const place = row.own ?? row.earlier + 1
  if (left !== back) return { holds: false, right: { low: place, high: left } }
  if (of !== undefined && of !== row.total) return { holds: false, right: { low: place, high: left, of: row.total } }
  return value === undefined || value === place ? HOLDS : { holds: false, right: { low: place } }
}

/** "three rounds", "three times". */
export function judgeRounds({ value, kind }: MeaningOf<'rounds'>, spoken: Spoken): Verdict {
  const { view, played } = spoken
  // The row the block stands in goes before a set that comes later.
  const own = played.set === undefined && view.works(played) ? rowOf(spoken, nextKind(view, played)) : null
  if (own?.own !== undefined && own.total > 1 && kind === undefined) {
    return own.total === value ? HOLDS : { holds: false, right: { low: own.total } }
  }
  const set = played.set?.set ?? rest(view, played).find((one) => one.set)?.set?.set
  if (set !== undefined) {
    const sets = view.setsIn(played.section).length
    return set.rounds === value || (kind === 'set' && sets === value) ? HOLDS : { holds: false, right: { low: set.rounds } }
  }
  const work = nextKind(view, played)
  const row = work === undefined ? null : rowOf(spoken, work)
  return row?.total === value ? HOLDS : null
}
