import type { Command } from '#plan/commands/command.ts'
import { makeCommand } from '#plan/commands/makeCommand.ts'
import { editSection, editSet, withItems, withParts } from '#plan/edits.ts'
import { type Block, type Item, isSet, type Ride, type Section, type SetBlock } from '#plan/model.ts'
import { itemName, itemsText } from '#plan/names.ts'
import { findBlock, findItem } from '#plan/places.ts'
import { amountOf } from '#plan/remeasure.ts'
import { eightOf } from '#plan/songs/beatGrid.ts'
import type { Seconds } from '#units/units.ts'
import { say, type Text } from '#words/said.ts'

/** Seconds that stand for an eight where there is no music to count. */
const TIMED_STEP: Seconds = 5

/** The run of neighbors these ids are, and the blocks beside it that give and take the room. */
interface Run {
  section: Section
  set: SetBlock | undefined
  list: readonly Item[]
  from: number
  to: number
  step: number
}

/**
 * Moves a run of neighbors an eight (five seconds where nothing is counted) earlier or later: the block before the run
 * and the one after it give and take the room, so the section keeps its length and everything else its place. Parts of a
 * set move within their round. Nothing happens where `shiftProblem` says why not.
 *
 * @param by −1 for earlier, 1 for later
 */
export function shiftRun(ride: Ride, { ids, by }: { ids: readonly string[]; by: 1 | -1 }): Command {
  const now = runOf(ride, ids)
  const inOrder = now ? now.list.slice(now.from, now.to).map(({ id }) => id) : ids
  const label = say(by < 0 ? 'many.shiftedEarlier' : 'many.shiftedLater', {
    name: itemsText(ride, inOrder),
    counted: now?.section.song?.grid !== undefined,
  })
  return makeCommand(label, (before) => {
    const run = runOf(before, ids)
    if (!run || problemOf(run, by) !== null) return before
    const list = run.list
      .with(run.from - 1, resized(run.list[run.from - 1] as Block, by * run.step))
      .with(run.to, resized(run.list[run.to] as Block, -by * run.step))
    const { section, set } = run
    return set
      ? editSet(before, set.id, (one) => withParts(one, list as readonly Block[]))
      : editSection(before, section.id, (one) => withItems(one, list))
  })
}

/** Why a run cannot be moved an eight earlier or later; null where it can. */
export function shiftProblem(ride: Ride, { ids, by }: { ids: readonly string[]; by: 1 | -1 }): Text | null {
  const run = runOf(ride, ids)
  return run ? problemOf(run, by) : say('many.shiftApart')
}

function problemOf({ list, from, to, step }: Run, by: 1 | -1): Text | null {
  const [before, after] = [list[from - 1], list[to]]
  if (!before) return say('many.shiftNothingBefore')
  if (!after) return say('many.shiftNothingAfter')
  const set = [before, after].find(isSet)
  if (set) return say('many.shiftSet', { name: itemName(set) })
  const giver = (by < 0 ? before : after) as Block
  return amountOf(giver.length) - step < step ? say('many.shiftNoRoom', { name: itemName(giver) }) : null
}

/** The unbroken run of neighbors, in a section or within one set, that these ids are; undefined where they are none. */
function runOf(ride: Ride, ids: readonly string[]): Run | undefined {
  const [first] = ids
  const item = first === undefined ? undefined : findItem(ride, first)
  const part = first === undefined ? undefined : findBlock(ride, first)
  const section = item?.section ?? part?.section
  const set = item ? undefined : part?.set
  const list = set?.parts ?? section?.blocks
  if (!section || !list) return undefined
  const wanted = new Set(ids)
  const from = list.findIndex(({ id }) => wanted.has(id))
  const to = from + wanted.size
  const run = list.slice(from, to)
  if (run.length !== wanted.size || !run.every(({ id }) => wanted.has(id))) return undefined
  return { section, set, list, from, to, step: section.song?.grid ? eightOf(section.song.grid) : TIMED_STEP }
}

function resized(block: Block, by: number): Block {
  const amount = amountOf(block.length) + by
  return { ...block, length: 'counts' in block.length ? { counts: amount } : { seconds: amount } }
}
