import { useMemo } from 'react'
import { ActionButton } from '#actions/ActionButton.tsx'
import { useAction } from '#actions/useAction.ts'
import { GROUP } from '#features/drafting/actions/changing/group.ts'
import { useSelectedGround } from '#features/drafting/actions/draftGround.ts'
import { EffortFields } from '#features/drafting/panel/block/EffortFields.tsx'
import { ShiftRow } from '#features/drafting/panel/blocks/ShiftRow.tsx'
import { sharedOf } from '#features/drafting/panel/blocks/sharedOf.ts'
import { handsChoices, postureChoices, terrainChoices } from '#features/drafting/panel/choices.ts'
import { LeaderRows } from '#features/drafting/panel/LeaderRows.tsx'
import { FigureRow } from '#features/drafting/panel/rows/FigureRow.tsx'
import { SelectRow } from '#features/drafting/panel/rows/SelectRow.tsx'
import { type BlockPatch, patchBlocks } from '#plan/commands/patchBlocks.ts'
import { shiftTotals } from '#plan/commands/shiftTotals.ts'
import { type Block, isSet, type Ride } from '#plan/model.ts'
import { useApp, useAppStore } from '#store/useApp.ts'
import { words } from '#words/words.ts'

/** What several blocks share, changed for all of them at once. Blocks of a chosen set count one by one. */
export function BlocksPanel({ ids }: { ids: readonly string[] }) {
  const store = useAppStore()
  const ride = useApp((state) => state.shown!)
  const seconds = useApp((state) => secondsOf(state.shownReport?.blocks ?? [], ids))
  const blocks = useMemo(() => chosenBlocks(ride, ids), [ride, ids])
  const blockIds = blocks.map(({ id }) => id)
  const now = () => store.getState()
  const change = (patch: BlockPatch) => patchBlocks(now().ride!, { blockIds, patch })
  const edit = (patch: BlockPatch) => void now().run(change(patch))
  return (
    <>
      <header className="panel-header">
        <h2>
          <span className="panel-name">{words.names.blocks({ count: blocks.length })}</span>
        </h2>
        <p className="panel-where">{words.panels.changesAll({ seconds })}</p>
      </header>
      <div className="panel-rows">
        <EffortFields
          effort={sharedOf(blocks, ({ effort }) => effort)}
          onChange={(effort) => edit({ effort })}
          onPreview={(effort) => (effort ? now().preview(change({ effort })) : now().dropPreview())}
        />
        <FigureRow
          label={words.panels.posture}
          value={sharedOf(blocks, ({ posture }) => posture)}
          choices={postureChoices()}
          onChange={(posture) => edit({ posture })}
        />
        <FigureRow
          label={words.panels.hands}
          value={sharedOf(blocks, ({ hands }) => hands)}
          choices={handsChoices()}
          onChange={(hands) => edit({ hands })}
        />
        <ShiftRow bike={ride.bike} onShift={(steps) => void now().run(shiftTotals(now().ride!, { blockIds, steps }))} />
        <SelectRow
          label={words.panels.terrain}
          value={sharedOf(blocks, ({ terrain }) => terrain)}
          choices={terrainChoices()}
          onChange={(terrain) => edit({ terrain })}
        />
        <LeaderRows blocks={blocks} />
      </div>
      <Grouping />
    </>
  )
}

/** Makes a set of the chosen blocks, or says why it cannot. */
function Grouping() {
  const on = useSelectedGround()
  const { possible } = useAction(GROUP, on)
  return (
    <section className="panel-group panel-edit-only" aria-label={words.panels.set}>
      <ActionButton action={GROUP} on={on} />
      {typeof possible === 'string' && <p className="panel-note">{possible}</p>}
    </section>
  )
}

/** The blocks an action on these ids is about, in the order of the ride: a set stands for its parts. */
function chosenBlocks(ride: Ride, ids: readonly string[]): Block[] {
  const chosen = new Set(ids)
  return ride.sections.flatMap(({ blocks }) =>
    blocks.flatMap((item) => {
      if (!isSet(item)) return chosen.has(item.id) ? [item] : []
      return chosen.has(item.id) ? item.parts : item.parts.filter((part) => chosen.has(part.id))
    }),
  )
}

const secondsOf = (
  played: readonly { block: Block; set?: { set: { id: string } }; from: number; to: number }[],
  ids: readonly string[],
): number =>
  played
    .filter(({ block, set }) => ids.includes(block.id) || (set !== undefined && ids.includes(set.set.id)))
    .reduce((sum, { from, to }) => sum + to - from, 0)
