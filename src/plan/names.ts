import { DEFAULT_RIDERS, TYPICAL_BIKES } from '#plan/defaults.ts'
import { type Bike, type Item, isSet, type Length, type Ride, type Section } from '#plan/model.ts'
import { findBlock, findItem } from '#plan/places.ts'
import type { Rider } from '#plan/riderModel.ts'
import type { Counts } from '#units/units.ts'
import { say, type Text } from '#words/said.ts'

/** What a block or set is called: its own label, else its terrain, else its parts. */
export function itemName(item: Item): Text {
  if (item.label) return item.label
  if (!isSet(item)) return say('names.terrain', { terrain: item.terrain })
  const parts = item.parts.map(itemName)
  return parts.length > 3 ? say('names.setOfMany', { count: parts.length }) : say('names.setOf', { parts })
}

/** The same as it stands in a sentence: “flat”. */
export const quotedItem = (item: Item): Text => say('names.quoted', { name: itemName(item) })

/** What a section is called: its title, else its song, else its place in the ride ("song 2"). */
export const sectionName = (ride: Ride, section: Section): Text => section.title || section.song?.title || sectionPlace(ride, section)

/** The same as it stands in a sentence: in quotes where it is a title, bare where it is only a place. */
export function quotedSectionName(ride: Ride, section: Section): Text {
  const name = section.title || section.song?.title
  return name ? say('names.quoted', { name }) : sectionPlace(ride, section)
}

/** "song 2": where a section stands, counted from 1. */
export const sectionPlace = (ride: Ride, { id }: Section): Text =>
  say('names.songPlace', { place: ride.sections.findIndex((other) => other.id === id) + 1 })

/** A length as it is said: "4 eights", "2 sixes", "45 s". */
export const lengthText = (length: Length, eight: Counts): Text =>
  'counts' in length ? say('names.eights', { counts: length.counts, unit: eight }) : say('names.seconds', { seconds: length.seconds })

/** The names of up to three items, or how many there are: "push and recovery", "5 blocks". */
export function itemsText(ride: Ride, ids: readonly string[]): Text {
  const items = ids.flatMap((id) => findItem(ride, id)?.item ?? findBlock(ride, id)?.block ?? [])
  if (items.length === 0) return say('names.nothing')
  if (items.length <= 3) return say('names.list', { items: items.map(itemName) })
  return say(items.some(isSet) ? 'names.items' : 'names.blocks', { count: items.length })
}
/** What a rider is called: "regular rider" for a typical one, else as they were named. */
export const riderName = (rider: Named): Text => (isTypicalRider(rider) ? say('names.typicalRider', { id: rider.id }) : rider.name)

/** The same as it stands in a sentence: "the regular rider", "Anna". */
export const riderInSentence = (rider: Named): Text => (isTypicalRider(rider) ? say('names.theTypicalRider', { id: rider.id }) : rider.name)

/** What a bike is called: in words of the language while it has the name of a typical one. */
export const bikeName = (bike: Pick<Bike, 'id' | 'name'>): Text =>
  isTypicalBike(bike) ? say('names.typicalBike', { id: bike.id }) : bike.name

type Named = Pick<Rider, 'id' | 'name'>

const isTypicalRider = (rider: Named): rider is Named & { id: 'new' | 'regular' | 'strong' } => bears(DEFAULT_RIDERS, rider)

const isTypicalBike = (bike: Named): bike is Named & { id: 'knob' | 'levels' } => bears(TYPICAL_BIKES, bike)

/** Whether one of them still has the name it came with. */
const bears = (typical: readonly Named[], { id, name }: Named): boolean => typical.some((each) => each.id === id && each.name === name)
