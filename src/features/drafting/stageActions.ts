import type { RideReport } from '#engine/report.ts'
import type { Command } from '#plan/commands/command.ts'
import { deleteItems } from '#plan/commands/deleteItems.ts'
import { deleteSection } from '#plan/commands/deleteSection.ts'
import { duplicateItems } from '#plan/commands/duplicateItems.ts'
import { duplicateSection } from '#plan/commands/duplicateSection.ts'
import { groupIntoSet } from '#plan/commands/groupIntoSet.ts'
import { joinBlocks } from '#plan/commands/joinBlocks.ts'
import { splitBlock } from '#plan/commands/splitBlock.ts'
import { splitSection } from '#plan/commands/splitSection.ts'
import { ungroupSet } from '#plan/commands/ungroupSet.ts'
import { isSet, type Ride } from '#plan/model.ts'
import { newItems } from '#plan/newItems.ts'
import { findBlock } from '#plan/places.ts'
import { eightOf } from '#plan/songs/beatGrid.ts'
import type { AppStore } from '#store/state.ts'
import { runAndSay } from './draftActions.ts'

/** What is done to blocks and sets, by key and by button alike. */
export type ItemAction = 'duplicate' | 'split' | 'join' | 'group' | 'ungroup' | 'section' | 'delete'
export type SectionAction = 'duplicate' | 'delete'

export interface StageTools {
  store: AppStore
  /** Moves the focus to the stage's stop for this id, wherever it stands after the change. */
  focus: (id: string) => void
}

/** Rounds a new set starts with. */
const FIRST_ROUNDS = 2

/**
 * The command of an action.
 *
 * @param id the block or set the action is about; where it takes several, it is one of `ids`
 * @returns null where only a block can be meant and `id` is none
 */
function itemAction(
  ride: Ride,
  report: RideReport,
  action: ItemAction,
  id: string,
  ids: readonly string[],
  newId: () => string,
): Command | null {
  const place = findBlock(ride, id)
  switch (action) {
    case 'duplicate':
      return duplicateItems(ride, { ids, newId })
    case 'split':
      return place ? splitInHalf(ride, id, newId) : null
    case 'join':
      return place ? joinBlocks(ride, { blockId: id }) : null
    case 'group':
      return groupIntoSet(ride, { ids, rounds: FIRST_ROUNDS, newId })
    case 'ungroup':
      return ungroupSet(ride, { setId: place?.set?.id ?? id, newId })
    case 'section':
      return cutSection(ride, report, place?.set?.id ?? id, newId)
    case 'delete':
      return deleteItems(ride, ids)
  }
}

/** What these make is what one goes on with; the second half of a split block is not. */
const MAKES_NEW: ReadonlySet<ItemAction> = new Set(['duplicate', 'group', 'ungroup'])

/**
 * Does it to what is chosen, says what it did, and goes to where one goes on: what it has made, the same block, or
 * the neighbour of what is gone.
 */
export function actOnItem({ store, focus }: StageTools, action: ItemAction, id: string): void {
  const { ride, report, selection, newId } = store.getState()
  if (!ride || !report) return
  const ids = selection.ids.includes(id) ? selection.ids : [id]
  const command = itemAction(ride, report, action, id, ids, newId)
  if (!command) return
  const done = runAndSay(store, command, id)
  const state = store.getState()
  const made = done && MAKES_NEW.has(action) ? newItems(ride, state.ride!) : []
  const next = made[0] ?? (action === 'delete' ? neighbourOf(ride, ids) : id)
  const { sectionId } = selection
  if (made.length > 0) state.selectItems(made)
  else if (next === undefined && sectionId !== null) state.selectSection(sectionId)
  else if (next !== undefined && next !== id) state.selectItem(next)
  const target = next ?? sectionId
  if (target !== null) focus(target)
}

/** Copies or deletes a whole section, says so, and goes to the copy, or to the neighbour of the one that is gone. */
export function actOnSection({ store, focus }: StageTools, action: SectionAction, sectionId: string): void {
  const { ride, newId } = store.getState()
  if (!ride) return
  const index = ride.sections.findIndex((section) => section.id === sectionId)
  const neighbour = ride.sections[index + 1] ?? ride.sections[index - 1]
  const copies = action === 'duplicate'
  const done = runAndSay(store, copies ? duplicateSection(ride, { sectionId, newId }) : deleteSection(ride, { sectionId }), sectionId)
  const target = copies ? (done ? store.getState().ride!.sections[index + 1]?.id : sectionId) : neighbour?.id
  if (target === undefined) return
  store.getState().selectSection(target)
  focus(target)
}

/** Halves at the nearest whole eight, so that a split leaves no crooked block where it need not. */
function splitInHalf(ride: Ride, id: string, newId: () => string): Command | null {
  const place = findBlock(ride, id)
  if (!place) return null
  const { length } = place.block
  if ('seconds' in length) return splitBlock(ride, { blockId: id, at: Math.round(length.seconds / 2), newId })
  const eight = eightOf(place.section.song?.grid)
  const half = Math.round(length.counts / 2 / eight) * eight
  return splitBlock(ride, { blockId: id, at: half > 0 && half < length.counts ? half : Math.round(length.counts / 2), newId })
}

/** Cuts the section before a block or set, which keeps the foot it has. */
function cutSection(ride: Ride, { blocks }: RideReport, itemId: string, newId: () => string): Command {
  const first = blocks.find(({ block, set }) => block.id === itemId || set?.set.id === itemId)
  return splitSection(ride, { itemId, foot: first?.foot ?? null, newId })
}

/** The block after those that go, else the one before them; undefined in a ride that has no other. */
function neighbourOf(ride: Ride, ids: readonly string[]): string | undefined {
  const gone = new Set(ids)
  const blocks = ride.sections.flatMap((section) =>
    section.blocks.flatMap((item) =>
      (isSet(item) ? item.parts : [item]).map(({ id }) => ({ id, goes: gone.has(id) || gone.has(item.id) })),
    ),
  )
  const last = blocks.findLastIndex(({ goes }) => goes)
  return (blocks.slice(last + 1)[0] ?? blocks.slice(0, last).findLast(({ goes }) => !goes))?.id
}
