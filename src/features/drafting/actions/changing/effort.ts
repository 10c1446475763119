import type { DraftAction } from '#features/drafting/actions/draftAction.ts'
import type { DraftGround } from '#features/drafting/actions/draftGround.ts'
import type { Command } from '#plan/commands/command.ts'
import { patchBlock } from '#plan/commands/patchBlock.ts'
import type { Ride } from '#plan/model.ts'
import { findBlock } from '#plan/places.ts'
import type { Effort } from '#units/units.ts'
import { say } from '#words/said.ts'
import { change } from './change.ts'

const effortBy = (step: 1 | -1) => ({
  does: say('actions.effortDo'),
  writes: true as const,
  keyOnly: true as const,
  can: ({ target }: DraftGround) => target.kind === 'block',
  do: (on: DraftGround) => change(on, (ride, id) => withEffort(ride, id, step)),
})

export const MORE_EFFORT: DraftAction = { id: 'stage.moreEffort', name: say('actions.moreEffort'), keys: ['Alt+ArrowUp'], ...effortBy(1) }
export const LESS_EFFORT: DraftAction = {
  id: 'stage.lessEffort',
  name: say('actions.lessEffort'),
  keys: ['Alt+ArrowDown'],
  ...effortBy(-1),
}

function withEffort(ride: Ride, id: string, step: number): Command | null {
  const block = findBlock(ride, id)?.block
  if (!block) return null
  const to = (effort: Effort) => Math.min(10, Math.max(0, effort + step))
  return patchBlock(ride, { blockId: id, patch: { effort: { from: to(block.effort.from), to: to(block.effort.to) } } })
}
