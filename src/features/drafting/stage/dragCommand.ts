import { blockOfPattern } from '#engine/cues/blockOfPattern.ts'
import type { Command } from '#plan/commands/command.ts'
import { insertItem } from '#plan/commands/insertItem.ts'
import { moveItem } from '#plan/commands/moveItem.ts'
import { movePart, type PartTarget } from '#plan/commands/movePart.ts'
import { moveSection } from '#plan/commands/moveSection.ts'
import type { NewId } from '#plan/copies.ts'
import { PATTERNS } from '#plan/patterns.ts'
import { findBlock, findSection } from '#plan/places.ts'
import type { Seconds } from '#units/units.ts'
import type { DragGround, Dragged } from './drag/StageDrag.tsx'
import { dropTarget, sectionDropIndex } from './dropTarget.ts'

/** A command and what tells it from another place's; the same key again needs no second look. */
export interface KeyedCommand {
  key: string
  command: Command
}

/** What dropping `dragged` at a time on the stage would do to the ride as it was when the drag began. */
export function dragCommand(dragged: Dragged, at: Seconds, { ride, report }: DragGround, ids: NewId): KeyedCommand | null {
  if (dragged.kind === 'section') {
    const index = sectionDropIndex(report, at, dragged.id)
    return { key: String(index), command: moveSection(ride, { sectionId: dragged.id, index }) }
  }
  const isPart = dragged.kind === 'block' && findBlock(ride, dragged.id)?.set !== undefined
  const target = dropTarget(ride, report, at, new Set([dragged.id]), dragged.kind === 'block')
  if (!target) return null
  const key = `${'setId' in target ? target.setId : target.sectionId} ${target.index}`
  if (dragged.kind === 'pattern') return withKey(key, patternCommand(dragged.id, target, { ride, report }, ids))
  if ('sectionId' in target && !isPart)
    return { key, command: moveItem(ride, { itemId: dragged.id, sectionId: target.sectionId, index: target.index }) }
  return { key, command: movePart(ride, { blockId: dragged.id, to: target }) }
}

const withKey = (key: string, command: Command | null): KeyedCommand | null => command && { key, command }

function patternCommand(patternId: string, target: PartTarget, { ride }: DragGround, ids: NewId): Command | null {
  const pattern = PATTERNS.find((other) => other.id === patternId)
  const section = 'sectionId' in target ? findSection(ride, target.sectionId) : undefined
  if (!pattern || !section) return null
  return insertItem(ride, { sectionId: section.id, index: target.index, item: blockOfPattern(pattern, ride, section, ids) })
}
