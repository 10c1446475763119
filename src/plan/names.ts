import { type Item, isSet, type Ride, type Section } from '#plan/model.ts'

/** What a block or set is called in a sentence: its own label, else its terrain, else its parts. */
export function nameOfItem(item: Item): string {
  if (item.label) return item.label
  if (!isSet(item)) return item.terrain
  const parts = item.parts.map(nameOfItem)
  return `set of ${parts.length > 3 ? `${parts.length} parts` : joinWords(parts)}`
}

/** What a section is called in a sentence: its title, else its song, else its place in the ride ("section 2"). */
export function nameOfSection(ride: Ride, section: Section): string {
  return section.title || section.song?.title || placeOfSection(ride, section)
}

/** "section 2": where a section stands, counted from 1. */
export function placeOfSection(ride: Ride, section: Section): string {
  return `section ${ride.sections.findIndex((other) => other.id === section.id) + 1}`
}

/** "a", "a and b", "a, b and c". */
export function joinWords(words: readonly string[]): string {
  return words.length < 2 ? (words[0] ?? '') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`
}
