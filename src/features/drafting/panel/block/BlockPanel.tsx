import { useCallback, useContext, useMemo } from 'react'
import { copyCue } from '#features/drafting/actions/clipboard/copyAndPaste.ts'
import { DraftToolsContext } from '#features/drafting/actions/draftGround.ts'
import { actionsOn } from '#features/drafting/panel/block/actionsOn.ts'
import { BlockHeader } from '#features/drafting/panel/block/BlockHeader.tsx'
import { CadenceFields } from '#features/drafting/panel/block/CadenceFields.tsx'
import { CueList } from '#features/drafting/panel/block/CueList.tsx'
import { DemandRow } from '#features/drafting/panel/block/DemandRow.tsx'
import { EffortFields } from '#features/drafting/panel/block/EffortFields.tsx'
import { LeadFootRow } from '#features/drafting/panel/block/LeadFootRow.tsx'
import { LengthRow } from '#features/drafting/panel/block/LengthRow.tsx'
import { MoreFields } from '#features/drafting/panel/block/MoreFields.tsx'
import { MoveFields } from '#features/drafting/panel/block/MoveFields.tsx'
import { OwnTotalRow } from '#features/drafting/panel/block/OwnTotalRow.tsx'
import { ResistanceFields } from '#features/drafting/panel/block/ResistanceFields.tsx'
import { RoundRow } from '#features/drafting/panel/block/RoundRow.tsx'
import { ShakyRow } from '#features/drafting/panel/block/ShakyRow.tsx'
import { ShowingNote } from '#features/drafting/panel/block/ShowingNote.tsx'
import { handsChoices, postureChoices, terrainChoices } from '#features/drafting/panel/choices.ts'
import { playedNow, unitOfTotals } from '#features/drafting/panel/played.ts'
import { FigureRow } from '#features/drafting/panel/rows/FigureRow.tsx'
import { SelectRow } from '#features/drafting/panel/rows/SelectRow.tsx'
import { TextRow } from '#features/drafting/panel/rows/TextRow.tsx'
import { limitsOf } from '#plan/ledger/limits.ts'
import type { Block } from '#plan/model.ts'
import { findBlock } from '#plan/places.ts'
import { eightOf } from '#plan/songs/beatGrid.ts'
import { useApp, useAppStore } from '#store/useApp.ts'
import { words } from '#words/words.ts'

/** Everything about one block, what is changed most often first. */
export function BlockPanel({ blockId }: { blockId: string }) {
  const block = useApp((state) => state.shown && findBlock(state.shown, blockId)?.block)
  return block ? <BlockFields block={block} /> : null
}

function BlockFields({ block }: { block: Block }) {
  const store = useAppStore()
  const song = useApp((state) => state.shown && findBlock(state.shown, block.id)?.section.song)
  const bike = useApp((state) => state.shown!.bike)
  const datum = useApp((state) => state.shown!.datum)
  const leaders = useApp((state) => state.shown!.leaders)
  const told = useApp((state) => playedNow(state, block.id)?.ledger.total)
  const limits = useMemo(() => limitsOf({ bike, datum }), [bike, datum])
  const eight = eightOf(song?.grid)
  const does = useMemo(() => actionsOn(store, block.id), [store, block.id])
  const { edit } = does
  const tools = useContext(DraftToolsContext)
  const copy = useCallback((cueId: string) => copyCue({ store, tools }, cueId), [store, tools])
  return (
    <>
      <BlockHeader block={block} />
      <div className="panel-rows">
        <RoundRow blockId={block.id} />
        <ResistanceFields
          resistance={block.resistance}
          entryNow={does.entryNow}
          bike={bike}
          limits={limits}
          over={unitOfTotals(bike, datum)}
          onChange={does.setResistance}
        />
        <EffortFields effort={block.effort} onChange={does.setEffort} onPreview={does.previewEffort} />
        <DemandRow blockId={block.id} />
        <FigureRow
          label={words.panels.posture}
          value={block.posture}
          choices={postureChoices()}
          onChange={(posture) => edit({ posture })}
        />
        <FigureRow label={words.panels.hands} value={block.hands} choices={handsChoices()} onChange={(hands) => edit({ hands })} />
        <LengthRow length={block.length} eight={eight} onChange={does.setLength} />
      </div>
      <CueList
        blockId={block.id}
        cues={block.cues}
        unit={'counts' in block.length ? 'counts' : 'seconds'}
        onChange={does.setCues}
        onAdd={does.addCue}
        atMoment={does.atMoment}
        beginsAt={does.beginsAt}
        onCopy={copy}
      />
      <div className="panel-rows">
        <CadenceFields block={block} song={song} rpmNow={does.rpmNow} onChange={edit} />
        <LeadFootRow blockId={block.id} lead={block.lead} onChange={(lead) => edit({ lead: lead === 'keep' ? undefined : lead })} />
        <MoveFields move={block.move} onChange={does.setMove} onRename={does.renameMove} />
        {block.move && <ShowingNote blockId={block.id} />}
        <TextRow
          label={words.panels.name}
          value={block.label}
          placeholder={words.names.terrain(block)}
          longest={120}
          onChange={(label) => edit({ label })}
        />
        <SelectRow
          label={words.panels.terrain}
          value={block.terrain}
          choices={terrainChoices()}
          onChange={(terrain) => edit({ terrain })}
        />
        <OwnTotalRow
          ownTotal={block.ownTotal}
          total={told}
          entryNow={does.entryNow}
          bike={bike}
          limits={limits}
          onChange={does.setOwnTotal}
        />
        <ShakyRow blockId={block.id} />
      </div>
      <MoreFields block={block} leaders={leaders} eight={song?.grid ? eight : undefined} edit={edit} />
    </>
  )
}
