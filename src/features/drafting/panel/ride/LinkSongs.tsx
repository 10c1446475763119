import { useMemo } from 'react'
import { PreviewButton } from '#features/drafting/PreviewButton.tsx'
import { linkSongs, songsToLink } from '#plan/commands/linkSongs.ts'
import { useApp, useAppStore } from '#store/useApp.ts'
import { words } from '#words/words.ts'

/** Offers the ride's songs the beats that were heard in files of their names; nothing where there are none. */
export function LinkSongs() {
  const store = useAppStore()
  const shelf = useApp((state) => state.songs)
  // The committed ride: the one shown may have them already, as a preview.
  const ride = useApp((state) => state.ride)
  const offer = useMemo(() => {
    const count = ride ? songsToLink(ride, shelf) : 0
    return ride && count > 0 ? { count, command: linkSongs(ride, { shelf, newId: store.getState().newId }) } : null
  }, [ride, shelf, store])
  if (!offer) return null
  return (
    <section className="panel-group panel-edit-only" aria-label={words.panelsRide.mySongs}>
      <p className="panel-note">{words.panelsRide.beatsInMySongs({ count: offer.count })}</p>
      <PreviewButton command={offer.command}>{words.panelsRide.applyBeats({ count: offer.count })}</PreviewButton>
    </section>
  )
}
