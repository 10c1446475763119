import { useEffect, useState } from 'react'

/** Whether the page fills the screen, and a way to change it; null where the browser cannot. */
export function useFullScreen(): { full: boolean; toggle: (() => void) | null } {
  const [full, setFull] = useState(() => document.fullscreenElement !== null)
  useEffect(() => {
    const note = () => setFull(document.fullscreenElement !== null)
    document.addEventListener('fullscreenchange', note)
    return () => document.removeEventListener('fullscreenchange', note)
  }, [])
  if (!document.fullscreenEnabled) return { full, toggle: null }
  // Refusals (a press that is no press for the browser) leave all as it is.
  const toggle = () => void (full ? document.exitFullscreen() : document.documentElement.requestFullscreen()).catch(() => {})
  return { full, toggle }
}
