import type { DraftAction } from '#features/drafting/actions/draftAction.ts'
import { itemOf } from '#features/drafting/actions/draftAction.ts'
import type { DraftGround } from '#features/drafting/actions/draftGround.ts'
import { runAndSay } from '#features/drafting/draftActions.ts'
import type { Command } from '#plan/commands/command.ts'
import { moveItem } from '#plan/commands/moveItem.ts'
import { movePart, type PartTarget } from '#plan/commands/movePart.ts'
import { moveSection } from '#plan/commands/moveSection.ts'
import { isSet, type Ride, type Section, type SetBlock } from '#plan/model.ts'
import { findBlock, findItem } from '#plan/places.ts'
import { say } from '#words/said.ts'
import { change } from './change.ts'

type Step = 1 | -1

const moveBy = (step: Step) => ({
  does: say('actions.moveDo'),
  writes: true as const,
  inMenu: true as const,
  keyOnly: true as const,
  can: (on: DraftGround) => {
    const { ride } = on.store.getState()
    if (!ride || on.target.kind === 'ride') return false
    return commandOf(ride, on, step) !== null || say(step < 0 ? 'actions.nothingBefore' : 'actions.nothingAfter')
  },
  do: (on: DraftGround) => {
    const { ride } = on.store.getState()
    if (on.target.kind !== 'section') return change(on, () => commandOf(ride!, on, step))
    const command = ride && commandOf(ride, on, step)
    if (!command) return
    runAndSay(on.store, command, on.target.id)
    on.tools.focus(on.target.id)
  },
})

const moveToSong = (step: Step) => ({
  does: say('actions.moveToSongDo'),
  writes: true as const,
  keyOnly: true as const,
  can: (on: DraftGround) => {
    const { ride } = on.store.getState()
    const item = itemOf(on)
    if (!ride || !item) return false
    return moveToNextSection(ride, item.id, step) !== null || say(step < 0 ? 'actions.noSongBefore' : 'actions.noSongAfter')
  },
  do: (on: DraftGround) => change(on, (ride, id) => moveToNextSection(ride, id, step)),
})

export const MOVE_BEFORE: DraftAction = { id: 'stage.moveBefore', name: say('actions.moveBefore'), keys: ['Alt+ArrowLeft'], ...moveBy(-1) }
export const MOVE_AFTER: DraftAction = { id: 'stage.moveAfter', name: say('actions.moveAfter'), keys: ['Alt+ArrowRight'], ...moveBy(1) }
export const MOVE_TO_SONG_BEFORE: DraftAction = {
  id: 'stage.moveToSongBefore',
  name: say('actions.moveToSongBefore'),
  keys: ['Alt+Shift+ArrowLeft'],
  ...moveToSong(-1),
}
export const MOVE_TO_SONG_AFTER: DraftAction = {
  id: 'stage.moveToSongAfter',
  name: say('actions.moveToSongAfter'),
  keys: ['Alt+Shift+ArrowRight'],
  ...moveToSong(1),
}

function commandOf(ride: Ride, on: DraftGround, step: Step): Command | null {
  const item = itemOf(on)
  if (item) return moveByOne(ride, item.id, step)
  if (on.target.kind !== 'section') return null
  const { id } = on.target
  const index = ride.sections.findIndex((section) => section.id === id) + step
  return index >= 0 && index < ride.sections.length ? moveSection(ride, { sectionId: id, index }) : null
}

/** One place on among its neighbours, as a drag would: into a set and out of it, and over a song’s edge into the next song. */
function moveByOne(ride: Ride, id: string, step: Step): Command | null {
  const place = findBlock(ride, id) ?? findItem(ride, id)
  if (!place) return null
  const index = place.index + step
  if ('set' in place && place.set) {
    const { parts } = place.set
    return index >= 0 && index < parts.length
      ? movePart(ride, { blockId: id, to: { setId: place.set.id, index } })
      : movePart(ride, { blockId: id, to: besideSet(ride, place.section, place.set, step) })
  }
  const neighbour = place.section.blocks[index]
  if (!neighbour) return moveToNextSection(ride, id, step)
  if ('block' in place && isSet(neighbour))
    return movePart(ride, { blockId: id, to: { setId: neighbour.id, index: step > 0 ? 0 : neighbour.parts.length } })
  return moveItem(ride, { itemId: id, sectionId: place.section.id, index })
}

/** Before or behind a set, for one of its parts: a set that it leaves empty goes, and stands for no place. */
function besideSet(ride: Ride, section: Section, set: SetBlock, step: Step): PartTarget {
  const { index } = findItem(ride, set.id)!
  return { sectionId: section.id, index: step > 0 && set.parts.length > 1 ? index + 1 : index }
}

function moveToNextSection(ride: Ride, id: string, step: Step): Command | null {
  const place = findBlock(ride, id) ?? findItem(ride, id)
  if (!place) return null
  const target = ride.sections[ride.sections.indexOf(place.section) + step]
  if (!target) return null
  const to = { sectionId: target.id, index: step > 0 ? 0 : target.blocks.length }
  return 'set' in place && place.set ? movePart(ride, { blockId: id, to }) : moveItem(ride, { itemId: id, ...to })
}
