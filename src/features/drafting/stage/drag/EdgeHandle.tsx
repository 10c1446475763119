import { memo, type PointerEvent, useEffect, useRef, useState } from 'react'
import type { DragGround } from '#features/drafting/stage/dragCommand.ts'
import { scrollAtBorder } from '#features/drafting/stage/gestures/scrollAtBorder.ts'
import { useStage } from '#features/drafting/stage/StageContext.ts'
import { useAppStore } from '#store/useApp.ts'
import type { Seconds } from '#units/units.ts'
import { words } from '#words/words.ts'
import { LETS_GO } from './dragKeys.ts'
import { edgeCommand } from './edgeCommand.ts'
import { startCommand } from './startCommand.ts'
import './edge.css'

type BlockSide = 'start' | 'end'

/**
 * An edge of a block: pulled to marks, phrases and eights, to counts while Alt is held; Escape lets go of it. What it has
 * fallen on stands beside it. Held at the border of the stage it scrolls on.
 */
export const EdgeHandle = memo(function EdgeHandle({ index, side }: { index: number; side: BlockSide }) {
  const store = useAppStore()
  const stage = useStage()
  const held = useRef<Held | null>(null)
  const pixelsPerSecond = useRef(stage.scale.pixelsPerSecond)
  pixelsPerSecond.current = stage.scale.pixelsPerSecond
  const [landed, setLanded] = useState<string | null>(null)

  const letGo = (keep: boolean) => {
    if (!held.current) return
    const { hasPulled, pressed, release } = held.current
    release()
    held.current = null
    setLanded(null)
    if (!keep) store.getState().dropPreview()
    else if (hasPulled) store.getState().commitPreview()
    else selectUnder(pressed, store.getState().selectItem)
  }

  const secondAt = (x: number): Seconds => (x - stage.lane.current!.getBoundingClientRect().left) / pixelsPerSecond.current

  const take = (event: PointerEvent) => {
    const { ride, report } = store.getState()
    const box = stage.scroller.current
    const played = report?.blocks[index]
    if (!ride || !report || !box || !played || event.button !== 0 || event.shiftKey) return
    event.stopPropagation()
    event.currentTarget.setPointerCapture(event.pointerId)
    const letsGo = (other: KeyboardEvent | globalThis.PointerEvent) => {
      if ('key' in other ? other.key !== LETS_GO : other.pointerType !== 'touch') return
      // The key is about what is held and about nothing else; a second finger zooms.
      if ('key' in other) other.stopImmediatePropagation()
      letGo(false)
    }
    const listeners = new AbortController()
    for (const name of ['keydown', 'pointerdown'] as const)
      window.addEventListener(name, letsGo, { capture: true, signal: listeners.signal })
    const { clientX, clientY, altKey } = event
    const stopScrolling = scrollAtBorder(box, clientX, () => held.current?.x ?? clientX, pull)
    held.current = {
      ground: { ride, report },
      off: (side === 'start' ? played.from : played.to) - secondAt(clientX),
      pressed: { x: clientX, y: clientY },
      x: clientX,
      isFine: altKey,
      hasPulled: false,
      release: () => {
        stopScrolling()
        listeners.abort()
      },
    }
  }

  const follow = ({ clientX, altKey }: PointerEvent) => {
    if (!held.current) return
    const { pressed, hasPulled, ground } = held.current
    held.current.x = clientX
    held.current.isFine = altKey
    if (!hasPulled) {
      if (Math.abs(clientX - pressed.x) < TRAVEL) return
      held.current.hasPulled = true
      const pulled = ground.report.blocks[index]
      if (pulled) store.getState().selectItem(pulled.block.id)
    }
    pull()
  }

  const pull = () => {
    if (!held.current) return
    const { ground, x, off, isFine } = held.current
    const pulled = COMMANDS[side](ground.ride, ground.report, index, secondAt(x) + off, isFine)
    if (!pulled) return
    setLanded(pulled.words)
    store.getState().preview(pulled.command)
  }

  // A card that goes away in the hand, scrolled far out of sight, takes what it showed with it.
  useEffect(
    () => () => {
      if (!held.current) return
      held.current.release()
      held.current = null
      store.getState().dropPreview()
    },
    [store],
  )

  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: the same change has keys on the block itself
    <div
      className="edge"
      data-side={side}
      title={words.gestures.edge({ side })}
      data-held={landed !== null || undefined}
      onMouseDown={stopHere}
      onTouchStart={stopHere}
      onPointerDown={take}
      onPointerMove={follow}
      onPointerUp={() => letGo(true)}
      onPointerCancel={() => letGo(false)}
    >
      {landed !== null && <span className="edge-words">{landed}</span>}
    </div>
  )
})

interface Held {
  ground: DragGround
  /** From where it was taken hold of to the edge itself. */
  off: Seconds
  /** Where it was taken hold of, and where on the window's axis it is now. */
  pressed: { x: number; y: number }
  x: number
  isFine: boolean
  hasPulled: boolean
  release: () => void
}

/** Pixels a press has to travel before it pulls. */
const TRAVEL = 3

const COMMANDS = { start: startCommand, end: edgeCommand } as const

/** A press that pulls nothing is about the card it lies over, which may be the one beside: for a finger an edge stands out that far. */
function selectUnder({ x, y }: { x: number; y: number }, select: (id: string) => void): void {
  const id = document
    .elementsFromPoint(x, y)
    .map((element) => (element.closest('.edge') ? undefined : element.closest<HTMLElement>('.block')?.dataset.id))
    .find((found) => found !== undefined)
  if (id !== undefined) select(id)
}

/** A press on the edge is not the start of a drag of the whole block. */
const stopHere = (event: { stopPropagation: () => void }) => event.stopPropagation()
