import { useEffect, useEffectEvent } from 'react'

/** Calls for every frame the page draws, with the frame's own timestamp; none while the page is hidden. */
export function useFrames(onFrame: (timestamp: number) => void): void {
  const draw = useEffectEvent(onFrame)
  useEffect(() => {
    let handle = requestAnimationFrame(function frame(timestamp) {
      handle = requestAnimationFrame(frame)
      draw(timestamp)
    })
    return () => cancelAnimationFrame(handle)
  }, [])
}
