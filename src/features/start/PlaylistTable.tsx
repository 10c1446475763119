import { DEFAULT_LEAD_IN } from '#plan/defaults.ts'
import { type PlaylistSong, strikesForTempo, USUAL_SONG } from '#plan/sectionsFromPlaylist.ts'
import { Field } from '#ui/Field.tsx'
import { formatClock } from '#units/formatClock.ts'
import type { Bpm, Seconds } from '#units/units.ts'
import type { PlaylistRow } from './readPlaylist.ts'

interface Props {
  rows: readonly PlaylistRow[]
  slotMinutes: number
  /** Takes the new text of a line, or says why that is no song either. */
  onLine: (line: number, text: string) => string | null
}

/** What was understood of a pasted playlist, line by line, and whether it fits the slot. */
export function PlaylistTable({ rows, slotMinutes, onLine }: Props) {
  const songs = rows.flatMap((row) => ('song' in row ? row.song : []))
  return (
    <table className="start-table">
      <caption className="ui-hidden">what was understood</caption>
      <thead>
        <tr>
          <th scope="col">song</th>
          <th scope="col" className="start-number">
            length
          </th>
          <th scope="col" className="start-number">
            tempo
          </th>
          <th scope="col" className="start-number">
            cadence
          </th>
        </tr>
      </thead>
      <tbody>
        {rows.map((row) =>
          'song' in row ? (
            <SongRow key={row.line} song={row.song} />
          ) : (
            <tr key={row.line} className="start-refused">
              <td colSpan={4}>
                <Field label={`line ${row.line}`} value={row.text} hint={row.sentence} onCommit={(text) => onLine(row.line, text)} />
              </td>
            </tr>
          ),
        )}
      </tbody>
      {songs.length > 0 && <Fit songs={songs} slot={slotMinutes * 60} />}
    </table>
  )
}

function SongRow({ song: { title, artist, lengthSeconds, bpm } }: { song: PlaylistSong }) {
  return (
    <tr>
      <td>
        {title} {artist && <span className="start-artist">{artist}</span>}
      </td>
      <td className="start-number">{lengthSeconds === undefined ? 'not given' : formatClock(lengthSeconds)}</td>
      <td className="start-number">{bpm === undefined ? 'not given' : `${bpm} bpm`}</td>
      <td className="start-number">{bpm === undefined ? '' : `${Math.round(cadenceAt(bpm))} rpm`}</td>
    </tr>
  )
}

/** All songs with the usual gap between them, against the slot. */
function Fit({ songs, slot }: { songs: readonly PlaylistSong[]; slot: Seconds }) {
  const music = songs.reduce((sum, { lengthSeconds }) => sum + (lengthSeconds ?? USUAL_SONG), 0)
  const total = music + DEFAULT_LEAD_IN * (songs.length - 1)
  const left = slot - total
  const unknown = songs.filter(({ lengthSeconds }) => lengthSeconds === undefined).length
  return (
    <tfoot>
      <tr>
        <td colSpan={4}>
          <span role="status">
            {formatClock(total)} of {formatClock(slot)}, {left >= 0 ? `${formatClock(left)} to spare` : `${formatClock(-left)} too long`}
          </span>
          <span className="start-fit-note">
            {' '}
            with {DEFAULT_LEAD_IN} s between songs
            {unknown > 0 && `; ${formatClock(USUAL_SONG)} is taken for a length not given`}
          </span>
        </td>
      </tr>
    </tfoot>
  )
}

/** Revolutions a minute with the strikes a beat the ride will start with. */
const cadenceAt = (bpm: Bpm): number => (bpm * (strikesForTempo(bpm) ?? 1)) / 2
