import type { Command } from '#plan/commands/command.ts'
import { makeCommand } from '#plan/commands/makeCommand.ts'
import { copyItem, type NewId, rememberedIds } from '#plan/copies.ts'
import { LIMITS } from '#plan/document/schema.ts'
import { editSection, withItems } from '#plan/edits.ts'
import { type Block, type Item, isSet, type Length, type Ride, type SetBlock } from '#plan/model.ts'
import { itemsText } from '#plan/names.ts'
import { findItem } from '#plan/places.ts'
import { amountOf } from '#plan/remeasure.ts'
import { eightOf } from '#plan/songs/beatGrid.ts'
import { say, type Text } from '#words/said.ts'

interface Filling {
  /** Blocks and sets that stand side by side in one section. */
  ids: readonly string[]
  /** What the section has still open at its end, in counts or seconds as it is measured. */
  open: number
}

/**
 * Fills what a song has still open with what is chosen: one block gets longer, one set gets as many more rounds as there is
 * room for, and of several a copy follows after the other, the last cut to what is left. What stands behind them in the song
 * moves to its end. Nothing happens where `fillProblem` says why not.
 */
export function fillSong(ride: Ride, { ids, open, newId }: Filling & { newId: NewId }): Command {
  const freshIds = rememberedIds(newId)
  return makeCommand(say('many.filled', { name: itemsText(ride, ids) }), (before) => {
    const run = runOf(before, ids)
    if (!run || problemOf(run, open) !== null) return before
    const { section, from, items } = run
    const eight = eightOf(section.song?.grid)
    const [only] = items
    const filled = items.length === 1 ? [longer(only!, open)] : [...items, ...copiesFor(items, open, eight, freshIds())]
    return editSection(before, section.id, (one) => withItems(one, one.blocks.toSpliced(from, items.length, ...filled)))
  })
}

/** Why a song cannot be filled with these; null where it can. */
export function fillProblem(ride: Ride, { ids, open }: Filling): Text | null {
  const run = runOf(ride, ids)
  return run ? problemOf(run, open) : say('many.fillApart')
}

function problemOf({ section, items }: Run, open: number): Text | null {
  if (!section.song) return say('many.fillNoSong')
  if (open <= 0) return say('many.fillFull')
  const [only] = items
  return items.length === 1 && isSet(only!) && roundsMore(only, open) < 1 ? say('many.fillNoRound') : null
}

interface Run {
  section: NonNullable<ReturnType<typeof findItem>>['section']
  from: number
  items: readonly Item[]
}

function runOf(ride: Ride, ids: readonly string[]): Run | undefined {
  const [first] = ids
  const section = first === undefined ? undefined : findItem(ride, first)?.section
  if (!section) return undefined
  const wanted = new Set(ids)
  const from = section.blocks.findIndex(({ id }) => wanted.has(id))
  const items = section.blocks.slice(from, from + wanted.size)
  return items.length === wanted.size && items.every(({ id }) => wanted.has(id)) ? { section, from, items } : undefined
}

const roundOf = ({ parts }: SetBlock): number => parts.reduce((sum, { length }) => sum + amountOf(length), 0)
const roundsMore = (set: SetBlock, open: number): number => Math.min(LIMITS.rounds - set.rounds, Math.floor(open / roundOf(set)))

const longer = (item: Item, open: number): Item =>
  isSet(item) ? { ...item, rounds: item.rounds + roundsMore(item, open) } : { ...item, length: lengthened(item.length, open) }

const lengthened = (length: Length, by: number): Length =>
  'counts' in length ? { counts: length.counts + by } : { seconds: length.seconds + by }

/** Copies in turn while there is room; less than an eight that is left goes to the last block. */
function copiesFor(items: readonly Item[], open: number, eight: number, newId: NewId): Item[] {
  const copies: Item[] = []
  let room = open
  for (let turn = 0; room > 0; turn++) {
    const copy = copyItem(items[turn % items.length]!, newId)
    if (isSet(copy)) {
      const rounds = Math.min(copy.rounds, Math.floor(room / roundOf(copy)))
      if (rounds < 1) break
      copies.push({ ...copy, rounds })
      room -= rounds * roundOf(copy)
      if (rounds < copy.rounds) break
    } else {
      const amount = Math.min(room, amountOf(copy.length))
      const last = copies.at(-1)
      if (amount < Math.min(eight, amountOf(copy.length)) && last && !isSet(last)) {
        copies[copies.length - 1] = { ...last, length: lengthened(last.length, amount) }
      } else copies.push({ ...copy, length: 'counts' in copy.length ? { counts: amount } : { seconds: amount } } satisfies Block)
      room -= amount
    }
  }
  return copies
}
