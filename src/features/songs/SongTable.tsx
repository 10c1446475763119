import { useMemo } from 'react'
import { tempoOf } from '#plan/model.ts'
import { type ShelfSong, songKey } from '#plan/songs/shelfSong.ts'
import { useApp } from '#store/useApp.ts'
import { Button } from '#ui/Button.tsx'
import { clock, number } from '#words/forms.ts'
import { words } from '#words/words.ts'
import { LoudnessLine } from './LoudnessLine.tsx'
import { sayEnergy } from './sayEnergy.ts'
import { taughtBySong } from './taughtBySong.ts'

interface SongTableProps {
  songs: readonly ShelfSong[]
  /** Ids of those chosen, in the order they were chosen in. */
  chosen: readonly string[]
  onChoose: (id: string, chosen: boolean) => void
  onEdit: (song: ShelfSong) => void
}

/** Kept songs with what a ride needs to know of them, and where they are used. */
export function SongTable({ songs, chosen, onChoose, onEdit }: SongTableProps) {
  const taught = useApp((state) => state.taught)
  const classes = useMemo(() => taughtBySong(taught), [taught])
  return (
    <table className="shelf-table">
      <thead>
        <tr>
          <th scope="col">
            <span className="ui-hidden">{words.songs.checkedHead}</span>
          </th>
          <th scope="col">{words.songs.songHead}</th>
          <th scope="col">{words.songs.lengthHead}</th>
          <th scope="col">{words.songs.tempoHead}</th>
          <th scope="col">{words.songs.cadenceHead}</th>
          <th scope="col">{words.songs.energyHead}</th>
          <th scope="col">{words.songs.detailsHead}</th>
          <th scope="col">{words.songs.usedHead}</th>
          <th scope="col">
            <span className="ui-hidden">{words.songs.actionsHead}</span>
          </th>
        </tr>
      </thead>
      <tbody>
        {songs.map((kept) => (
          <SongRow
            key={kept.id}
            kept={kept}
            classes={classes.get(songKey(kept.song))}
            turn={chosen.indexOf(kept.id) + 1}
            onChoose={onChoose}
            onEdit={onEdit}
          />
        ))}
      </tbody>
    </table>
  )
}

interface SongRowProps {
  kept: ShelfSong
  classes: { times: number; last: string } | undefined
  /** Its place among the songs chosen, from 1; 0 when it is not. */
  turn: number
  onChoose: (id: string, chosen: boolean) => void
  onEdit: (song: ShelfSong) => void
}

function SongRow({ kept, classes, turn, onChoose, onEdit }: SongRowProps) {
  const { song } = kept
  const { fingerprint = '' } = song
  const rides = useApp((state) => state.songRides.get(songKey(song)))
  const sound = useApp((state) => state.sounds.get(fingerprint))
  const removeSong = useApp((state) => state.removeSong)
  const file = useApp((state) => (state.keptSoundFiles.has(fingerprint) ? 'saved' : state.soundFiles.has(fingerprint) && 'atHand'))
  const bpm = song.grid && tempoOf(song.grid)
  return (
    <tr data-song={kept.id}>
      <td className="shelf-choose">
        <label>
          <input
            type="checkbox"
            checked={turn > 0}
            aria-label={words.songs.checkSong({ song: song.title })}
            onChange={(event) => onChoose(kept.id, event.currentTarget.checked)}
          />
          <span aria-hidden="true">{turn > 0 && turn}</span>
        </label>
      </td>
      <th scope="row">
        <b>{song.title}</b>
        {song.artist && <span className="shelf-quiet">{song.artist}</span>}
      </th>
      <td data-head={words.songs.lengthHead}>{clock(Math.round(song.lengthSeconds))}</td>
      <td data-head={words.songs.tempoHead}>{bpm === undefined ? words.songs.unknownTempo : number(bpm, 2)}</td>
      <td data-head={words.songs.cadenceHead}>
        {bpm === undefined ? '–' : [0.25, 0.5, 1].map((share) => number(bpm * share, 0)).join(' · ')}
      </td>
      <td data-head={words.songs.energyHead}>
        {sayEnergy(kept, sound)}
        {sound && <LoudnessLine loudness={sound.loudness} label={words.songs.loudnessOf({ song: song.title })} />}
      </td>
      <td data-head={words.songs.detailsHead}>{sayKnown(kept, file)}</td>
      <td data-head={words.songs.usedHead}>{sayUsed(rides ?? [], classes)}</td>
      <td className="shelf-actions">
        <Button tone="quiet" aria-label={words.songs.editSong({ song: song.title })} onClick={() => onEdit(kept)}>
          {words.songs.edit}
        </Button>
        <Button tone="quiet" aria-label={words.songs.removeSong({ song: song.title })} onClick={() => void removeSong(kept.id)}>
          {words.songs.remove}
        </Button>
      </td>
    </tr>
  )
}

function sayKnown({ song }: ShelfSong, file: 'saved' | 'atHand' | false): string {
  const { clean, markers, noTalkZones, fileSaved, fileAtHand } = words.songs
  const known = [
    song.clean && clean,
    song.marks?.length && markers({ count: song.marks.length }),
    song.quiet?.length && noTalkZones({ count: song.quiet.length }),
    file && { saved: fileSaved, atHand: fileAtHand }[file],
  ]
  return known.filter((word) => typeof word === 'string').join(', ')
}

function sayUsed(rides: readonly string[], classes: { times: number; last: string } | undefined): string {
  const named = rides.length > 0 && words.songs.usedIn({ rides: rides.slice(0, 2), more: Math.max(0, rides.length - 2) })
  const taught = classes && words.songs.taught(classes)
  return [named, taught].filter((word) => word).join('; ')
}
