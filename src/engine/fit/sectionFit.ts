import { accentPeriod } from '#engine/cadence/moves.ts'
import { countingUnit } from '#engine/timeline/countingUnit.ts'
import type { Command } from '#plan/commands/command.ts'
import { makeCommand } from '#plan/commands/makeCommand.ts'
import { editBlocksOf, editSection } from '#plan/edits.ts'
import { type Block, isSet, type Ride, type Section } from '#plan/model.ts'
import { itemName, quotedItem, quotedSectionName } from '#plan/names.ts'
import { findSection } from '#plan/places.ts'
import { countsOf } from '#plan/songs/beatGrid.ts'
import type { Counts } from '#units/units.ts'
import { say, type Text } from '#words/said.ts'
import { type FitItem, fitLengths, type Nearest } from './fitLengths.ts'

/** A block that gets another length. */
export interface LengthChange {
  blockId: string
  name: Text
  from: Counts
  to: Counts
}

/** New lengths for the blocks of a section, in counts, by block id. */
interface SectionLengths {
  lengths: ReadonlyMap<string, Counts>
  changes: LengthChange[]
  cost: number
  /** Counts that no whole eight can fill. */
  leftOver: Counts
}

/** Why a number of counts cannot be filled, and the numbers of counts next to it that can. */
interface Unfit {
  ok: false
  reason: Text
  nearest?: Counts[]
}

type SectionFit = (SectionLengths & { ok: true; command: Command }) | Unfit

/**
 * Gives the blocks of a section the whole eights that fill its song with the least change.
 * Locked blocks and all-out efforts keep their length; own bounds of a block are kept; a part
 * of a set costs an eight a round. A move that alternates keeps as many counts on one side as on the other.
 */
export function fitSection(ride: Ride, sectionId: string): SectionFit {
  const section = findSection(ride, sectionId)
  const counts = section && countsOf(section)
  if (!section || counts === null || counts === undefined) return { ok: false, reason: say('fit.needsBeat') }
  const found = lengthsFor(section, counts)
  if (!found.ok) return found
  return {
    ...found,
    command: makeCommand(say('fit.fittedSection', { section: quotedSectionName(ride, section) }), (before) =>
      editSection(before, sectionId, (one) => withLengths(one, found.lengths)),
    ),
  }
}

/** The section with those lengths. */
export const withLengths = (section: Section, lengths: ReadonlyMap<string, Counts>): Section =>
  editBlocksOf(section, (block) => {
    const counts = lengths.get(block.id)
    return counts === undefined || ('counts' in block.length && block.length.counts === counts) ? block : { ...block, length: { counts } }
  })

/** The lengths that fill a number of counts with the least change, or why there are none. */
export function lengthsFor(section: Section, counts: Counts): (SectionLengths & { ok: true }) | Unfit {
  const parts = partsOf(section)
  if (parts.length === 0) return { ok: false, reason: say('fit.noBlocks') }
  const timed = parts.find(({ block }) => !('counts' in block.length))
  if (timed) return { ok: false, reason: say('fit.inSeconds', { block: quotedItem(timed.block) }) }
  const { eight } = countingUnit(section)
  const fixed = parts.filter(({ block }) => keepsLength(block))
  const free = parts.filter(({ block }) => !keepsLength(block))
  const room = counts - fixed.reduce((sum, { block, rounds }) => sum + countsIn(block) * rounds, 0)
  const eights = Math.floor(room / eight)
  if (free.length === 0) return { ok: false, reason: say('fit.allLocked') }
  const result = fitLengths(
    free.map((part) => fitItem(part, eight)),
    eights,
  )
  if (!result.ok) {
    const { below, above } = result.nearest
    const nearest = [below, above].filter((total) => total !== null).map((total) => counts - room + total * eight)
    return { ok: false, reason: outOfReach(eights, result.nearest, eight), nearest }
  }
  const lengths = new Map(free.map(({ block }, i) => [block.id, result.fitted.lengths[i]! * eight]))
  const changes = free.flatMap(({ block }) => {
    const [from, to] = [countsIn(block), lengths.get(block.id)!]
    return from === to ? [] : [{ blockId: block.id, name: itemName(block), from, to }]
  })
  return { ok: true, lengths, changes, cost: result.fitted.cost, leftOver: room - eights * eight }
}

interface Part {
  block: Block
  rounds: number
}

function partsOf(section: Section): Part[] {
  return section.blocks.flatMap((item) =>
    isSet(item) ? item.parts.map((block) => ({ block, rounds: item.rounds })) : [{ block: item, rounds: 1 }],
  )
}

/** The promised length of an all-out effort is never changed. */
const keepsLength = ({ locked, allOut }: Block): boolean => locked === true || allOut === true

const countsIn = ({ length }: Block): Counts => ('counts' in length ? length.counts : 0)

/** Far more eights than any song holds. */
const NO_BOUND = 1000

function fitItem({ block, rounds }: Part, eight: Counts): FitItem {
  const least = block.minEights ?? 1
  const most = block.maxEights ?? NO_BOUND
  return { drafted: countsIn(block) / eight, least, most, step: stepOf(block, eight, { least, most }), rounds, weight: 1 }
}

/**
 * The eights that a block's length goes by: those of both sides of a move that alternates, where its drafted length is
 * whole figures of it and the block's own bounds leave one; else one.
 */
function stepOf(block: Block, eight: Counts, { least, most }: { least: number; most: number }): number {
  const { move } = block
  if (move?.then !== 'alternate') return 1
  const figure = 2 * move.counts * (accentPeriod(move.name) ?? 1)
  if (countsIn(block) % figure !== 0) return 1
  const step = figure / commonDivisor(figure, eight)
  return Math.ceil(least / step) * step <= most ? step : 1
}

const commonDivisor = (a: number, b: number): number => (b === 0 ? a : commonDivisor(b, a % b))

const outOfReach = (eights: number, { below, above }: Nearest, unit: Counts): Text =>
  say('fit.outOfReach', {
    room: Math.max(0, eights) * unit,
    nearest: [below, above].flatMap((total) => (total === null ? [] : [total * unit])),
    unit,
  })

/** "“recover” from 16 to 12 eights". */
export const sayChange = ({ name, from, to }: LengthChange, eight: Counts): Text =>
  say('fit.change', { block: say('names.quoted', { name }), from, to, unit: eight })
