import { tempoOf } from '#plan/model.ts'
import { type ShelfSong, songKey } from '#plan/shelfSong.ts'
import { plural } from '#plan/words.ts'
import { useApp } from '#store/useApp.ts'
import { Button } from '#ui/Button.tsx'
import { formatClock } from '#units/formatClock.ts'
import { formatNumber } from '#units/formatNumber.ts'
import { taughtBySong } from './taughtBySong.ts'

/** Kept songs with what a ride needs to know of them, and where they are used. */
export function SongTable({ songs, onEdit }: { songs: readonly ShelfSong[]; onEdit: (song: ShelfSong) => void }) {
  const rides = useApp((state) => state.songRides)
  const taught = useApp((state) => state.taught)
  const removeSong = useApp((state) => state.removeSong)
  const classes = taughtBySong(taught)
  return (
    <div className="shelf-scroll">
      <table className="shelf-table">
        <thead>
          <tr>
            <th scope="col">song</th>
            <th scope="col">length</th>
            <th scope="col">tempo</th>
            <th scope="col">cadence at ½, 1, 2 strikes a beat</th>
            <th scope="col">known of it</th>
            <th scope="col">used in</th>
            <th scope="col">
              <span className="ui-hidden">actions</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {songs.map((kept) => {
            const { song } = kept
            const bpm = song.grid && tempoOf(song.grid)
            return (
              <tr key={kept.id}>
                <th scope="row">
                  <b>{song.title}</b>
                  {song.artist && <span className="shelf-quiet">{song.artist}</span>}
                </th>
                <td>{formatClock(song.lengthSeconds)}</td>
                <td>{bpm === undefined ? 'not known' : formatNumber(bpm, 2)}</td>
                <td>{bpm === undefined ? '–' : [0.25, 0.5, 1].map((share) => formatNumber(bpm * share, 0)).join(' · ')}</td>
                <td>{sayKnown(kept)}</td>
                <td>{sayUsed(rides.get(songKey(song)) ?? [], classes.get(songKey(song)))}</td>
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
          })}
        </tbody>
      </table>
    </div>
  )
}

function sayKnown({ song, energy }: ShelfSong): string {
  const words = [
    energy && `energy ${energy} of 5`,
    song.clean && 'clean',
    song.marks?.length && plural(song.marks.length, 'mark'),
    song.quiet?.length && `${song.quiet.length} quiet`,
  ]
  return words.filter((word) => typeof word === 'string').join(', ')
}

function sayUsed(rides: readonly string[], classes: { times: number; last: string } | undefined): string {
  const named = rides.length <= 2 ? rides.join(', ') : `${rides[0]}, ${rides[1]} and ${rides.length - 2} more`
  const taught = classes && `taught ${classes.times === 1 ? 'once' : `${classes.times} times`}, last on ${classes.last}`
  return [named, taught].filter((word) => word).join('; ')
}
