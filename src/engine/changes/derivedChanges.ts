import type { PlayedBlock } from '#engine/played.ts'
import type { RideReport } from '#engine/report.ts'
import type { Overall } from '#engine/shape/overall.ts'
import { sameValue } from '#plan/edits.ts'
import type { Block, Foot } from '#plan/model.ts'
import { readingOf } from '#plan/scale/reading.ts'
import type { Seconds } from '#units/units.ts'
import type { Said } from '#words/said.ts'

/**
 * Something about a ride that came out otherwise although nobody wrote it: it follows from
 * what was changed elsewhere. Times are on the ride clock of the ride after.
 */
export type DerivedChange =
  /** A whole section begins at another time. */
  | { kind: 'start'; sectionId: string; at: Seconds; before: Seconds; after: Seconds }
  /** What is said at a block whose own call is as it was. */
  | { kind: 'call'; blockId: string; at: Seconds; before: string; after: string }
  /** The resistance a block is ridden at, where its own call is as it was. */
  | { kind: 'total'; blockId: string; at: Seconds; before: string; after: string }
  /** The foot on the first count, where nothing about it was changed in the block. */
  | { kind: 'foot'; blockId: string; at: Seconds; before: Foot | null; after: Foot | null }
  /** A figure of the whole ride; one of the knob in whole parts of the bike's unit, as many to it as are said. */
  | { kind: 'figure'; figure: Exclude<Figure, 'highestTotal'>; before: number; after: number }
  | { kind: 'figure'; figure: 'highestTotal'; before: number; after: number; perUnit: number }
  | { kind: 'foundNow' | 'foundNoMore'; findingId: string; at: Seconds; text: Said }

/** Figures of a ride that are compared, in the order in which they are told. */
const FIGURES = ['total', 'slack', 'workSeconds', 'easySeconds', 'meanEffort', 'sessionLoad', 'longestStanding', 'highestTotal'] as const
type Figure = (typeof FIGURES)[number] & keyof Overall

/** Differences below this are rounding, not change. */
const ROUNDING = 1e-6

/**
 * What follows from the changes between two rides: starts of sections, calls, totals and
 * feet of blocks that both have and that were not changed in this respect, figures of the
 * whole ride, and findings that are new or gone. In a set the first round stands for all.
 * What is said of the knob is compared in one unit: not at all between bikes of different ones.
 * In the order of the ride after; pure; linear in the blocks.
 */
export function derivedChanges(before: RideReport, after: RideReport): DerivedChange[] {
  return [
    ...FIGURES.flatMap((figure) => figureChanged(figure, before, after)),
    ...startsMoved(before, after),
    ...blocksChanged(before, after),
    ...findingsChanged(before, after),
  ]
}

function figureChanged(figure: Figure, before: RideReport, after: RideReport): DerivedChange[] {
  if (figure === 'highestTotal') return highestChanged(before, after)
  const [was, now] = [before.overall[figure], after.overall[figure]]
  return Math.abs(was - now) > ROUNDING ? [{ kind: 'figure', figure, before: was, after: now }] : []
}

/** In parts of the unit that both bikes' steps are whole numbers of, counted from where the ride after counts. */
function highestChanged(before: RideReport, after: RideReport): DerivedChange[] {
  const [from, to] = [before.scale, after.scale]
  if (from.bike.unit !== to.bike.unit) return []
  const was = Math.round(readingOf(from, to).total(before.overall.highestTotal) * from.bike.stepsPerUnit)
  const now = after.overall.highestTotal * from.bike.stepsPerUnit
  const perUnit = from.bike.stepsPerUnit * to.bike.stepsPerUnit
  return was === now ? [] : [{ kind: 'figure', figure: 'highestTotal', before: was, after: now, perUnit }]
}

function startsMoved(before: RideReport, after: RideReport): DerivedChange[] {
  const starts = new Map(before.sections.map(({ sectionId, from }) => [sectionId, from]))
  return after.sections.flatMap(({ sectionId, from }): DerivedChange[] => {
    const was = starts.get(sectionId)
    return was === undefined || Math.abs(was - from) < ROUNDING ? [] : [{ kind: 'start', sectionId, at: from, before: was, after: from }]
  })
}

function blocksChanged(before: RideReport, after: RideReport): DerivedChange[] {
  const known = new Map(firstRounds(before).map((played) => [played.block.id, played]))
  const isOneScale = before.scale.bike.unit === after.scale.bike.unit && before.scale.datum === after.scale.datum
  return firstRounds(after).flatMap((played) => {
    const was = known.get(played.block.id)
    return was ? blockChanged(was, played, isOneScale) : []
  })
}

const firstRounds = ({ blocks }: RideReport): PlayedBlock[] => blocks.filter(({ set }) => set === undefined || set.round === 1)

function blockChanged(was: PlayedBlock, now: PlayedBlock, isOneScale: boolean): DerivedChange[] {
  const at = { blockId: now.block.id, at: now.from }
  const changes: DerivedChange[] = []
  if (isOneScale && sameIn(was, now, 'resistance')) {
    if (was.ledger.call !== now.ledger.call) changes.push({ kind: 'call', ...at, before: was.ledger.call, after: now.ledger.call })
    if (was.ledger.total !== now.ledger.total) changes.push({ kind: 'total', ...at, before: was.ledger.total, after: now.ledger.total })
  }
  if (sameIn(was, now, 'lead') && was.foot !== now.foot) changes.push({ kind: 'foot', ...at, before: was.foot, after: now.foot })
  return changes
}

const sameIn = (a: PlayedBlock, b: PlayedBlock, field: keyof Block): boolean => sameValue(a.block[field], b.block[field])

function findingsChanged(before: RideReport, after: RideReport): DerivedChange[] {
  const only = (here: RideReport, there: RideReport, kind: 'foundNow' | 'foundNoMore'): DerivedChange[] => {
    const known = new Set(there.findings.map(({ id }) => id))
    return here.findings.filter(({ id }) => !known.has(id)).map(({ id, at, text }) => ({ kind, findingId: id, at, text }))
  }
  return [...only(after, before, 'foundNow'), ...only(before, after, 'foundNoMore')]
}
