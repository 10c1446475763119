import { useEffect, useRef } from 'react'
import { useApp } from '#store/useApp.ts'
import { Button } from '#ui/Button.tsx'
import { Notice } from '#ui/Notice.tsx'

/** The song taken from the shelf last, and the way back. */
export function Removed() {
  const removed = useApp((state) => state.removedSong)
  const restore = useApp((state) => state.restoreSong)
  const forget = useApp((state) => state.forgetRemovedSong)
  const back = useRef<HTMLSpanElement>(null)
  // The row that had the focus is gone.
  useEffect(() => {
    if (removed) back.current?.querySelector('button')?.focus()
  }, [removed])
  if (!removed) return null
  const { kept, file } = removed
  const putBack = (
    <span ref={back}>
      <Button tone="action" onClick={() => void restore()}>
        put it back
      </Button>
    </span>
  )
  return (
    <Notice onDismiss={forget} actions={putBack}>
      “{kept.song.title}” is off the shelf{file ? ', and its file is no longer kept' : ''}. Rides that use it keep it.
    </Notice>
  )
}
