import { useId } from 'react'
import { DEFAULT_LEAD_IN } from '#plan/defaults.ts'
import { type PlaylistSong, strikesForTempo, USUAL_SONG } from '#plan/songs/sectionsFromPlaylist.ts'
import { formatClock } from '#units/formatClock.ts'
import type { Bpm, Seconds } from '#units/units.ts'
import type { PlaylistRow } from './readPlaylist.ts'

interface Props {
  rows: readonly PlaylistRow[]
  /** Lines written in here: they keep their field until they are done, so that nothing moves under the pointer. */
  open: ReadonlySet<number>
  slotMinutes: number
  onLine: (line: number, text: string) => void
  /** Enter in the field of a line. */
  onLineDone: (line: number) => void
}

/** What was understood of a pasted playlist, line by line, and whether it fits the slot. */
export function PlaylistTable({ rows, open, slotMinutes, onLine, onLineDone }: Props) {
  const songs = rows.flatMap((row) => row.song ?? [])
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
          row.fixed ? (
            <LeftOutRow key={row.line} row={row} />
          ) : row.song && !open.has(row.line) ? (
            <SongRow key={row.line} song={row.song} />
          ) : (
            <LineRow key={row.line} row={row} onLine={onLine} onDone={onLineDone} />
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

/** An entry of a playlist file that is no song; it is mended in the file. */
function LeftOutRow({ row: { line, text, sentence } }: { row: PlaylistRow }) {
  return (
    <tr>
      <td colSpan={4}>
        {line}. “{text.slice(0, 60)}” is left out: {sentence}
      </td>
    </tr>
  )
}

function LineRow({ row, onLine, onDone }: { row: PlaylistRow; onLine: Props['onLine']; onDone: Props['onLineDone'] }) {
  const id = useId()
  return (
    <tr className="start-refused">
      <td colSpan={4}>
        <div className="ui-field">
          <label className="ui-field-label" htmlFor={id}>
            line {row.line}
          </label>
          <input
            id={id}
            type="text"
            value={row.text}
            aria-invalid={row.sentence !== undefined}
            aria-describedby={`${id}-under`}
            autoComplete="off"
            spellCheck={false}
            onChange={(event) => onLine(row.line, event.currentTarget.value)}
            onKeyDown={(event) => {
              if (event.key !== 'Enter' || event.nativeEvent.isComposing) return
              event.preventDefault()
              onDone(row.line)
            }}
          />
          <p id={`${id}-under`} className="ui-field-under" role="status">
            {row.sentence ?? (row.song ? songWords(row.song) : 'Empty: this line is left out.')}
          </p>
        </div>
      </td>
    </tr>
  )
}

/** "Understood: Two, 3:57, 132 bpm." */
function songWords({ title, artist, lengthSeconds, bpm }: PlaylistSong): string {
  const parts = [
    title,
    artist,
    lengthSeconds === undefined ? undefined : formatClock(lengthSeconds),
    bpm === undefined ? undefined : `${bpm} bpm`,
  ]
  return `Understood: ${parts.filter((part) => part).join(', ')}.`
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
            {songs.length > 1 && ` with ${DEFAULT_LEAD_IN} s between songs`}
            {unknown > 0 && `; ${formatClock(USUAL_SONG)} is taken for a length not given`}
          </span>
        </td>
      </tr>
    </tfoot>
  )
}

/** Revolutions a minute with the strikes a beat the ride will start with. */
const cadenceAt = (bpm: Bpm): number => (bpm * (strikesForTempo(bpm) ?? 1)) / 2
