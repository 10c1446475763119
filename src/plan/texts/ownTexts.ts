import { LIMITS } from '#plan/document/schema.ts'
import { editBlocksOf, editSections, mapSame, patched, withItems } from '#plan/edits.ts'
import { type Block, type Cue, isSet, type Ride, type Section } from '#plan/model.ts'

/** Where somebody's own words may stand in a ride. */
export type TextKind =
  | 'title'
  | 'aim'
  | 'location'
  | 'instructor'
  | 'standIn'
  | 'privateNotes'
  | 'avoidMove'
  | 'section'
  | 'mark'
  | 'sectionNotes'
  | 'block'
  | 'set'
  | 'cue'
  | 'feel'
  | 'easier'
  | 'harder'
  | 'move'
  | 'blockNotes'

/** One text of a ride's own words, and where it stands. */
export interface TextPlace {
  readonly kind: TextKind
  /** The only one of its ride: the same for as long as nothing is added or moved. */
  readonly key: string
  readonly sectionId?: string
  /** Id of the block or set it belongs to. */
  readonly itemId?: string
  readonly cueId?: string
  /** Characters it may have at most in a document. */
  readonly most: number
  /** It may not be empty, and what it belongs to does not go with it. */
  readonly needed?: true
}

type Change = (text: string, place: TextPlace) => string

/**
 * The ride with every text of its own words changed, in the order of the ride; what is unchanged is the very same object.
 * What songs are called is not among them: that is the music's, and songs are known by it. A text that comes out empty goes,
 * with the cue, the option, or the mark that was nothing but the text; a count-in without words stays one.
 */
export function mapTexts(ride: Ride, change: Change): Ride {
  const own = (key: string, kind: TextKind, text: string, most: number) => change(text, { kind, key, most })
  const optional = (key: string, kind: TextKind, text: string | undefined, most: number) =>
    text === undefined ? undefined : unlessEmptied(text, own(key, kind, text, most))
  const standIn = ride.standIn && {
    room: optional('standIn.room', 'standIn', ride.standIn.room, LIMITS.notes),
    regulars: optional('standIn.regulars', 'standIn', ride.standIn.regulars, LIMITS.notes),
    mustDo: optional('standIn.mustDo', 'standIn', ride.standIn.mustDo, LIMITS.notes),
    mustNot: optional('standIn.mustNot', 'standIn', ride.standIn.mustNot, LIMITS.notes),
  }
  const head = patched(ride, {
    title: own('title', 'title', ride.title, LIMITS.line),
    aim: optional('aim', 'aim', ride.aim, LIMITS.line),
    location: optional('location', 'location', ride.location, LIMITS.name),
    leaders: mapSame(ride.leaders, (leader) =>
      patched(leader, { name: own(`leader ${leader.id}`, 'instructor', leader.name, LIMITS.name) }),
    ),
    avoidMoves: ride.avoidMoves?.flatMap((move, i) => unlessEmptied(move, own(`avoidMoves.${i}`, 'avoidMove', move, LIMITS.name)) ?? []),
    ...(standIn && { standIn: patched(ride.standIn!, standIn) }),
    privateNotes: optional('privateNotes', 'privateNotes', ride.privateNotes, LIMITS.notes),
  })
  return editSections(head, (section) => sectionWith(section, change))
}

function sectionWith(section: Section, change: Change): Section {
  const { id: sectionId } = section
  const own = (kind: TextKind, text: string | undefined, most: number, at = '') =>
    text === undefined ? undefined : unlessEmptied(text, change(text, { kind, key: `section ${sectionId} ${kind}${at}`, sectionId, most }))
  const { song } = section
  const marks = song?.marks?.flatMap((mark, i) => {
    const label = own('mark', mark.label, LIMITS.name, ` ${i}`)
    return label === undefined ? [] : [patched(mark, { label })]
  })
  const headed = patched(section, {
    title: own('section', section.title, LIMITS.line),
    ...(song && marks && { song: patched(song, { marks }) }),
  })
  const labelled = withItems(
    headed,
    mapSame(headed.blocks, (item) => {
      if (!isSet(item) || item.label === undefined) return item
      const place = { kind: 'set', key: `set.${item.id}`, sectionId, itemId: item.id, most: LIMITS.name } as const
      return patched(item, { label: unlessEmptied(item.label, change(item.label, place)) })
    }),
  )
  return patched(
    editBlocksOf(labelled, (block) => blockWith(block, sectionId, change)),
    { notes: own('sectionNotes', section.notes, LIMITS.notes) },
  )
}

function blockWith(block: Block, sectionId: string, change: Change): Block {
  const { id: itemId, easier, harder, move } = block
  const at = (kind: TextKind, most: number): TextPlace => ({ kind, key: `block ${itemId} ${kind}`, sectionId, itemId, most })
  const own = (kind: TextKind, text: string | undefined, most: number) =>
    text === undefined ? undefined : unlessEmptied(text, change(text, at(kind, most)))
  const option = (kind: 'easier' | 'harder', text: string | undefined) => {
    const next = own(kind, text, LIMITS.line)
    return next === undefined ? undefined : { text: next }
  }
  return patched(block, {
    label: own('block', block.label, LIMITS.name),
    ...(move && { move: patched(move, { name: change(move.name, { ...at('move', LIMITS.name), needed: true }) }) }),
    cues: cuesWith(block.cues, itemId, sectionId, change),
    feel: own('feel', block.feel, LIMITS.line),
    easier: option('easier', easier?.text),
    harder: option('harder', harder?.text),
    notes: own('blockNotes', block.notes, LIMITS.notes),
  })
}

function cuesWith(cues: readonly Cue[], itemId: string, sectionId: string, change: Change): readonly Cue[] {
  const next = mapSame(cues, (cue) => {
    const place = { kind: 'cue', key: `cue ${itemId} ${cue.id}`, sectionId, itemId, cueId: cue.id, most: LIMITS.cueText } as const
    return patched(cue, { text: change(cue.text, place) })
  })
  const isEmptied = (cue: Cue, i: number) => cue.moment !== 'countIn' && unlessEmptied(cues[i]!.text, cue.text) === undefined
  return next.some(isEmptied) ? next.filter((cue, i) => !isEmptied(cue, i)) : next
}

/** A changed text, or nothing where the change left nothing of it; what was empty before stays as it was. */
const unlessEmptied = (text: string, next: string): string | undefined => (next !== text && next.trim() === '' ? undefined : next)
