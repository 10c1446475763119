import { editBlocksIn, mapSame } from '#plan/edits.ts'
import { type Block, type Item, isSet, type Ride, type Section } from '#plan/model.ts'
import type { KnobSteps } from '#units/units.ts'

/** What was copied, from any ride: a ride of nothing else, so that it is read, brought up to date, and refused as rides are. */
export interface Clip {
  /** Blocks and sets with the song that measures them; whole sections; or the cues of blocks. */
  kind: 'items' | 'sections' | 'cues'
  /** Its bike and datum say what steps are, its songs what counts are. */
  ride: Ride
  /** The total riders had when they came to what was copied, in the steps of its bike from its datum. */
  from: KnobSteps
}

/** What of a ride is to be copied. */
type Chosen = { ids: readonly string[] } | { sectionIds: readonly string[] } | { cueIds: readonly string[] }

/** A copy of parts of a ride, in the order of the ride; null where it has none of them. A set that is chosen goes whole. */
export function clipOf(ride: Ride, chosen: Chosen, from: KnobSteps): Clip | null {
  const kind = 'ids' in chosen ? 'items' : 'cueIds' in chosen ? 'cues' : 'sections'
  const sections =
    'sectionIds' in chosen
      ? ride.sections.filter(({ id }) => chosen.sectionIds.includes(id))
      : ride.sections.flatMap((one) => parts(one, chosen))
  return sections.length === 0 ? null : { kind, ride: rideOf(ride, sections), from }
}

function parts(section: Section, chosen: Exclude<Chosen, { sectionIds: readonly string[] }>): Section[] {
  const blocks = 'ids' in chosen ? section.blocks.flatMap((item) => itemsIn(item, chosen.ids)) : cuesIn(section, chosen.cueIds)
  return blocks.length === 0 ? [] : [{ ...section, blocks }]
}

function itemsIn(item: Item, ids: readonly string[]): readonly Item[] {
  if (ids.includes(item.id)) return [item]
  return isSet(item) ? item.parts.filter(({ id }) => ids.includes(id)) : []
}

function cuesIn({ blocks }: Section, cueIds: readonly string[]): Block[] {
  return blocksOf(blocks).flatMap((block) => {
    const cues = block.cues.filter(({ id }) => cueIds.includes(id))
    return cues.length === 0 ? [] : [{ ...block, cues }]
  })
}

/** A ride of some sections, with as little else as a ride can have. */
function rideOf({ schema, id, title, language, level, slotMinutes, datum, bike, leaders }: Ride, sections: readonly Section[]): Ride {
  const head = { schema, id, title, ...(language && { language }), level, slotMinutes, briefingSeconds: 0, clearUpSeconds: 0 }
  return { ...head, datum, bike, leaders, sections }
}

/** Blocks of items, parts of sets among them. */
export const blocksOf = (items: readonly Item[]): Block[] => items.flatMap((item) => (isSet(item) ? item.parts : [item]))

/** The section with whoever leads or speaks a block there left out where the ride has nobody of that id or, else, of that name. */
export function withLeadersOf(section: Section, from: Ride, to: Ride): Section {
  const known = new Map(
    from.leaders.map(({ id, name }) => [
      id,
      to.leaders.find((one) => one.id === id && one.name === name) ?? to.leaders.find((one) => one.name === name),
    ]),
  )
  const there = (id: string | undefined) => (id === undefined ? undefined : known.get(id)?.id)
  const change = ({ leader, mic, ...block }: Block): Block => {
    const [leads, speaks] = [there(leader), there(mic)]
    return { ...block, ...(leads !== undefined && { leader: leads }), ...(speaks !== undefined && { mic: speaks }) }
  }
  const blocks = mapSame(section.blocks, (item) =>
    editBlocksIn(item, (block) => (block.leader === undefined && block.mic === undefined ? block : change(block))),
  )
  return blocks === section.blocks ? section : { ...section, blocks }
}
