import { mapSame, withItems } from '#plan/edits.ts'
import { applyCall } from '#plan/ledger/applyCall.ts'
import { atTotal } from '#plan/ledger/ledgerState.ts'
import { type Limits, limitsOf } from '#plan/ledger/limits.ts'
import { statedAs } from '#plan/ledger/statedAs.ts'
import { type Block, type Item, isSet, type Resistance, type Ride, type Section } from '#plan/model.ts'
import { withTotals } from '#plan/patterns/withTotals.ts'
import type { KnobSteps } from '#units/units.ts'

/** Blocks as riders come to them now, and what became of their totals. */
interface FittedKnob {
  section: Section
  /** Steps that all totals are heavier (below zero: lighter) than they were planned. */
  shift: KnobSteps
  /** The first block states its total, since riders come from too far away to go along with. */
  states?: KnobSteps
}

/** Of the way from base to the end of the knob: as far as a whole song may be made heavier or lighter, and be the same song (common practice). */
const MOST_SHIFT = 1 / 16

/**
 * Blocks for riders who come in at another total than they were planned for. A song that begins by saying a total stays
 * as it is. One that goes on from where riders are is moved as a whole, by one shift that keeps every total between base and the
 * end of the knob; where they come from farther away, its first block says its total, and the rest is as it was.
 *
 * @param was the total riders came in with, @param is the one they come in with now; both in whole steps from the ride's datum
 */
export function fitKnob(section: Section, ride: Ride, was: KnobSteps, is: KnobSteps): FittedKnob {
  const limits = limitsOf(ride)
  const first = section.blocks[0]!
  const call = (isSet(first) ? first.parts[0]! : first).resistance
  const relative = call.kind === 'keep' || call.kind === 'change'
  const offset = relative ? is - was : 0
  const most = Math.max(1, Math.floor((limits.ceiling - limits.base) * MOST_SHIFT))
  const room = within(section.blocks.flatMap(statedIn), limits, offset)
  if (offset !== 0 && !isSet(first) && (Math.abs(offset) > most || room !== offset)) {
    const stated = statedAs(applyCall(atTotal(was), call, limits).after)
    const total = inRange(stated.from, limits)
    const block: Block = { ...first, resistance: { kind: 'total', from: total, to: total, ...checked(call) } }
    return { section: bounded(withItems(section, section.blocks.with(0, block)), limits), shift: 0, states: total }
  }
  const moved =
    room === 0
      ? section
      : withItems(
          section,
          mapSame(section.blocks, (item) => inBlocks(item, (total) => total + room)),
        )
  return { section: bounded(moved, limits), shift: room }
}

const checked = (call: Resistance) => ('checkpoint' in call && call.checkpoint ? { checkpoint: call.checkpoint } : {})

/** A shift, as much of it as leaves totals between base and the end of the knob, or no farther outside than they are. */
function within(totals: readonly KnobSteps[], { base, ceiling }: Limits, shift: KnobSteps): KnobSteps {
  if (totals.length === 0) return shift
  const [least, most] = [Math.min(...totals), Math.max(...totals)]
  return Math.max(Math.min(base, least) - least, Math.min(Math.max(ceiling, most) - most, shift)) + 0
}

const inRange = (total: KnobSteps, { floor, ceiling }: Limits): KnobSteps => Math.min(ceiling, Math.max(floor, total)) + 0

/** No total past an end of the knob. */
function bounded(section: Section, limits: Limits): Section {
  const isOut = (total: KnobSteps) => inRange(total, limits) !== total
  const change = (item: Item): Item => (namedIn(item).some(isOut) ? inBlocks(item, (total) => inRange(total, limits)) : item)
  return withItems(section, mapSame(section.blocks, change))
}

const inBlocks = (item: Item, read: (total: KnobSteps) => KnobSteps): Item =>
  isSet(item) ? { ...item, parts: item.parts.map((part) => withTotals(part, read)) } : withTotals(item, read)

/** The totals an item states, all rounds of a set among them. */
function statedIn(item: Item): KnobSteps[] {
  const added = isSet(item) ? (item.perRound?.steps ?? 0) * (item.rounds - 1) : 0
  return (isSet(item) ? item.parts : [item]).flatMap(({ resistance: call }) =>
    call.kind === 'total' || call.kind === 'byFeel' ? [call.from, call.to, call.from + added, call.to + added] : [],
  )
}

/** Every total that is written in an item. */
const namedIn = (item: Item): KnobSteps[] =>
  (isSet(item) ? item.parts : [item]).flatMap(({ resistance: call, ownTotal }) => [
    ...('from' in call ? [call.from, call.to] : []),
    ...('aim' in call && call.aim !== undefined ? [call.aim] : []),
    ...('checkpoint' in call && call.checkpoint ? [call.checkpoint.from, call.checkpoint.to] : []),
    ...(ownTotal === undefined ? [] : [ownTotal]),
  ])
