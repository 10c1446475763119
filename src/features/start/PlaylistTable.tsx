import { useId } from 'react'
import { DEFAULT_LEAD_IN } from '#plan/defaults.ts'
import { type PlaylistSong, strikesForTempo, USUAL_SONG } from '#plan/songs/sectionsFromPlaylist.ts'
import type { Bpm, Seconds } from '#units/units.ts'
import { clock } from '#words/forms.ts'
import { tell, words } from '#words/words.ts'
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

/** What was understood of a pasted playlist, line by line, and whether it fits the class. */
export function PlaylistTable({ rows, open, slotMinutes, onLine, onLineDone }: Props) {
  const songs = rows.flatMap((row) => row.song ?? [])
  return (
    <table className="start-table">
      <caption className="ui-hidden">{words.start.read}</caption>
      <thead>
        <tr>
          <th scope="col">{words.start.song}</th>
          <th scope="col" className="start-number">
            {words.start.length}
          </th>
          <th scope="col" className="start-number">
            {words.start.tempo}
          </th>
          <th scope="col" className="start-number">
            {words.start.cadence}
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
      <td className="start-number">{lengthSeconds === undefined ? words.start.notGiven : clock(lengthSeconds)}</td>
      <td className="start-number">{bpm === undefined ? words.start.notGiven : words.measures.bpm(bpm)}</td>
      <td className="start-number">{bpm === undefined ? '' : words.measures.rpm(cadenceAt(bpm))}</td>
    </tr>
  )
}

/** An entry of a playlist file that is no song; it is mended in the file. */
function LeftOutRow({ row: { line, text, sentence } }: { row: PlaylistRow }) {
  return (
    <tr>
      <td colSpan={4}>{words.start.skipped({ line, text: tell(text).slice(0, 60), sentence: tell(sentence ?? '') })}</td>
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
            {words.start.line({ line: row.line })}
          </label>
          <input
            id={id}
            type="text"
            value={tell(row.text)}
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
            {row.sentence ? tell(row.sentence) : row.song ? songWords(row.song) : words.start.emptyLine}
          </p>
        </div>
      </td>
    </tr>
  )
}

/** "Read as Two, 3:57, 132 bpm." */
function songWords({ title, artist, lengthSeconds, bpm }: PlaylistSong): string {
  const parts = [
    title,
    artist,
    lengthSeconds === undefined ? undefined : clock(lengthSeconds),
    bpm === undefined ? undefined : words.measures.bpm(bpm),
  ]
  return words.start.readAs({ parts: parts.flatMap((part) => part || []) })
}

/** All songs with the usual gap between them, against the length of the class. */
function Fit({ songs, slot }: { songs: readonly PlaylistSong[]; slot: Seconds }) {
  const music = songs.reduce((sum, { lengthSeconds }) => sum + (lengthSeconds ?? USUAL_SONG), 0)
  const total = music + DEFAULT_LEAD_IN * (songs.length - 1)
  const unknown = songs.filter(({ lengthSeconds }) => lengthSeconds === undefined).length
  return (
    <tfoot>
      <tr>
        <td colSpan={4}>
          <span role="status">{words.start.timeLeft({ total, length: slot })}</span>
          <span className="start-fit-note">
            {songs.length > 1 && ` ${words.start.betweenSongs({ seconds: DEFAULT_LEAD_IN })}`}
            {unknown > 0 && ` ${words.start.usualLength({ seconds: USUAL_SONG })}`}
          </span>
        </td>
      </tr>
    </tfoot>
  )
}

/** Revolutions per minute with the strokes per beat the ride will start with. */
const cadenceAt = (bpm: Bpm): number => (bpm * (strikesForTempo(bpm) ?? 1)) / 2
