import { memo, type PointerEvent, useEffect, useRef, useState } from 'react'
import type { DragGround } from '#features/drafting/stage/dragCommand.ts'
import { useStage } from '#features/drafting/stage/StageContext.ts'
import { useAppStore } from '#store/useApp.ts'
import { words } from '#words/words.ts'
import { LETS_GO } from './dragKeys.ts'
import { edgeCommand } from './edgeCommand.ts'
import './edge.css'

/**
 * The right edge of a block: pulled to marks, phrases and eights, to counts while Alt is held; Escape lets go of it. What it
 * has fallen on stands beside it.
 */
export const EdgeHandle = memo(function EdgeHandle({ index }: { index: number }) {
  const store = useAppStore()
  const stage = useStage()
  const held = useRef<{ ground: DragGround; release: () => void } | null>(null)
  const [landed, setLanded] = useState<string | null>(null)

  const letGo = (keep: boolean) => {
    if (!held.current) return
    held.current.release()
    held.current = null
    setLanded(null)
    if (keep) store.getState().commitPreview()
    else store.getState().dropPreview()
  }

  const take = (event: PointerEvent) => {
    const { ride, report } = store.getState()
    if (!ride || !report || event.button !== 0) return
    event.stopPropagation()
    const pulled = report.blocks[index]
    if (pulled) store.getState().selectItem(pulled.block.id)
    event.currentTarget.setPointerCapture(event.pointerId)
    const onKey = (key: KeyboardEvent) => {
      if (key.key === LETS_GO) letGo(false)
    }
    window.addEventListener('keydown', onKey)
    held.current = { ground: { ride, report }, release: () => window.removeEventListener('keydown', onKey) }
  }

  const pull = (event: PointerEvent) => {
    const lane = stage.lane.current
    if (!held.current || !lane) return
    const at = (event.clientX - lane.getBoundingClientRect().left) / stage.scale.pixelsPerSecond
    const { ride, report } = held.current.ground
    const pulled = edgeCommand(ride, report, index, at, event.altKey)
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
      title={words.drafting.edge}
      data-held={landed !== null || undefined}
      onMouseDown={stopHere}
      onTouchStart={stopHere}
      onPointerDown={take}
      onPointerMove={pull}
      onPointerUp={() => letGo(true)}
      onPointerCancel={() => letGo(false)}
    >
      {landed !== null && <span className="edge-words">{landed}</span>}
    </div>
  )
})

/** A press on the edge is not the start of a drag of the whole block. */
const stopHere = (event: { stopPropagation: () => void }) => event.stopPropagation()
