import { useMemo } from 'react'
import type { Song } from '#plan/model.ts'
import { songKey } from '#plan/songs/shelfSong.ts'
import { useApp } from '#store/useApp.ts'
import { words } from '#words/words.ts'
import { classesOf } from './classesOf.ts'
import { RiddenBefore } from './RiddenBefore.tsx'

const SHOWN = 8

/** Where a kept song is used: the rides that hold it, and the classes it was played to, with their days. */
export function SongUse({ song }: { song: Song }) {
  const rides = useApp((state) => state.songRides.get(songKey(song)))
  const log = useApp((state) => state.taught)
  const classes = useMemo(() => classesOf(songKey(song), log), [song, log])
  if (song.title === '') return null
  return (
    <section className="shelf-use" aria-label={words.songs.whereUsed}>
      <h3>{words.songs.used}</h3>
      {!rides && classes.length === 0 && <p className="shelf-quiet">{words.songs.nowhere}</p>}
      {rides && <p>{words.songs.inRides({ rides: rides.map((title) => title || words.names.untitled) })}</p>}
      {classes.length > 0 && (
        <ul>
          {classes.slice(0, SHOWN).map(({ id, day, title }) => (
            <li key={id}>{words.songs.inClass({ on: day, title: title || words.names.untitled })}</li>
          ))}
          {classes.length > SHOWN && <li>{words.songs.moreClasses({ classes: classes.length - SHOWN })}</li>}
        </ul>
      )}
      <RiddenBefore song={song} />
    </section>
  )
}
