import type { DraftAction } from '#features/drafting/actions/draftAction.ts'
import type { DraftGround } from '#features/drafting/actions/draftGround.ts'
import { chosenBlocks } from '#features/drafting/panel/blocks/eachBlock.ts'
import type { Command } from '#plan/commands/command.ts'
import { patchEach } from '#plan/commands/patchBlocks.ts'
import type { Ride } from '#plan/model.ts'
import type { Effort } from '#units/units.ts'
import { say } from '#words/said.ts'
import { change } from './change.ts'

const effortBy = (step: 1 | -1) => ({
  does: say('actions.effortDo'),
  writes: true as const,
  keyOnly: true as const,
  can: ({ target }: DraftGround) => target.kind === 'block',
  do: (on: DraftGround) => change(on, (ride, _, ids) => withEffort(ride, ids, step)),
})

export const MORE_EFFORT: DraftAction = { id: 'stage.moreEffort', name: say('actions.moreEffort'), keys: ['Alt+ArrowUp'], ...effortBy(1) }
export const LESS_EFFORT: DraftAction = {
  id: 'stage.lessEffort',
  name: say('actions.lessEffort'),
  keys: ['Alt+ArrowDown'],
  ...effortBy(-1),
}

function withEffort(ride: Ride, ids: readonly string[], step: number): Command {
  const to = (effort: Effort) => Math.min(10, Math.max(0, effort + step))
  const patches = chosenBlocks(ride, ids).map(({ block: { id, effort } }) => ({
    blockId: id,
    patch: { effort: { from: to(effort.from), to: to(effort.to) } },
  }))
  return patchEach(ride, patches)
}
