import { type Block, type Item, isSet, type Ride } from '#plan/model.ts'
import { itemName, sectionName } from '#plan/names.ts'
import type { Text } from '#words/said.ts'
import { foundBy } from './folded.ts'

/** What in a ride can be looked for. */
type ThingKind = 'song' | 'set' | 'block' | 'move' | 'cue' | 'note'

/** A place in a ride. */
export interface Spot {
  /** Of a section, block, set, or part; null for the ride as a whole. */
  id: string | null
  /** The words of the field that is meant. */
  words?: string
}

/** Something in a ride that has a name or words of its own. */
interface Thing {
  kind: ThingKind
  text: Text
  /** Also looked in, and told beside it: the artist of a song. */
  also?: string
  /** What it stands in, by its name. */
  where?: Text
  spot: Spot
  /** How often the ride has it; `spot` is the first. */
  times: number
}

/** All of a ride that can be looked for, in its order; a move once for each song that has it, and the same words once for each block. */
export function thingsIn(ride: Ride): Thing[] {
  const found = ridesNotes(ride)
  for (const section of ride.sections) {
    const name = sectionName(ride, section)
    const { song, title } = section
    const also = [title && song?.title, song?.artist].filter((part) => part).join(', ')
    found.push({ kind: 'song', text: name, ...(also && { also }), spot: { id: section.id }, times: 1 })
    const inSong: Thing[] = []
    for (const item of section.blocks) inSong.push(...thingsOfItem(item, name))
    for (const { label } of song?.marks ?? []) inSong.push(note(label, name, section.id))
    if (section.notes) inSong.push(note(section.notes, name, section.id))
    found.push(
      ...counted(inSong, ({ kind, text, spot }) =>
        kind === 'move' ? `move:${foundBy(String(text))}` : `${kind} ${spot.id} ${spot.words}`,
      ),
    )
  }
  return found
}

/** What somebody wrote into a ride or chose for it, once each, whatever language it is read in: what other rides are searched for. */
export const usesIn = (ride: Ride): Use[] =>
  counted(
    thingsIn(ride).flatMap(({ text, where: _where, ...thing }) => (typeof text === 'string' ? [{ ...thing, text }] : [])),
    ({ kind, text, also }) => `${kind} ${foundBy(text)} ${also}`,
  )

/** Something that another ride has, in its own words. */
export type Use = Omit<Thing, 'text' | 'where'> & { text: string }

function ridesNotes({ aim, privateNotes, location }: Ride): Thing[] {
  return [aim, location, privateNotes].flatMap((text) => (text ? [note(text, undefined, null)] : []))
}

function thingsOfItem(item: Item, section: Text): Thing[] {
  const own: Thing = { kind: isSet(item) ? 'set' : 'block', text: itemName(item), where: section, spot: { id: item.id }, times: 1 }
  return isSet(item) ? [own, ...item.parts.flatMap((part) => thingsOfItem(part, section))] : [own, ...wordsOf(item, section)]
}

function wordsOf(block: Block, section: Text): Thing[] {
  const { id, move, cues, feel, easier, harder, notes } = block
  const where = itemName(block)
  const cued = cues.filter(({ text }) => text.trim() !== '').map(({ text }): Thing => ({ ...note(text, where, id), kind: 'cue' }))
  const noted = [feel, easier?.text, harder?.text, notes].flatMap((text) => (text ? [note(text, where, id)] : []))
  return [...(move ? [{ kind: 'move' as const, text: move.name, where: section, spot: { id }, times: 1 }] : []), ...cued, ...noted]
}

const note = (text: string, where: Text | undefined, id: string | null): Thing => ({
  kind: 'note',
  text,
  ...(where !== undefined && { where }),
  spot: { id, words: text.trim() },
  times: 1,
})

/** Each once, at its first place, with how often it came. */
function counted<T extends { times: number }>(things: readonly T[], keyOf: (thing: T) => string): T[] {
  const byKey = new Map<string, T>()
  for (const thing of things) {
    const key = keyOf(thing)
    const first = byKey.get(key)
    byKey.set(key, first ? { ...first, times: first.times + thing.times } : thing)
  }
  return [...byKey.values()]
}
