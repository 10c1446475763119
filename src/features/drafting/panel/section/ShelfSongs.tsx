import { useMemo, useState } from 'react'
import { rankSongs } from '#engine/fit/rankSongs.ts'
import { sayRank } from '#engine/fit/sayRank.ts'
import { SwapSong } from '#features/drafting/panel/section/SwapSong.tsx'
import type { Section, Song, StrikesPerBeat } from '#plan/model.ts'
import { findSongs, forRide, onShelf, type ShelfSong, songKey } from '#plan/shelfSong.ts'
import { useApp, useAppStore } from '#store/useApp.ts'
import { Button } from '#ui/Button.tsx'
import './shelfSongs.css'

/** Songs offered at once; the rest are found on the shelf itself. */
const OFFERED = 6

/** Keeps a section's song on the shelf. */
export function KeepSong({ song }: { song: Song }) {
  const store = useAppStore()
  const keepsSongs = useApp((state) => state.keepsSongs)
  const there = useApp((state) => state.songs.some((kept) => songKey(kept.song) === songKey(song)))
  if (!keepsSongs) return null
  const keep = () => {
    const { songs, newId, keepSongs } = store.getState()
    void keepSongs([onShelf(song, songs, newId)])
  }
  return (
    <p className="panel-beside panel-edit-only">
      <Button tone="quiet" onClick={keep}>
        {there ? 'keep it on the shelf as it is now' : 'keep it on the shelf'}
      </Button>
    </p>
  )
}

/**
 * Songs of the shelf for a section, those that suit it best first with the reasons; the one that is
 * chosen shows what it would keep, move and drop before it is taken.
 */
export function ShelfSongs({ section, onTaken }: { section: Section; onTaken: () => void }) {
  const store = useAppStore()
  const songs = useApp((state) => state.songs)
  const [chosen, setChosen] = useState<{ id: string; song: Song } | null>(null)
  const offered = useMemo(() => offersFor(section, songs), [section, songs])
  if (offered.length === 0) return null
  return (
    <div className="panel-shelf">
      <p className="panel-label">from the shelf, the best fits first</p>
      <ul>
        {offered.map(({ kept, why, strikes }) => (
          <li key={kept.id}>
            <Button
              tone="quiet"
              pressed={chosen?.id === kept.id}
              onClick={() =>
                setChosen({
                  id: kept.id,
                  song: { ...forRide(kept, store.getState().newId), ...(strikes !== undefined && { strikesPerBeat: strikes }) },
                })
              }
            >
              {kept.song.artist ? `${kept.song.title}, ${kept.song.artist}` : kept.song.title}
            </Button>
            {why && <span className="panel-quiet">{why}</span>}
            {chosen?.id === kept.id && <SwapSong sectionId={section.id} song={chosen.song} onDone={onTaken} />}
          </li>
        ))}
      </ul>
    </div>
  )
}

interface Offer {
  kept: ShelfSong
  why: string
  /** The strikes that keep the section's legs; the song's own where there is nothing to keep. */
  strikes?: StrikesPerBeat
}

function offersFor(section: Section, shelf: readonly ShelfSong[]): Offer[] {
  const others = shelf.filter(({ song }) => !section.song || songKey(song) !== songKey(section.song))
  const ranked = rankSongs(
    section,
    others.map(({ song }) => song),
  ).map((rank) => ({
    kept: others.find(({ song }) => song === rank.song)!,
    why: sayRank(section, rank),
    ...(section.song?.grid && { strikes: rank.strikesPerBeat }),
  }))
  const rest = findSongs(others, '', 'title').filter((kept) => !ranked.some((other) => other.kept === kept))
  return [...ranked, ...rest.map((kept): Offer => ({ kept, why: kept.song.grid ? '' : 'no tempo known' }))].slice(0, OFFERED)
}
