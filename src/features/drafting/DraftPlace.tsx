import { lazy, Suspense, useCallback, useMemo, useRef, useState } from 'react'
import { usePlaceActions } from '#actions/ActionBoardProvider.tsx'
import { ActionButton } from '#actions/ActionButton.tsx'
import type { Finding } from '#engine/report.ts'
import { findSection } from '#plan/places.ts'
import { useApp, useAppStore } from '#store/useApp.ts'
import { useSought } from '#store/useSought.ts'
import { AfterDrawing } from '#ui/AfterDrawing.tsx'
import { showFound } from '#ui/showFound.ts'
import { useMedia } from '#ui/useMedia.ts'
import { tell, words } from '#words/words.ts'
import { type DraftTools, DraftToolsContext, focusedGround, selectedGround } from './actions/draftGround.ts'
import { CLIPBOARD, DETAILS_PLACE, REGIONS_PLACE, REHEARSING, STAGE, WHOLE_RIDE } from './actions/draftPlaces.ts'
import { fieldWith, goToCues, goToRegion, isBesideStage } from './actions/gettingAbout/regions.ts'
import { FIT_RIDE } from './actions/view/fit.ts'
import { ZOOM_IN, ZOOM_OUT } from './actions/view/zoom.ts'
import { useClipboardEvents } from './clipboard/useClipboardEvents.ts'
import { Findings } from './findings/Findings.tsx'
import { KeepPattern } from './KeepPattern.tsx'
import { Legend } from './Legend.tsx'
import { useDraftMenu } from './menu/useDraftMenu.tsx'
import { ownPatternsIn } from './ownPatternCommand.ts'
import { SelectionPanel } from './panel/SelectionPanel.tsx'
import { useRideDetails } from './panel/useRideDetails.ts'
import { OtherLength } from './proposals/OtherLength.tsx'
import { RoughIn } from './proposals/RoughIn.tsx'
import { SlotFit } from './proposals/SlotFit.tsx'
import { useOffer } from './proposals/useOffer.ts'
import { RehearsalBar } from './rehearsal/RehearsalBar.tsx'
import { RehearsalContext } from './rehearsal/RehearsalContext.ts'
import { RehearseButton, useIsRehearsed } from './rehearsal/RehearseButton.tsx'
import { useRehearsing } from './rehearsal/useRehearsing.ts'
import { useRenaming } from './renaming/useRenaming.tsx'
import { Summary } from './Summary.tsx'
import { DraggedName } from './stage/drag/DraggedName.tsx'
import { StageDrag } from './stage/drag/StageDrag.tsx'
import { dragCommand, type KeyedCommand } from './stage/dragCommand.ts'
import { OPENING_SCALE, Stage, type StageView } from './stage/Stage.tsx'
import { Tray } from './Tray.tsx'
import { useLineUnderStage } from './useLineUnderStage.tsx'
import { useNoteOnRide } from './useNoteOnRide.ts'
import './draft.css'

// Fetched when words are first replaced.
const ReplaceWords = lazy(() => import('./proposals/ReplaceWords.tsx').then((module) => ({ default: module.ReplaceWords })))

const FIRST_FIELD = '.draft-side input, .draft-side select, .draft-side textarea'

/** One column, as in draft.css. */
const NARROW = '(max-width: 1000px)'

/** The place where a ride is drafted: the stage, the tray under it, what the engine noticed, and the details beside it. */
export function DraftPlace() {
  const store = useAppStore()
  const readOnly = useApp((state) => state.received !== null)
  const [scale, setScale] = useState(OPENING_SCALE)
  const [draggedId, setDraggedId] = useState<string | null>(null)
  const { offer, makeOffer, closeOffer } = useOffer()
  const [note, setNote] = useNoteOnRide()
  const playing = useRehearsing()
  const drawn = useRef<(task: () => void) => void>(null)
  const afterDrawing = useCallback((task: () => void) => drawn.current?.(task), [])
  const root = useRef<HTMLDivElement>(null)
  const lane = useRef<HTMLDivElement>(null)
  const stage = useRef<StageView>(null)
  const narrow = useMedia(NARROW)
  const [keeping, setKeeping] = useState<readonly string[] | null>(null)

  const reveal = useCallback(
    (id: string) => {
      const report = store.getState().shownReport
      const played = report?.blocks.find((other) => other.block.id === id)
      const section = report?.sections.find((other) => other.sectionId === id)
      if (played) stage.current?.reveal(played.from, played.to)
      else if (section) stage.current?.reveal(section.one, section.to)
    },
    [store],
  )

  const focus = useCallback(
    (id: string) => {
      // A moved element loses the focus when it is put elsewhere.
      afterDrawing(() => {
        const stop = lane.current?.querySelector<HTMLElement>(`[data-stage-stop][data-id="${CSS.escape(id)}"]`)
        stop?.focus({ preventScroll: true })
        reveal(id)
      })
    },
    [reveal, afterDrawing],
  )

  const selectItem = useCallback(
    (id: string, { shiftKey, ctrlKey, metaKey }: { shiftKey: boolean; ctrlKey: boolean; metaKey: boolean }) => {
      const state = store.getState()
      if (shiftKey) state.selectRange(id)
      else if (ctrlKey || metaKey) state.toggleItem(id)
      else state.selectItem(id)
    },
    [store],
  )
  const selectSection = useCallback((id: string) => store.getState().selectSection(id), [store])

  const dropped = ({ id, ids, note }: KeyedCommand) => {
    const { ride, report } = store.getState()
    if (ride && findSection(ride, id)) selectSection(id)
    else if (report) store.getState().selectItems(ids ?? [id])
    focus(id)
    setNote(note ?? null)
  }
  const show = (blockId: string) => {
    store.getState().selectItem(blockId)
    focus(blockId)
  }
  const showAny = (id: string) => {
    const { shown } = store.getState()
    if (shown && findSection(shown, id)) selectSection(id)
    else store.getState().selectItem(id)
    reveal(id)
  }
  const go = (finding: Finding) => {
    if (finding.blockId || finding.sectionId) stage.current?.comeIntoSight()
    if (finding.blockId) show(finding.blockId)
    else if (finding.sectionId) {
      selectSection(finding.sectionId)
      focus(finding.sectionId)
    } else store.getState().clearSelection()
  }

  useSought('spot', ({ spot: { id, words: written } }) => {
    const state = store.getState()
    stage.current?.comeIntoSight()
    closeOffer()
    if (id === null) state.clearSelection()
    else if (state.shown && findSection(state.shown, id)) selectSection(id)
    else state.selectItem(id)
    if (id !== null) focus(id)
    if (written === undefined) return
    // The details are drawn by then; words that stand in no field leave the focus on the stage.
    afterDrawing(() => {
      if (id !== null) reveal(id)
      showFound(fieldWith(root.current, written))
    })
  })
  useSought('finding', ({ id }) => {
    const finding = store.getState().shownReport?.findings.find((each) => each.id === id)
    if (!finding) return
    go(finding)
    if (!finding.blockId && !finding.sectionId) showFound(root.current?.querySelector('.findings .finding-place'))
  })

  // A press on the ruler goes there only while the ride is rehearsed: else it would do nothing anyone could see.
  const rehearsed = useIsRehearsed(playing?.rehearsing.rehearsal)
  const seek = rehearsed ? playing?.rehearsing.rehearsal.seek : undefined

  const openDetails = useCallback(() => afterDrawing(() => root.current?.querySelector<HTMLElement>(FIRST_FIELD)?.focus()), [afterDrawing])
  const [openMenu, menu] = useDraftMenu(root)
  const [rename, nameField] = useRenaming(root, focus)
  const bringIntoSight = useCallback((id: string) => afterDrawing(() => reveal(id)), [afterDrawing, reveal])
  const { typeLine, writeCue, line } = useLineUnderStage(focus, bringIntoSight)
  const tools = useMemo<DraftTools>(
    () => ({
      focus,
      reveal: bringIntoSight,
      openDetails,
      openCues: () => afterDrawing(() => root.current && goToCues(root.current)),
      goToRegion: (step) => root.current && goToRegion(root.current, step),
      typeLine,
      rename,
      writeCue,
      fitRide: () => stage.current?.fitRide(),
      fitSection: (id) => stage.current?.fitSection(id),
      zoomBy: (factor) => stage.current?.zoomBy(factor),
      makeOffer,
      offer,
      keepPattern: setKeeping,
      note: setNote,
      openMenu,
    }),
    [focus, bringIntoSight, openDetails, typeLine, rename, writeCue, makeOffer, offer, setNote, openMenu, afterDrawing],
  )
  const rehearsal = useMemo(() => playing && { store, rehearsing: playing.rehearsing }, [store, playing])
  const selected = () => selectedGround(store, tools)
  const focusedOrSelected = (at: Element | null) => (at && focusedGround(store, tools, at)) ?? selected()
  usePlaceActions(CLIPBOARD, focusedOrSelected)
  useClipboardEvents(focusedOrSelected)
  usePlaceActions(STAGE, (at) => (at === null ? selected() : focusedGround(store, tools, at)))
  usePlaceActions(DETAILS_PLACE, (at) => (isBesideStage(at) ? selected() : null))
  usePlaceActions(REGIONS_PLACE, selected)
  usePlaceActions(WHOLE_RIDE, focusedOrSelected)
  usePlaceActions(REHEARSING, () => rehearsal)

  useRideDetails(() => {
    closeOffer()
    openDetails()
  })

  return (
    <DraftToolsContext.Provider value={tools}>
      <RehearsalContext.Provider value={playing?.rehearsing ?? null}>
        <StageDrag
          lane={lane}
          pixelsPerSecond={scale.pixelsPerSecond}
          commandAt={(dragged, at, ground, ids) => dragCommand(dragged, at, ground, ids, ownPatternsIn(store.getState()))}
          describe={(dragged) => <DraggedName dragged={dragged} />}
          onStart={({ kind, id }) => {
            setDraggedId(id)
            if (kind === 'section') selectSection(id)
            else if (kind !== 'pattern' && kind !== 'own') store.getState().selectItem(id)
          }}
          onFinish={(kept) => {
            setDraggedId(null)
            if (kept) dropped(kept)
          }}
        >
          <div className="draft" ref={root}>
            <div className="draft-main">
              <div className="draft-top">
                <Summary />
                <div className="zoom">
                  <Legend />
                  {rehearsal && <RehearseButton on={rehearsal} />}
                  <span className="zoom-steps">
                    <ActionButton action={FIT_RIDE} on={selected()} tone="quiet" />
                    <ActionButton action={ZOOM_OUT} on={selected()} tone="quiet" aria-label={tell(ZOOM_OUT.name)} />
                    <ActionButton action={ZOOM_IN} on={selected()} tone="quiet" aria-label={tell(ZOOM_IN.name)} />
                  </span>
                </div>
              </div>
              <Stage
                ref={stage}
                readOnly={readOnly}
                draggedId={draggedId}
                onSelectItem={selectItem}
                onSelectSection={selectSection}
                scale={scale}
                onScale={setScale}
                lane={lane}
                onSelectRide={() => store.getState().clearSelection()}
                playhead={playing?.playhead}
                onSeek={seek}
              >
                {nameField}
              </Stage>
              {!readOnly && line}
              {!readOnly && <Tray note={note} />}
              {!narrow && <Findings readOnly={readOnly} onGo={go} />}
              {rehearsal && <RehearsalBar on={rehearsal} />}
            </div>
            <aside className="draft-side" aria-label={words.drafting.details}>
              {offer === 'slot' && !readOnly ? (
                <SlotFit
                  onShow={(sectionId) => {
                    selectSection(sectionId)
                    reveal(sectionId)
                  }}
                  onClose={closeOffer}
                />
              ) : offer === 'draft' && !readOnly ? (
                <RoughIn
                  onShow={(sectionId) => {
                    selectSection(sectionId)
                    reveal(sectionId)
                  }}
                  onClose={closeOffer}
                />
              ) : offer === 'length' && !readOnly ? (
                <OtherLength onClose={closeOffer} />
              ) : offer === 'words' && !readOnly ? (
                <Suspense fallback={null}>
                  <ReplaceWords onShow={showAny} onClose={closeOffer} />
                </Suspense>
              ) : (
                <SelectionPanel onShow={show} />
              )}
            </aside>
            {/* In one column the details of what is chosen stand right under it, before what may be a long list. */}
            {narrow && (
              <div className="draft-after">
                <Findings readOnly={readOnly} onGo={go} />
              </div>
            )}
            {menu}
            <KeepPattern ids={keeping} onClose={() => setKeeping(null)} />
            {/* Behind everything else, which is then in its place. */}
            <AfterDrawing ref={drawn} />
          </div>
        </StageDrag>
      </RehearsalContext.Provider>
    </DraftToolsContext.Provider>
  )
}
