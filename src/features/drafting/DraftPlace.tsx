import { type KeyboardEvent, useCallback, useRef, useState } from 'react'
import type { Finding } from '#engine/report.ts'
import type { BlockPattern } from '#plan/patterns/blockPattern.ts'
import { findSection } from '#plan/places.ts'
import { useApp, useAppStore } from '#store/useApp.ts'
import { AfterDrawing } from '#ui/AfterDrawing.tsx'
import { Button } from '#ui/Button.tsx'
import { useMedia } from '#ui/useMedia.ts'
import { addPattern, addSection } from './draftActions.ts'
import { Findings } from './findings/Findings.tsx'
import { Legend } from './Legend.tsx'
import { SelectionPanel } from './panel/SelectionPanel.tsx'
import { useRideDetails } from './panel/useRideDetails.ts'
import { OtherLength } from './proposals/OtherLength.tsx'
import { RoughIn } from './proposals/RoughIn.tsx'
import { SlotFit } from './proposals/SlotFit.tsx'
import { useOffer } from './proposals/useOffer.ts'
import { RehearsalBar } from './rehearsal/RehearsalBar.tsx'
import { RehearsalContext } from './rehearsal/RehearsalContext.ts'
import { RehearseButton, useIsRehearsed } from './rehearsal/RehearseButton.tsx'
import { useRehearsalKeys } from './rehearsal/useRehearsalKeys.ts'
import { useRehearsing } from './rehearsal/useRehearsing.ts'
import { Summary } from './Summary.tsx'
import { DraggedName } from './stage/drag/DraggedName.tsx'
import { StageDrag } from './stage/drag/StageDrag.tsx'
import { dragCommand, type KeyedCommand } from './stage/dragCommand.ts'
import { OPENING_SCALE, Stage, type StageView } from './stage/Stage.tsx'
import { stageKey } from './stageKeys.ts'
import { Tray } from './Tray.tsx'
import { useNoteOnRide } from './useNoteOnRide.ts'
import './draft.css'

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
  useRehearsalKeys(playing?.rehearsing ?? null)
  const drawn = useRef<(task: () => void) => void>(null)
  const afterDrawing = useCallback((task: () => void) => drawn.current?.(task), [])
  const root = useRef<HTMLDivElement>(null)
  const lane = useRef<HTMLDivElement>(null)
  const stage = useRef<StageView>(null)
  const narrow = useMedia(NARROW)

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

  const add = (pattern: BlockPattern) => {
    const added = addPattern(store, pattern)
    if (!added) return
    store.getState().selectItem(added.id)
    afterDrawing(() => reveal(added.id))
    setNote(added.note)
  }
  const dropped = ({ id, note }: KeyedCommand) => {
    const { ride, report } = store.getState()
    if (ride && findSection(ride, id)) selectSection(id)
    else if (report) store.getState().selectItem(id)
    focus(id)
    setNote(note ?? null)
  }
  const addEmptySection = () => {
    const id = addSection(store)
    if (!id) return
    selectSection(id)
    afterDrawing(() => reveal(id))
  }

  const show = (blockId: string) => {
    store.getState().selectItem(blockId)
    focus(blockId)
  }
  const go = (finding: Finding) => {
    if (finding.blockId || finding.sectionId) stage.current?.comeIntoSight()
    if (finding.blockId) show(finding.blockId)
    else if (finding.sectionId) {
      selectSection(finding.sectionId)
      focus(finding.sectionId)
    } else store.getState().clearSelection()
  }

  // A press on the ruler goes there only while the ride is rehearsed: else it would do nothing anyone could see.
  const rehearsed = useIsRehearsed(playing?.rehearsing.rehearsal)
  const seek = rehearsed ? playing?.rehearsing.rehearsal.seek : undefined

  const keys = (event: KeyboardEvent) => {
    const handled = stageKey(event, {
      store,
      readOnly,
      openDetails: () => afterDrawing(() => root.current?.querySelector<HTMLElement>(FIRST_FIELD)?.focus()),
      fitRide: () => stage.current?.fitRide(),
      fitSection: (id) => stage.current?.fitSection(id),
      focus,
    })
    if (handled) event.preventDefault()
  }

  /** Escape leads from a field or a list back to what it is about, once the field has no text of its own to drop. */
  const leaveDetails = (event: KeyboardEvent) => {
    if (event.key !== 'Escape' || event.defaultPrevented || store.getState().previewing !== null) return
    const { ids, sectionId } = store.getState().selection
    const id = ids.at(-1) ?? sectionId
    if (id === null || offer !== null) return
    event.preventDefault()
    focus(id)
  }

  useRideDetails(() => {
    closeOffer()
    afterDrawing(() => root.current?.querySelector<HTMLElement>(FIRST_FIELD)?.focus())
  })

  return (
    <RehearsalContext.Provider value={playing?.rehearsing ?? null}>
      <StageDrag
        lane={lane}
        pixelsPerSecond={scale.pixelsPerSecond}
        commandAt={dragCommand}
        describe={(dragged) => <DraggedName dragged={dragged} />}
        onStart={({ kind, id }) => {
          setDraggedId(id)
          if (kind === 'section') selectSection(id)
          else if (kind !== 'pattern') store.getState().selectItem(id)
        }}
        onFinish={(kept) => {
          setDraggedId(null)
          if (kept) dropped(kept)
        }}
      >
        <div className="draft" ref={root}>
          {/* biome-ignore lint/a11y/noStaticElementInteractions: keys pressed on the stops inside it */}
          <div className="draft-main" onKeyDown={keys}>
            <div className="draft-top">
              <Summary
                offer={offer}
                onFit={readOnly ? undefined : () => makeOffer('slot')}
                onRoughIn={
                  readOnly
                    ? undefined
                    : () => {
                        stage.current?.fitRide()
                        makeOffer('draft')
                      }
                }
                onOtherLength={
                  readOnly
                    ? undefined
                    : () => {
                        stage.current?.fitRide()
                        makeOffer('length')
                      }
                }
              />
              <div className="zoom">
                <Legend />
                {playing && <RehearseButton rehearsal={playing.rehearsing.rehearsal} />}
                <Button tone="quiet" onClick={() => stage.current?.fitRide()}>
                  whole ride
                </Button>
                <Button tone="quiet" aria-label="zoom out" onClick={() => stage.current?.zoomBy(1 / 1.5)}>
                  −
                </Button>
                <Button tone="quiet" aria-label="zoom in" onClick={() => stage.current?.zoomBy(1.5)}>
                  +
                </Button>
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
            />
            {!readOnly && <Tray onAdd={add} onAddSection={addEmptySection} note={note} />}
            {!narrow && <Findings readOnly={readOnly} onGo={go} />}
            {playing && <RehearsalBar rehearsal={playing.rehearsing.rehearsal} />}
          </div>
          <aside className="draft-side" aria-label="details" onKeyDown={leaveDetails}>
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
            ) : (
              <SelectionPanel onShow={show} onFocus={focus} />
            )}
          </aside>
          {/* In one column the details of what is chosen stand right under it, before what may be a long list. */}
          {narrow && (
            <div className="draft-after">
              <Findings readOnly={readOnly} onGo={go} />
            </div>
          )}
          {/* Behind everything else, which is then in its place. */}
          <AfterDrawing ref={drawn} />
        </div>
      </StageDrag>
    </RehearsalContext.Provider>
  )
}
