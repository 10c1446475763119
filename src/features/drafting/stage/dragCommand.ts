import type { RideReport } from '#engine/report.ts'
import { type Own, ownPatternCommand } from '#features/drafting/ownPatternCommand.ts'
import { patternCommand } from '#features/drafting/patternCommand.ts'
import type { Command } from '#plan/commands/command.ts'
import { moveItem } from '#plan/commands/moveItem.ts'
import { movePart, type PartTarget } from '#plan/commands/movePart.ts'
import { moveSection } from '#plan/commands/moveSection.ts'
import type { NewId } from '#plan/copies.ts'
import type { Ride } from '#plan/model.ts'
import { PATTERNS } from '#plan/patterns/patterns.ts'
import { findBlock, findSection } from '#plan/places.ts'
import type { Seconds } from '#units/units.ts'
import type { DragKind } from './drag/DragHandle.tsx'
import { dropTarget, sectionDropIndex } from './dropTarget.ts'

/** What is in the hand. */
export interface Dragged {
  kind: DragKind
  id: string
}

/** The ride as it was when the drag began: what every place under the pointer is read from. */
export interface DragGround {
  ride: Ride
  report: RideReport
}

/** A command and what tells it from another place's; the same key again needs no second look. */
export interface KeyedCommand {
  key: string
  command: Command
  /** The section, set or block that is in the hand, by the id it has once it is dropped. */
  id: string
  /** All that is dropped, where it is more than one. */
  ids?: readonly string[]
  /** What there is to say of it once it is dropped. */
  note?: string | undefined
}

/**
 * What dropping `dragged` at a time on the stage would do to the ride as it was when the drag began.
 *
 * @param owns the patterns that are kept, for one that is dragged
 */
export function dragCommand(
  dragged: Dragged,
  at: Seconds,
  { ride, report }: DragGround,
  ids: NewId,
  owns: readonly Own[] = [],
): KeyedCommand | null {
  if (dragged.kind === 'section') {
    const index = sectionDropIndex(report, at, dragged.id)
    return { key: String(index), id: dragged.id, command: moveSection(ride, { sectionId: dragged.id, index }) }
  }
  const isPart = dragged.kind === 'block' && findBlock(ride, dragged.id)?.set !== undefined
  const target = dropTarget(ride, report, at, new Set([dragged.id]), dragged.kind === 'block')
  if (!target) return null
  const key = `${'setId' in target ? target.setId : target.sectionId} ${target.index}`
  if (dragged.kind === 'pattern') return patternDrop(key, dragged.id, target, { ride, report }, ids)
  if (dragged.kind === 'own')
    return ownDrop(
      key,
      owns.find((own) => own.id === dragged.id),
      target,
      ride,
      ids,
    )
  const { id } = dragged
  if ('sectionId' in target && !isPart)
    return { key, id, command: moveItem(ride, { itemId: id, sectionId: target.sectionId, index: target.index }) }
  return { key, id, command: movePart(ride, { blockId: id, to: target }) }
}

function patternDrop(key: string, patternId: string, target: PartTarget, { ride }: DragGround, newId: NewId): KeyedCommand | null {
  const pattern = PATTERNS.find((other) => other.id === patternId)
  const section = 'sectionId' in target ? findSection(ride, target.sectionId) : undefined
  if (!pattern || !section) return null
  const { id, command, grows } = patternCommand(ride, { pattern, section, index: target.index, newId })
  return { key, id, command, note: grows }
}

function ownDrop(key: string, own: Own | undefined, target: PartTarget, ride: Ride, newId: NewId): KeyedCommand | null {
  const section = 'sectionId' in target ? findSection(ride, target.sectionId) : undefined
  if (!own || !section) return null
  const { ids, command, note } = ownPatternCommand(ride, { own, section, index: target.index, newId })
  return { key, id: ids[0]!, ids, command, note }
}
