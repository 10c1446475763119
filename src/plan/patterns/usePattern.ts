import { copyItem, type NewId } from '#plan/copies.ts'
import { editBlocksIn } from '#plan/edits.ts'
import { atTotal } from '#plan/ledger/ledgerState.ts'
import { limitsOf } from '#plan/ledger/limits.ts'
import { playCall, type Standing, standingAt } from '#plan/ledger/playCall.ts'
import { standingBefore } from '#plan/ledger/standingBefore.ts'
import { type Block, type Item, isCounted, isSet, type Ride, type Section, type SetBlock } from '#plan/model.ts'
import { remeasureItem } from '#plan/remeasure.ts'
import { sameScale } from '#plan/scale/sameScale.ts'
import { eightOf, gridOfTempo } from '#plan/songs/beatGrid.ts'
import type { KnobSteps } from '#units/units.ts'
import type { Beat, OwnPattern } from './ownPattern.ts'
import { stepsOnBike } from './stepsOnBike.ts'
import { withTotals } from './withTotals.ts'

/** The items of a pattern as they come to stand in a ride, and what had to be changed for it. */
interface Used {
  items: Item[]
  /** Counts became seconds, or the other way. */
  measured?: 'bySeconds' | 'byCounts'
  /** Steps by which all its totals are lighter (below zero) or heavier than its shape has them, to stay between base and the end of the knob. */
  lifted: KnobSteps
}

/**
 * The items of a pattern for a place of a ride, under new ids. Its totals keep their shape from the total riders come in
 * with; on another bike they are what weighs the same, to whole steps. Eights stay eights under a beat; between beat
 * and clock they are converted by the tempo on the side that has one. Cost: linear in what is played of it.
 */
export function usePattern(pattern: OwnPattern, ride: Ride, section: Section, index: number, newId: NewId): Used {
  const { items, lifted } = atEntering(pattern, ride, standingBefore(ride, section.id, index))
  const counted = isCounted(section)
  const measured = counted === (pattern.beat !== undefined) ? undefined : counted ? 'byCounts' : 'bySeconds'
  return {
    items: items.map((item) => copyItem(inMeasure(item, pattern.beat, section), newId)),
    ...(measured && { measured }),
    lifted,
  }
}

/** Totals of a pattern for riders who come in at a total, in steps from the ride's datum. */
function atEntering({ items, entered, bike }: OwnPattern, ride: Ride, at: KnobSteps): { items: Item[]; lifted: KnobSteps } {
  const alike = sameScale(bike, ride.bike)
  const onBike = (total: KnobSteps): KnobSteps => (alike ? total : stepsOnBike(total, bike, { bike: ride.bike, datum: 'base' }))
  const offset = at - onBike(entered)
  const totals = items.flatMap(statedIn).map((total) => onBike(entered + total))
  const lifted = liftOf(totals, offset, ride)
  const source = limitsOf({ bike, datum: 'base' })
  let standing: Standing = standingAt(atTotal(entered))
  /** A change of the first round as the other bike has it: as much heavier, and never none. */
  const turned = (from: KnobSteps, steps: KnobSteps): KnobSteps => {
    const there = onBike(from + steps) - onBike(from)
    return there === 0 ? Math.sign(steps) : there
  }
  const read = (block: Block, set?: SetBlock): Block => {
    const absolute = withTotals(block, (total) => entered + total)
    const { nominal } = standing.state
    standing = playCall(standing, absolute.resistance, set && { set, round: 1 }, source).next
    const here = withTotals(absolute, (total) => onBike(total) + offset + lifted + 0)
    const call = here.resistance
    if (alike || call.kind !== 'change' || call.steps === 0) return here
    return { ...here, resistance: { ...call, steps: turned(nominal, call.steps) } }
  }
  return {
    lifted,
    items: items.map((item) => {
      if (!isSet(item)) return read(item)
      const parts = item.parts.map((part) => read(part, item))
      const added = item.perRound?.steps ?? 0
      return added === 0 || alike ? { ...item, parts } : { ...item, parts, perRound: { steps: turned(entered, added) } }
    }),
  }
}

/** Steps that bring totals back between base and the end of the knob, as far as they were there before they were moved by `offset`. */
function liftOf(totals: readonly KnobSteps[], offset: KnobSteps, ride: Ride): KnobSteps {
  if (totals.length === 0) return 0
  const { base, ceiling } = limitsOf(ride)
  const zero = ride.datum === 'base' ? 0 : base
  const [least, most] = [Math.min(...totals), Math.max(...totals)]
  const over = most + offset - Math.max(ceiling, most + zero)
  if (over > 0) return -over
  return Math.max(0, Math.min(base, least + zero) - (least + offset))
}

/** The totals an item names, over the one it is entered with, all rounds of a set among them. */
function statedIn(item: Item): KnobSteps[] {
  const added = isSet(item) ? (item.perRound?.steps ?? 0) * (item.rounds - 1) : 0
  return (isSet(item) ? item.parts : [item]).flatMap(({ resistance: call }) =>
    call.kind === 'total' || call.kind === 'byFeel' ? [call.from, call.to, call.from + added, call.to + added] : [],
  )
}

function inMeasure(item: Item, beat: Beat | undefined, section: Section): Item {
  const from = { song: beat ? songOf(beat) : null }
  const grid = section.song?.grid
  if (!beat || !grid) return remeasureItem(item, from, section)
  const [eight, here] = [eightOf(beat), eightOf(grid)]
  return editBlocksIn(item, (block) => {
    const { length } = block
    const isWhole = 'counts' in length && eight !== here && length.counts % eight === 0
    return isWhole ? { ...block, length: { counts: (length.counts / eight) * here } } : block
  })
}

/** A song with nothing but the beat of a pattern. */
const songOf = ({ bpm, beatsPerBar, strikesPerBeat }: Beat) => ({
  id: 'beat',
  title: '',
  lengthSeconds: 1,
  grid: gridOfTempo(bpm, 0, beatsPerBar),
  strikesPerBeat,
})
