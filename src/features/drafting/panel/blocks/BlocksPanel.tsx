import { useMemo } from 'react'
import { ActionButton } from '#actions/ActionButton.tsx'
import { useAction } from '#actions/useAction.ts'
import { GROUP } from '#features/drafting/actions/changing/group.ts'
import { useSelectedGround } from '#features/drafting/actions/draftGround.ts'
import { leadChoices } from '#features/drafting/panel/block/LeadFootRow.tsx'
import { handsChoices, postureChoices, terrainChoices } from '#features/drafting/panel/choices.ts'
import { LeaderRows } from '#features/drafting/panel/LeaderRows.tsx'
import { FigureRow } from '#features/drafting/panel/rows/FigureRow.tsx'
import { SelectRow } from '#features/drafting/panel/rows/SelectRow.tsx'
import { TextRow } from '#features/drafting/panel/rows/TextRow.tsx'
import type { Block } from '#plan/model.ts'
import { useApp, useAppStore } from '#store/useApp.ts'
import { words } from '#words/words.ts'
import { BlocksCadence } from './BlocksCadence.tsx'
import { BlocksEffort } from './BlocksEffort.tsx'
import { BlocksLength } from './BlocksLength.tsx'
import { BlocksMore } from './BlocksMore.tsx'
import { BlocksMove } from './BlocksMove.tsx'
import { BlocksResistance } from './BlocksResistance.tsx'
import { chosenBlocks, eachBlock } from './eachBlock.ts'
import { differ, sharedOf } from './sharedOf.ts'

/**
 * Several blocks at once, in the order of the panel of one: what they share stands in each field, “mixed” where they
 * differ, and a change is one step for all of them. Blocks of a chosen set count one by one.
 */
export function BlocksPanel({ ids }: { ids: readonly string[] }) {
  const store = useAppStore()
  const ride = useApp((state) => state.shown!)
  const seconds = useApp((state) => secondsOf(state.shownReport?.blocks ?? [], ids))
  const each = useMemo(() => eachBlock(store, chosenBlocks(ride, ids)), [store, ride, ids])
  const { blocks, edit } = each
  return (
    <>
      <header className="panel-header">
        <h2>
          <span className="panel-name">{words.names.blocks({ count: blocks.length })}</span>
        </h2>
        <p className="panel-where">{words.panels.changesAll({ seconds })}</p>
      </header>
      <div className="panel-rows">
        <BlocksResistance each={each} />
        <BlocksEffort each={each} />
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
        <BlocksLength each={each} />
        <BlocksCadence each={each} />
        <SelectRow
          label={words.panels.leadFoot}
          value={sharedOf(blocks, ({ lead }) => lead ?? 'keep')}
          choices={leadChoices()}
          onChange={(lead) => edit({ lead: lead === 'keep' ? undefined : lead })}
        />
        <BlocksMove each={each} />
        <TextRow
          label={words.panels.name}
          value={sharedOf(blocks, ({ label }) => label ?? '') ?? undefined}
          placeholder={differ(blocks, ({ label }) => label) ? words.panels.mixed : words.panels.whatYouCallIt}
          longest={120}
          onChange={(label) => edit({ label })}
        />
        <SelectRow
          label={words.panels.terrain}
          value={sharedOf(blocks, ({ terrain }) => terrain)}
          choices={terrainChoices()}
          onChange={(terrain) => edit({ terrain })}
        />
        <LeaderRows blocks={blocks} />
      </div>
      <BlocksMore each={each} />
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

const secondsOf = (
  played: readonly { block: Block; set?: { set: { id: string } }; from: number; to: number }[],
  ids: readonly string[],
): number =>
  played
    .filter(({ block, set }) => ids.includes(block.id) || (set !== undefined && ids.includes(set.set.id)))
    .reduce((sum, { from, to }) => sum + to - from, 0)
