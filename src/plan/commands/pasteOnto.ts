import type { Command } from '#plan/commands/command.ts'
import { makeCommand } from '#plan/commands/makeCommand.ts'
import { type NewId, rememberedIds } from '#plan/copies.ts'
import { editBlocksOf, editSections, patched } from '#plan/edits.ts'
import type { Block, Cue, Ride } from '#plan/model.ts'
import { itemsText } from '#plan/names.ts'
import { say } from '#words/said.ts'

/** A block of the ride, and the one whose words or calls it is given. */
export interface Onto {
  blockId: string
  from: Block
}

/** Adds copies of cues after those that blocks have. */
export const pasteCues = (ride: Ride, onto: readonly Onto[], newId: NewId): Command => cuesOnto(ride, onto, newId, 'pastedCues')

/** Gives blocks copies of the cues of others, in place of their own. */
export const replaceCues = (ride: Ride, onto: readonly Onto[], newId: NewId): Command => cuesOnto(ride, onto, newId, 'replacedCues')

function cuesOnto(ride: Ride, onto: readonly Onto[], newId: NewId, how: 'pastedCues' | 'replacedCues'): Command {
  const freshIds = rememberedIds(newId)
  const label = say(`clipboard.${how}`, { name: namesOf(ride, onto) })
  return makeCommand(label, (before) => {
    const nextId = freshIds()
    return editOnto(before, onto, (block, { cues }) => {
      const copies = cues.map((cue): Cue => ({ ...cue, id: nextId() }))
      if (how === 'pastedCues') return copies.length === 0 ? block : { ...block, cues: [...block.cues, ...copies] }
      return copies.length === 0 && block.cues.length === 0 ? block : { ...block, cues: copies }
    })
  })
}

/** Gives blocks the calls of the knob of others, and the totals their instructor rides, in place of their own. */
export function pasteResistance(ride: Ride, onto: readonly Onto[]): Command {
  return makeCommand(say('clipboard.pastedResistance', { name: namesOf(ride, onto) }), (before) =>
    editOnto(before, onto, (block, { resistance, ownTotal }) => patched(block, { resistance, ownTotal })),
  )
}

const namesOf = (ride: Ride, onto: readonly Onto[]) =>
  itemsText(
    ride,
    onto.map(({ blockId }) => blockId),
  )

function editOnto(ride: Ride, onto: readonly Onto[], change: (block: Block, from: Block) => Block): Ride {
  const given = new Map(onto.map(({ blockId, from }) => [blockId, from]))
  return editSections(ride, (section) =>
    editBlocksOf(section, (block) => {
      const from = given.get(block.id)
      return from ? change(block, from) : block
    }),
  )
}
