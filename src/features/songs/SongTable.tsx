import { useMemo } from 'react'
import { tempoOf } from '#plan/model.ts'
import { type ShelfSong, songKey } from '#plan/songs/shelfSong.ts'
import { useApp } from '#store/useApp.ts'
import { Button } from '#ui/Button.tsx'
import { formatClock } from '#units/formatClock.ts'
import { formatNumber } from '#units/formatNumber.ts'
import { plural } from '#units/plural.ts'
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
            <span className="ui-hidden">chosen</span>
          </th>
          <th scope="col">song</th>
          <th scope="col">length</th>
          <th scope="col">tempo</th>
          <th scope="col">cadence at ½, 1, 2 strikes a beat</th>
          <th scope="col">energy</th>
          <th scope="col">known of it</th>
          <th scope="col">used in</th>
          <th scope="col">
            <span className="ui-hidden">actions</span>
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
  const file = useApp((state) =>
    state.keptSoundFiles.has(fingerprint) ? 'file kept' : state.soundFiles.has(fingerprint) && 'file at hand',
  )
  const bpm = song.grid && tempoOf(song.grid)
  return (
    <tr>
      <td className="shelf-choose">
        <label>
          <input
            type="checkbox"
            checked={turn > 0}
            aria-label={`choose ${song.title}`}
            onChange={(event) => onChoose(kept.id, event.currentTarget.checked)}
          />
          <span aria-hidden="true">{turn > 0 && turn}</span>
        </label>
      </td>
      <th scope="row">
        <b>{song.title}</b>
        {song.artist && <span className="shelf-quiet">{song.artist}</span>}
      </th>
      <td data-head="length">{formatClock(Math.round(song.lengthSeconds))}</td>
      <td data-head="tempo">{bpm === undefined ? 'not known' : formatNumber(bpm, 2)}</td>
      <td data-head="cadence at ½, 1, 2">
        {bpm === undefined ? '–' : [0.25, 0.5, 1].map((share) => formatNumber(bpm * share, 0)).join(' · ')}
      </td>
      <td data-head="energy">
        {sayEnergy(kept, sound)}
        {sound && <LoudnessLine loudness={sound.loudness} label={`loudness of ${song.title} over its time`} />}
      </td>
      <td data-head="known">{sayKnown(kept, file)}</td>
      <td data-head="used in">{sayUsed(rides ?? [], classes)}</td>
      <td className="shelf-actions">
        <Button tone="quiet" aria-label={`edit ${song.title}`} onClick={() => onEdit(kept)}>
          edit
        </Button>
        <Button tone="quiet" aria-label={`remove ${song.title} from the shelf`} onClick={() => void removeSong(kept.id)}>
          remove
        </Button>
      </td>
    </tr>
  )
}

function sayKnown({ song }: ShelfSong, file: string | false): string {
  const words = [
    song.clean && 'clean',
    song.marks?.length && plural(song.marks.length, 'mark'),
    song.quiet?.length && `${song.quiet.length} quiet`,
    file,
  ]
  return words.filter((word) => typeof word === 'string').join(', ')
}

function sayUsed(rides: readonly string[], classes: { times: number; last: string } | undefined): string {
  const named = rides.length <= 2 ? rides.join(', ') : `${rides[0]}, ${rides[1]} and ${rides.length - 2} more`
  const taught = classes && `taught ${classes.times === 1 ? 'once' : `${classes.times} times`}, last on ${classes.last}`
  return [named, taught].filter((word) => word).join('; ')
}
