import { emptySection, insertionPlace, withSection } from '#features/drafting/draftActions.ts'
import { ownPatternCommand } from '#features/drafting/ownPatternCommand.ts'
import { patternCommand } from '#features/drafting/patternCommand.ts'
import { blocksOf } from '#plan/clip/clip.ts'
import type { Command } from '#plan/commands/command.ts'
import { insertItem } from '#plan/commands/insertItem.ts'
import { insertItems } from '#plan/commands/insertItems.ts'
import { patchBlock } from '#plan/commands/patchBlock.ts'
import type { LineProblem } from '#plan/line/lineTypes.ts'
import { itemsOfLines, readEditedBlock } from '#plan/line/readLine.ts'
import { findBlock } from '#plan/places.ts'
import type { AppState } from '#store/state.ts'
import { words } from '#words/words.ts'
import type { Found } from './patternsFound.ts'

/** What typed lines come to: the change they make, the blocks it makes or changes, and what was not understood. */
interface Typed {
  /** Null while there is nothing to make or change. */
  command: Command | null
  /** Whether it can be taken as it is: a set that lacks a part is only shown. */
  ready: boolean
  ids: readonly string[]
  /** By line, counted from 1. */
  problems: readonly (LineProblem & { line: number })[]
  /** What no block could be made of. */
  rest: string
}

const NOTHING: Typed = { command: null, ready: true, ids: [], problems: [], rest: '' }

/** New blocks for typed lines, after the selection, as one step. */
export function typedBlocks({ ride, report, selection, newId }: AppState, text: string): Typed {
  if (!ride || !report || text.trim() === '') return NOTHING
  const place = insertionPlace(ride, report, selection)
  const section = place?.section ?? emptySection(ride, newId())
  const index = place?.index ?? 0
  const lines = itemsOfLines(text, words.lineWords, { ride, section }, newId)
  const items = lines.flatMap((line) => line.items)
  const problems = lines.flatMap(({ line, problems: found }) => found.map((problem) => ({ ...problem, line: line + 1 })))
  const rest = lines.flatMap((line) => (line.rest === '' ? [] : [line.rest])).join('\n')
  const [only] = items
  if (!only) return { ...NOTHING, problems, rest }
  const added =
    items.length === 1
      ? insertItem(ride, { sectionId: section.id, index, item: only })
      : insertItems(ride, { sectionId: section.id, index, items, name: words.names.blocks({ count: blocksOf(items).length }) })
  const command = place ? added : withSection(added, section)
  return { command, ready: lines.every(({ whole }) => whole), ids: items.map(({ id }) => id), problems, rest }
}

/** A pattern added whole, after the selection. */
export function addedPattern({ ride, report, selection, newId }: AppState, found: Found): Typed {
  if (!ride || !report) return NOTHING
  const place = insertionPlace(ride, report, selection)
  const section = place?.section ?? emptySection(ride, newId())
  const at = { section, index: place?.index ?? 0, newId }
  const { ids, command } =
    'own' in found ? ownPatternCommand(ride, { own: found.own, ...at }) : ofOne(patternCommand(ride, { pattern: found.pattern, ...at }))
  return { ...NOTHING, command: place ? command : withSection(command, section), ready: true, ids }
}

const ofOne = ({ id, command }: ReturnType<typeof patternCommand>) => ({ ids: [id], command })

/** What a changed line changes of the block it was written from. */
export function typedEdit({ ride }: AppState, text: string, blockId: string): Typed {
  const place = ride && findBlock(ride, blockId)
  if (!ride || !place) return NOTHING
  const { patch, problems } = readEditedBlock(text, place.block, words.lineWords, { ride, section: place.section })
  const changes = Object.keys(patch).length > 0
  return {
    command: changes ? patchBlock(ride, { blockId, patch }) : null,
    ready: true,
    ids: [blockId],
    problems: problems.map((problem) => ({ ...problem, line: 1 })),
    rest: '',
  }
}
