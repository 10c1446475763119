import {
  type Active,
  DndContext,
  DragOverlay,
  type DragStartEvent,
  type Modifier,
  MouseSensor,
  TouchSensor,
  useSensor,
  useSensors,
} from '@dnd-kit/core'
import { getEventCoordinates } from '@dnd-kit/utilities'
import { type ReactNode, type RefObject, useEffect, useRef, useState } from 'react'
import type { DragGround, Dragged, KeyedCommand } from '#features/drafting/stage/dragCommand.ts'
import { type NewId, rememberedIds } from '#plan/copies.ts'
import { useAppStore } from '#store/useApp.ts'
import type { Seconds } from '#units/units.ts'

/**
 * The one place that knows the drag library. It turns a drag into a stream of previews of real commands:
 * each move of the pointer asks `commandAt` what dropping here would do, the store shows that ride, the drop
 * makes it one undo step and Escape drops it.
 */
export function StageDrag({
  lane,
  pixelsPerSecond,
  commandAt,
  describe,
  onStart,
  onFinish,
  children,
}: {
  lane: RefObject<HTMLElement | null>
  pixelsPerSecond: number
  /** What dropping at this time would do; null where nothing can be dropped. */
  commandAt: (dragged: Dragged, at: Seconds, ground: DragGround, ids: NewId) => KeyedCommand | null
  describe: (dragged: Dragged) => ReactNode
  onStart: (dragged: Dragged) => void
  /** Told what was dropped, or null where nothing was changed. */
  onFinish: (dropped: KeyedCommand | null) => void
  children: ReactNode
}) {
  const store = useAppStore()
  const [dragged, setDragged] = useState<Dragged | null>(null)
  const ground = useRef<(DragGround & { ids: () => NewId; found: KeyedCommand | null }) | null>(null)
  const pointer = usePointer()
  useOneFinger()
  const sensors = useSensors(useSensor(MouseSensor, MOUSE), useSensor(TouchSensor, TOUCH))

  const start = ({ active }: DragStartEvent) => {
    const { ride, report, newId } = store.getState()
    if (!ride || !report) return
    // Whatever is new in this drag keeps its ids from the first preview to the drop.
    ground.current = { ride, report, ids: rememberedIds(newId), found: null }
    const next = draggedOf(active)
    setDragged(next)
    onStart(next)
  }

  const move = (active: Active) => {
    if (!ground.current || !lane.current) return
    const box = lane.current.getBoundingClientRect()
    const { x, y } = pointer.current
    const near = y > box.top - REACH && y < box.bottom + REACH
    const found = near ? commandAt(draggedOf(active), (x - box.left) / pixelsPerSecond, ground.current, ground.current.ids()) : null
    if (found?.key === ground.current.found?.key) return
    ground.current.found = found
    if (found) store.getState().preview(found.command)
    else store.getState().dropPreview()
  }

  const finish = (keep: boolean) => {
    const kept = keep && store.getState().commitPreview()
    if (!kept) store.getState().dropPreview()
    const dropped = kept ? (ground.current?.found ?? null) : null
    ground.current = null
    setDragged(null)
    onFinish(dropped)
  }

  return (
    <DndContext
      sensors={sensors}
      onDragStart={start}
      onDragMove={({ active }) => move(active)}
      onDragEnd={() => finish(true)}
      onDragCancel={() => finish(false)}
      autoScroll={AUTO_SCROLL}
      accessibility={ACCESSIBILITY}
    >
      {children}
      <DragOverlay dropAnimation={null} modifiers={BESIDE_POINTER}>
        {dragged ? <div className="drag-overlay">{describe(dragged)}</div> : null}
      </DragOverlay>
    </DndContext>
  )
}

// The library hands everything that can be picked up out anew when one of these is another object.
// A press is a selection until it has travelled; a touch has to rest first, so that the stage can be scrolled.
const MOUSE = { activationConstraint: { distance: 4 } }
const TOUCH = { activationConstraint: { delay: 220, tolerance: 8 } }
const AUTO_SCROLL = { threshold: { x: 0.08, y: 0 }, acceleration: 14 }

/** How far above or below the stage, in pixels, a drop still counts. */
const REACH = 40

const draggedOf = (active: Active): Dragged => active.data.current as unknown as Dragged

/** Where each thing picked up stood when it was: the library hangs its overlay there, and the preview moves the thing itself. */
const PICKED_UP = new WeakMap<Event, { left: number; top: number }>()

/** The name in the hand hangs beside the pointer, wherever in a long block it was picked up. */
const BESIDE_POINTER: Modifier[] = [
  ({ transform, activatorEvent, activeNodeRect }) => {
    const point = activatorEvent && getEventCoordinates(activatorEvent)
    if (!point || !activeNodeRect) return transform
    const { left, top } = PICKED_UP.get(activatorEvent) ?? activeNodeRect
    if (!PICKED_UP.has(activatorEvent)) PICKED_UP.set(activatorEvent, { left, top })
    return { ...transform, x: transform.x + point.x - left + 14, y: transform.y + point.y - top + 14 }
  },
]

/** The stage announces changes itself, in words and with the new times; the library would say ids. */
const SILENT = {
  onDragStart: () => undefined,
  onDragOver: () => undefined,
  onDragEnd: () => undefined,
  onDragCancel: () => undefined,
}

const ACCESSIBILITY = { announcements: SILENT, screenReaderInstructions: { draggable: '' } }

/** A second finger zooms the stage: what the first one held is let go of. The library's sensors let go when the window is hidden. */
function useOneFinger(): void {
  useEffect(() => {
    const letGo = ({ touches }: TouchEvent) => {
      if (touches.length > 1) window.dispatchEvent(new Event('visibilitychange'))
    }
    window.addEventListener('touchstart', letGo, { capture: true, passive: true })
    return () => window.removeEventListener('touchstart', letGo, { capture: true })
  }, [])
}

/** Where the pointer is, whoever handles it. */
function usePointer() {
  const pointer = useRef({ x: 0, y: 0 })
  useEffect(() => {
    const follow = (event: MouseEvent | TouchEvent) => {
      const point = 'touches' in event ? event.touches[0] : event
      if (point) pointer.current = { x: point.clientX, y: point.clientY }
    }
    const options = { capture: true, passive: true } as const
    for (const name of ['mousedown', 'mousemove', 'touchstart', 'touchmove'] as const) window.addEventListener(name, follow, options)
    return () => {
      for (const name of ['mousedown', 'mousemove', 'touchstart', 'touchmove'] as const) window.removeEventListener(name, follow, options)
    }
  }, [])
  return pointer
}
