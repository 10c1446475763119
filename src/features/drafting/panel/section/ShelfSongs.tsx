import { useEffect, useMemo, useState } from 'react'
import { type Constants, constantsOf } from '#engine/constants.ts'
import { energyWanted } from '#engine/fit/energyWanted.ts'
import { legsWanted, rankSongs } from '#engine/fit/rankSongs.ts'
import { sayRank } from '#engine/fit/sayRank.ts'
import { energyOf } from '#engine/loudness/energyOf.ts'
import type { Energy } from '#engine/loudness/guessEnergy.ts'
import { SwapSong } from '#features/drafting/panel/section/SwapSong.tsx'
import type { TaughtClass } from '#plan/kept/taught.ts'
import type { Section, Song, StrikesPerBeat } from '#plan/model.ts'
import { findSongs, forRide, onShelf, type ShelfSong, songKey } from '#plan/songs/shelfSong.ts'
import type { SongSound } from '#plan/sound/songSound.ts'
import { useApp, useAppStore } from '#store/useApp.ts'
import { Button } from '#ui/Button.tsx'
import { tell, words } from '#words/words.ts'
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
        {there ? words.panelsSong.updateMySongs : words.panelsSong.addToMySongs}
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
  const shelf = useApp((state) => state.songs)
  const sounds = useApp((state) => state.sounds)
  const taught = useApp((state) => state.taught)
  const houseRules = useApp((state) => state.shown?.houseRules)
  const [chosen, setChosen] = useState<{ id: string; song: Song } | null>(null)
  const known = useMemo(
    () => ({ shelf, sounds, lately: playedIn(taught), rules: constantsOf({ houseRules }) }),
    [shelf, sounds, taught, houseRules],
  )
  const offered = useMemo(() => offersFor(section, known), [section, known])
  useEffect(() => {
    void store.getState().wantSounds(shelf.flatMap(({ song }) => song.fingerprint ?? []))
    if (store.getState().taught.length === 0) void store.getState().refreshTaught()
  }, [store, shelf])
  if (offered.length === 0) return null
  const songOf = (kept: Offer['kept'], strikes: Offer['strikes']): Song => ({
    ...forRide(kept, store.getState().newId),
    ...(strikes !== undefined && { strikesPerBeat: strikes }),
  })
  return (
    <div className="panel-shelf">
      <p className="panel-label">{words.panelsSong.bestFirst}</p>
      <ul>
        {offered.map(({ kept, why, strikes }) => (
          <li key={kept.id}>
            <Button
              tone="quiet"
              pressed={chosen?.id === kept.id}
              onClick={() => setChosen(chosen?.id === kept.id ? null : { id: kept.id, song: songOf(kept, strikes) })}
            >
              {kept.song.artist ? words.panelsSong.byArtist({ title: kept.song.title, artist: kept.song.artist }) : kept.song.title}
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

/** What is known of songs beside themselves. */
interface Known {
  shelf: readonly ShelfSong[]
  sounds: ReadonlyMap<string, SongSound>
  /** Keys of songs played in the last classes. */
  lately: ReadonlySet<string>
  rules: Constants
}

function offersFor(section: Section, { shelf, sounds, lately, rules }: Known): Offer[] {
  const others = shelf.filter(({ song }) => !section.song || songKey(song) !== songKey(section.song))
  const energies = new Map(others.flatMap((kept) => entryOf(kept.song.id, driveOf(kept, sounds))))
  const own = section.song && shelf.find(({ song }) => songKey(song) === songKey(section.song!))
  const wanted = (own && driveOf(own, sounds)) ?? energyWanted(section.blocks)
  const recent = new Set(others.filter(({ song }) => lately.has(songKey(song))).map(({ song }) => song.id))
  const ranked = rankSongs(
    section,
    others.map(({ song }) => song),
    { energies, recent, rules, ...(wanted && { wanted }) },
  ).map((rank) => ({
    kept: others.find(({ song }) => song === rank.song)!,
    why: tell(sayRank(section, rank, rules)),
    ...(legsWanted(section, rules) && { strikes: rank.strikesPerBeat }),
  }))
  const rest = findSongs(others, '', 'title').filter((kept) => !ranked.some((other) => other.kept === kept))
  return [...ranked, ...rest.map((kept): Offer => ({ kept, why: kept.song.grid ? '' : words.panelsSong.noTempo }))].slice(0, OFFERED)
}

const driveOf = ({ song, energy }: ShelfSong, sounds: Known['sounds']): Energy | undefined =>
  energyOf(song, { energy, loudness: sounds.get(song.fingerprint ?? '')?.loudness })

const entryOf = <V,>(key: string, value: V | undefined): [string, V][] => (value === undefined ? [] : [[key, value]])

/** Classes whose songs count as played lately. */
const LATELY = 4

const playedIn = (log: readonly TaughtClass[]): Set<string> =>
  new Set(
    log.slice(0, LATELY).flatMap(({ sections }) => sections.filter(({ song, outcome }) => song && outcome !== 'skipped').map(songKey)),
  )
