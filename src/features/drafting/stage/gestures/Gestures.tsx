import { type RefObject, useEffect, useRef, useState } from 'react'
import { useStage } from '#features/drafting/stage/StageContext.ts'
import { useAppStore } from '#store/useApp.ts'
import { CurveHandles } from './CurveHandles.tsx'
import type { GestureGround, Shown } from './gestureGround.ts'
import type { ZoomedTo } from './pinchZoom.ts'
import { watchPresses } from './watchPresses.ts'
import { watchSpace } from './watchSpace.ts'
import { watchTouches } from './watchTouches.ts'
import './gestures.css'

/** What hands do to the stage as a whole: move it, zoom it with two fingers, draw a frame over blocks, and pull the curve. */
export function Gestures({ scroller, zoomTo }: { scroller: RefObject<HTMLElement | null>; zoomTo: (to: ZoomedTo) => void }) {
  const store = useAppStore()
  const { lane, scale } = useStage()
  const [shown, setShown] = useState<Shown | null>(null)
  const scaleNow = useRef(scale)
  scaleNow.current = scale
  useEffect(() => {
    if (!scroller.current || !lane.current) return
    const ground: GestureGround = {
      store,
      scroller: scroller.current,
      content: lane.current,
      scale: () => scaleNow.current,
      show: setShown,
    }
    const space = watchSpace(ground.scroller, ground.content)
    const leave = [space.stop, watchPresses(ground, space), watchTouches(ground, zoomTo)]
    return () => {
      for (const stop of leave) stop()
    }
  }, [store, scroller, lane, zoomTo])
  return (
    <>
      <CurveHandles scale={scale} />
      {shown?.frame && <div className="block-frame" style={rect(shown.frame)} />}
      {shown?.value && (
        <span className="held-value" style={{ left: shown.value.x, top: shown.value.y }}>
          {shown.value.words}
        </span>
      )}
    </>
  )
}

const rect = ({ left, top, right, bottom }: NonNullable<Shown['frame']>) => ({ left, top, width: right - left, height: bottom - top })
