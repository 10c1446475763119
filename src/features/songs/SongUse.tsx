import { useMemo } from 'react'
import type { Song } from '#plan/model.ts'
import { songKey } from '#plan/songs/shelfSong.ts'
import { useApp } from '#store/useApp.ts'
import { classesOf } from './classesOf.ts'

const SHOWN = 8

/** Where a kept song is used: the rides that hold it, and the classes it was played to, with their days. */
export function SongUse({ song }: { song: Song }) {
  const rides = useApp((state) => state.songRides.get(songKey(song)))
  const log = useApp((state) => state.taught)
  const classes = useMemo(() => classesOf(songKey(song), log), [song, log])
  if (song.title === '') return null
  return (
    <section className="shelf-use" aria-label="where it is used">
      <h3>used</h3>
      {!rides && classes.length === 0 && <p className="shelf-quiet">In no ride and no class yet.</p>}
      {rides && <p>in {rides.map((title) => `“${title || 'untitled ride'}”`).join(', ')}</p>}
      {classes.length > 0 && (
        <ul>
          {classes.slice(0, SHOWN).map(({ id, day, title }) => (
            <li key={id}>
              {day}: {title || 'untitled ride'}
            </li>
          ))}
          {classes.length > SHOWN && <li>and {classes.length - SHOWN} classes before</li>}
        </ul>
      )}
    </section>
  )
}
