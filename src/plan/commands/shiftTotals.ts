import type { Command } from '#plan/commands/command.ts'
import { makeCommand } from '#plan/commands/makeCommand.ts'
import { editBlocksIn, editSections, mapSame, patched, withItems } from '#plan/edits.ts'
import { movedBy } from '#plan/ledger/movedBy.ts'
import { turnedBy } from '#plan/ledger/turnedBy.ts'
import { isSet, type Resistance, type Ride } from '#plan/model.ts'
import { itemsText } from '#plan/names.ts'
import { wholeStep } from '#plan/tidyBlock.ts'
import type { KnobSteps } from '#units/units.ts'
import { say } from '#words/said.ts'

/**
 * Raises (or, below zero, lowers) the totals that chosen blocks arrive at by the same whole
 * steps. Stated totals move. A change or a stay is altered only where what it starts from was
 * not moved already, and never inside a set: there it would add once a round. What follows
 * the chosen blocks without a total of its own carries the shift on.
 */
export function shiftTotals(ride: Ride, { blockIds, steps }: { blockIds: readonly string[]; steps: KnobSteps }): Command {
  const chosen = new Set(blockIds)
  const shift = wholeStep(steps)
  const label = say(shift < 0 ? 'commands.lowered' : 'commands.raised', { name: itemsText(ride, blockIds) })
  return makeCommand(label, (before) => {
    if (shift === 0) return before
    let carried = false
    return editSections(before, (section) =>
      withItems(
        section,
        mapSame(section.blocks, (item) =>
          editBlocksIn(item, (block) => {
            const call = block.resistance
            const relative = call.kind === 'keep' || call.kind === 'change'
            const stays = !chosen.has(block.id) || call.kind === 'allOff' || (relative && isSet(item))
            const next = stays ? call : shifted(call, shift, carried)
            carried = stays ? carried && relative : true
            return patched(block, { resistance: next })
          }),
        ),
      ),
    )
  })
}

function shifted(call: Exclude<Resistance, { kind: 'allOff' }>, shift: KnobSteps, carried: boolean): Resistance {
  switch (call.kind) {
    case 'keep':
    case 'change': {
      const own = call.kind === 'keep' ? 0 : call.steps
      const moved = carried ? call : turnedBy(call, own + shift)
      return { ...moved, ...(moved.checkpoint && { checkpoint: movedBy(moved.checkpoint, shift) }) }
    }
    case 'total':
    case 'byFeel':
      return movedBy(call, shift)
  }
}
