import { blocksOf, type Clip, withLeadersOf } from '#plan/clip/clip.ts'
import { type Block, type Item, isCounted, type Ride, type Section } from '#plan/model.ts'
import { stepsOnBike } from '#plan/patterns/stepsOnBike.ts'
import { remeasureItem } from '#plan/remeasure.ts'
import { onScale } from '#plan/scale/onScale.ts'
import type { Reading } from '#plan/scale/reading.ts'
import type { KnobSteps } from '#units/units.ts'

/** How steps came over: as they were, rounded to the steps of the other bike, or as what weighs the same where its unit is another. */
type Scaled = 'same' | 'rounded' | 'byLoad'

/** How lengths came over: as they were, from counts to the clock, or from the clock to whole eights. */
export type Remeasured = 'same' | 'toSeconds' | 'toEights'

/** What was copied, as another ride says it. */
export interface Fitted {
  sections: readonly Section[]
  /** The total riders had when they came to it, in the steps and from the datum of this ride. */
  from: KnobSteps
  scaled: Scaled
}

/**
 * What was copied, in the steps of a ride and led by its people. Calls stay as they are called: “add one” adds one at
 * whatever total riders have there. On a bike of the same unit a turn stays a turn; else totals become what weighs the same.
 */
export function fitClip(clip: Clip, to: Ride): Fitted {
  const from = clip.ride
  const led = from.sections.map((section) => withLeadersOf(section, from, to))
  const [a, b] = [from.bike, to.bike]
  if (from.datum === to.datum && a.unit === b.unit && a.stepsPerUnit === b.stepsPerUnit)
    return { sections: led, from: clip.from, scaled: 'same' }
  const byLoad = a.unit !== b.unit
  // They come to it from a total, not from the start of a class, where a stay would be written as a way from one start to the other.
  const entered = { ...from, sections: [enteredAt(clip.from), ...led] }
  const scaled = onScale(entered, to, byLoad ? loadReading(from, to) : undefined)
  const [block] = blocksOf(scaled.sections[0]!.blocks)
  const entering = block?.resistance.kind === 'total' ? block.resistance.from : clip.from
  return { sections: scaled.sections.slice(1), from: entering, scaled: byLoad ? 'byLoad' : 'rounded' }
}

/** Steps of one bike as those of another that weigh the same at the reference cadences. */
function loadReading(from: Ride, to: Ride): Reading {
  const base = from.datum === 'base' ? 0 : Math.round(from.bike.base * from.bike.stepsPerUnit)
  const total = (steps: KnobSteps) => stepsOnBike(steps - base, from.bike, to)
  return { total, change: (steps) => total(base + steps) - total(base) }
}

/** A section that has riders at a total. */
function enteredAt(total: KnobSteps): Section {
  const block: Block = {
    id: 'entered',
    terrain: 'flat',
    length: { seconds: 1 },
    posture: 'seated',
    hands: 'centre',
    resistance: { kind: 'total', from: total, to: total },
    effort: { from: 0, to: 0 },
    cues: [],
  }
  return { id: 'entered', leadInSeconds: 0, blocks: [block] }
}

/** The items of sections as another section measures them, and what became of their lengths. */
export function itemsFor(sections: readonly Section[], target: Section): { items: Item[]; remeasured: Remeasured } {
  const isOther = sections.some((section) => section.blocks.length > 0 && isCounted(section) !== isCounted(target))
  return {
    items: sections.flatMap((section) => section.blocks.map((item) => remeasureItem(item, section, target))),
    remeasured: !isOther ? 'same' : isCounted(target) ? 'toEights' : 'toSeconds',
  }
}
