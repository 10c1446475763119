import { insertSections } from '#plan/commands/insertSections.ts'
import { LIMITS } from '#plan/document/schema.ts'
import { sectionsFromSongs } from '#plan/songs/sectionsFromSongs.ts'
import { forRide, type ShelfSong } from '#plan/songs/shelfSong.ts'
import { useApp, useAppStore } from '#store/useApp.ts'
import { Button } from '#ui/Button.tsx'
import { words } from '#words/words.ts'
import { playedSeconds, rideOfSongs } from './rideOfSongs.ts'

/** What may be done with the songs that were chosen, in the order they were chosen in. */
export function ChosenSongs({ chosen, onNone }: { chosen: readonly ShelfSong[]; onNone: () => void }) {
  const store = useAppStore()
  // A ride that was received is not one's own to add to.
  const ride = useApp((state) => (state.received ? null : state.ride))
  if (chosen.length === 0) return <p className="shelf-quiet">{words.songs.check}</p>

  const title = ride?.title || words.names.untitled
  const room = LIMITS.sections - (ride?.sections.length ?? 0)
  const songs = () => chosen.map((kept) => forRide(kept, store.getState().newId))
  const begin = () => store.getState().openRide(rideOfSongs(songs(), store.getState().newId))
  const add = () => {
    const { ride: open, newId, run, setPlace } = store.getState()
    if (!open) return
    const sections = sectionsFromSongs(songs(), newId, open.sections.length === 0)
    run(insertSections(open, { index: open.sections.length, sections }))
    setPlace('draft')
  }
  return (
    <section className="shelf-chosen" aria-label={words.songs.checked}>
      <p>{words.songs.checkedCount({ songs: chosen.length, seconds: Math.round(playedSeconds(chosen.map(({ song }) => song))) })}</p>
      <Button tone="solid" disabled={chosen.length > LIMITS.sections} onClick={begin}>
        {words.songs.makeRide({ songs: chosen.length })}
      </Button>
      {ride && (
        <Button tone="action" disabled={chosen.length > room} onClick={add}>
          {words.songs.addTo({ ride: title })}
        </Button>
      )}
      <Button tone="quiet" onClick={onNone}>
        {words.songs.clear}
      </Button>
      {(chosen.length > LIMITS.sections || (ride && chosen.length > room)) && (
        <p>
          {ride && chosen.length <= LIMITS.sections
            ? words.songs.mostHere({ most: LIMITS.sections, ride: title, room: Math.max(0, room) })
            : words.songs.most({ most: LIMITS.sections })}
        </p>
      )}
    </section>
  )
}
