import { laySection } from '#engine/timeline/laySection.ts'
import type { DraftGround } from '#features/drafting/actions/draftGround.ts'
import { runAndSay } from '#features/drafting/draftActions.ts'
import { readClip } from '#plan/clip/carriedClip.ts'
import { blocksOf, type Clip } from '#plan/clip/clip.ts'
import { type Fitted, fitClip, itemsFor, type Remeasured } from '#plan/clip/fitClip.ts'
import type { Command } from '#plan/commands/command.ts'
import { pasteItems, replaceBlocks } from '#plan/commands/pasteItems.ts'
import { type Onto, pasteCues, pasteResistance, replaceCues } from '#plan/commands/pasteOnto.ts'
import { pasteSections } from '#plan/commands/pasteSections.ts'
import { DEFAULT_LEAD_IN } from '#plan/defaults.ts'
import { itemsOfLines } from '#plan/line/readLine.ts'
import { type Item, isSet, type Ride, type Section } from '#plan/model.ts'
import { newItems } from '#plan/newItems.ts'
import { findBlock, findItem, findSection } from '#plan/places.ts'
import { remeasureBlock } from '#plan/remeasure.ts'
import type { Carried } from '#store/clipSlice.ts'
import { say, type Text } from '#words/said.ts'
import { tell, words } from '#words/words.ts'

/** Everything that was copied, or only a part of what it says. */
export type How = 'all' | 'blocks' | 'cues' | 'resistance'

/** What pasting comes to: a command and what there is to say besides, or why not. */
type Pasting = { command: Command; notes: readonly Text[] } | { refused: Text; details?: readonly Text[] }

/** Problems of a document that are told; the first are enough to see what came. */
const MOST_PROBLEMS = 3

/** Letters of a line that is quoted back. */
const MOST_OF_LINE = 60

/** Pastes what came from the clipboard at the target, as one step, and says what it did; or says why not. */
export function paste(on: DraftGround, carried: Carried, how: How): void {
  const { store } = on
  const { ride, notify } = store.getState()
  if (!ride) return
  const pasting = prepared(on, ride, carried, how)
  if ('refused' in pasting) notify({ kind: 'info', sentence: tell(pasting.refused), details: pasting.details?.map(tell) })
  else carryOut(on, ride, pasting)
}

function prepared(on: DraftGround, ride: Ride, carried: Carried, how: How): Pasting {
  const read = readClip(carried.html)
  if (!read) return how === 'all' ? linesAfter(on, ride, carried.text) : { refused: say('clipboard.nothing') }
  if (!read.ok) return { refused: say('clipboard.damaged'), details: read.problems.slice(0, MOST_PROBLEMS).map(({ text }) => text) }
  const pasting = pastingOf(on, ride, read.clip, how)
  return 'refused' in pasting || pasting.command.apply(ride) !== ride ? pasting : { refused: say('clipboard.noRoom') }
}

/** Runs it and goes to what it made, which is then selected. */
function carryOut(on: DraftGround, ride: Ride, { command, notes }: Exclude<Pasting, { refused: Text }>): void {
  const { store, tools } = on
  const after = command.apply(ride)
  const items = newItems(ride, after)
  const songs = after.sections.filter(({ id }) => !findSection(ride, id)).map(({ id }) => id)
  if (!runAndSay(store, command, songs[0] ?? items[0])) return
  const { selectSection, selectItems, announcement, announce } = store.getState()
  if (songs[0] !== undefined) selectSection(songs[0])
  else if (items.length > 0) selectItems(items)
  const goTo = songs[0] ?? items[0] ?? idOf(on)
  if (goTo !== undefined) tools.focus(goTo)
  const said = notes.map(tell).join(' ')
  tools.note(said || null)
  if (said) announce(`${announcement} ${said}`)
}

const idOf = ({ target }: DraftGround): string | undefined => (target.kind === 'ride' ? undefined : target.id)

function pastingOf(on: DraftGround, ride: Ride, clip: Clip, how: How): Pasting {
  const fitted = fitClip(clip, ride)
  if (how === 'blocks') return ontoSong(on, ride, clip, fitted)
  if (how !== 'all' || clip.kind === 'cues') return ontoBlocks(on, ride, clip, fitted, how)
  if (clip.kind === 'sections') return songsAfter(on, ride, fitted)
  return itemsAfter(on, ride, (section) => {
    const { items, remeasured } = itemsFor(fitted.sections, section)
    return { items, notes: notesOf(ride, fitted, remeasured) }
  })
}

/** Lines of text as blocks, as they could be typed; a line that names none is left out, and said. */
function linesAfter(on: DraftGround, ride: Ride, text: string): Pasting {
  const { newId } = on.store.getState()
  let found = 0
  const pasting = itemsAfter(on, ride, (section) => {
    const lines = itemsOfLines(text, words.lineWords, { ride, section }, newId)
    const items = lines.flatMap((line) => line.items)
    found = items.length
    const [left, ...others] = lines.flatMap(({ rest }) => (rest === '' ? [] : [rest]))
    return {
      items,
      notes: left === undefined ? [] : [say('clipboard.notBlocks', { text: left.slice(0, MOST_OF_LINE), more: others.length })],
    }
  })
  return found === 0 ? { refused: say('clipboard.nothing') } : pasting
}

/** What comes in for a section, measured by its song, and what there is to say of it. */
type Bring = (section: Section) => { items: readonly Item[]; notes: readonly Text[] }

function itemsAfter({ store, target }: DraftGround, ride: Ride, bring: Bring): Pasting {
  const { newId, report } = store.getState()
  const open = report?.sections.findIndex((section) => section.open > 0) ?? -1
  const place = target.kind === 'ride' ? endOf(ride.sections.at(open)) : placeAfter(ride, target)
  if (!place) {
    const empty: Section = { id: newId(), song: null, leadInSeconds: ride.sections.length === 0 ? 0 : DEFAULT_LEAD_IN, blocks: [] }
    const { items, notes } = bring(empty)
    return { command: pasteSections(ride, { index: ride.sections.length, sections: [{ ...empty, blocks: items }], newId }), notes }
  }
  const { items, notes } = bring(place.section)
  const to =
    place.setId !== undefined && !items.some(isSet)
      ? { setId: place.setId, index: place.part + 1 }
      : { sectionId: place.section.id, index: place.index }
  const once = pasteItems(ride, { items, to, newId })
  const past = place.section.song ? grownBy(ride, once, place.section) : 0
  return { command: past > 0 ? pasteItems(ride, { items, to, newId, past }) : once, notes }
}

interface PlaceAfter {
  section: Section
  index: number
  /** The set whose part the place is after, and which part. */
  setId?: string
  part: number
}

const endOf = (section: Section | undefined): PlaceAfter | null => (section ? { section, index: section.blocks.length, part: 0 } : null)

/** Right after the last chosen item, among the parts of a set where that is one; at the end of a section. */
function placeAfter(ride: Ride, target: Exclude<DraftGround['target'], { kind: 'ride' }>): PlaceAfter | null {
  if (target.kind === 'section') return endOf(findSection(ride, target.id))
  const last = ride.sections
    .flatMap(({ blocks }) => blocks.flatMap((item) => [item.id, ...(isSet(item) ? item.parts.map(({ id }) => id) : [])]))
    .findLast((id) => target.ids.includes(id))
  if (last === undefined) return null
  const block = findBlock(ride, last)
  const place = findItem(ride, block?.set?.id ?? last)
  return place ? { section: place.section, index: place.index + 1, setId: block?.set?.id, part: block?.index ?? 0 } : null
}

/** Seconds by which a song gets longer than its music. */
function grownBy(ride: Ride, command: Command, { id }: Section): number {
  const seconds = (of: Ride) => laySection(findSection(of, id)!).seconds
  return seconds(command.apply(ride)) - seconds(ride)
}

function songsAfter({ store, target }: DraftGround, ride: Ride, fitted: Fitted): Pasting {
  const { newId } = store.getState()
  const section = sectionOf(ride, target)
  const index = section ? ride.sections.indexOf(section) + 1 : ride.sections.length
  return { command: pasteSections(ride, { sections: fitted.sections, index, newId }), notes: notesOf(ride, fitted, 'same') }
}

function ontoSong({ store, target }: DraftGround, ride: Ride, clip: Clip, fitted: Fitted): Pasting {
  const section = sectionOf(ride, target)
  if (!section) return { refused: say('clipboard.needsSong') }
  if (clip.kind === 'cues') return { refused: say('clipboard.holdsCues') }
  const { items, remeasured } = itemsFor(fitted.sections, section)
  return {
    command: replaceBlocks(ride, { sectionId: section.id, items, newId: store.getState().newId }),
    notes: notesOf(ride, fitted, remeasured),
  }
}

/** Cues or resistance, one to one; from one block onto as many as are chosen, and from several onto the chosen one and those behind it. */
function ontoBlocks({ store, target }: DraftGround, ride: Ride, clip: Clip, fitted: Fitted, how: How): Pasting {
  if (how === 'resistance' && clip.kind === 'cues') return { refused: say('clipboard.holdsCues') }
  const chosen = blocksUnder(ride, target)
  if (chosen.length === 0) return { refused: say('clipboard.needsBlock') }
  const sources = fitted.sections.flatMap((section) => blocksOf(section.blocks).map((block) => ({ block, section })))
  const all = ride.sections.flatMap(({ blocks }) => blocksOf(blocks).map(({ id }) => id))
  const targets = sources.length > 1 && chosen.length === 1 ? all.slice(all.indexOf(chosen[0]!)) : chosen
  const pairs = targets.slice(0, sources.length === 1 ? targets.length : sources.length)
  const onto = pairs.map((blockId, index): Onto => {
    const { block, section } = sources[sources.length === 1 ? 0 : index]!
    return { blockId, from: remeasureBlock(block, section, findBlock(ride, blockId)!.section) }
  })
  const { newId } = store.getState()
  const command =
    how === 'resistance'
      ? pasteResistance(ride, onto)
      : how === 'cues' && clip.kind !== 'cues'
        ? replaceCues(ride, onto, newId)
        : pasteCues(ride, onto, newId)
  const leftOver = sources.length > 1 && onto.length < sources.length
  const notes = how === 'resistance' ? notesOf(ride, fitted, 'same') : []
  return { command, notes: leftOver ? [...notes, say('clipboard.leftOver', { done: onto.length, of: sources.length })] : notes }
}

function sectionOf(ride: Ride, target: DraftGround['target']): Section | undefined {
  if (target.kind === 'ride') return undefined
  return findSection(ride, target.id) ?? findBlock(ride, target.id)?.section ?? findItem(ride, target.id)?.section
}

/** Ids of the chosen blocks in the order of the ride: of a set its parts, of a section all. */
function blocksUnder(ride: Ride, target: DraftGround['target']): string[] {
  if (target.kind === 'ride') return []
  const isChosen = (item: Item) => target.kind !== 'section' && target.ids.includes(item.id)
  return ride.sections.flatMap((section) =>
    section.blocks.flatMap((item) => {
      const whole = section.id === target.id || isChosen(item)
      return blocksOf([item])
        .filter((block) => whole || isChosen(block))
        .map(({ id }) => id)
    }),
  )
}

function notesOf({ bike }: Ride, { scaled }: Fitted, remeasured: Remeasured): Text[] {
  const notes: Text[] = []
  if (scaled !== 'same') notes.push(say(`clipboard.${scaled}`, { unit: bike.unit }))
  if (remeasured !== 'same') notes.push(say(`clipboard.${remeasured}`))
  return notes
}
