import { useEffect, useRef } from 'react'
import { useApp } from '#store/useApp.ts'
import { Button } from '#ui/Button.tsx'
import { Notice } from '#ui/Notice.tsx'
import { words } from '#words/words.ts'

/** The song taken out last, and the way back. */
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
        {words.songs.restore}
      </Button>
    </span>
  )
  return (
    <Notice onDismiss={forget} actions={putBack}>
      {words.songs.removed({ song: kept.song.title, withFile: file !== null })}
    </Notice>
  )
}
