import { useState } from 'react'
import { type SongUsed, songsUsed } from '#engine/log/songsUsed.ts'
import { DayField } from '#features/log/DayField.tsx'
import type { TaughtClass } from '#plan/kept/taught.ts'
import { useApp } from '#store/useApp.ts'
import { Button } from '#ui/Button.tsx'
import { saveTextFile } from '#ui/saveTextFile.ts'
import type { Day } from '#units/day.ts'
import { clock, wallClock } from '#words/forms.ts'
import { words } from '#words/words.ts'

/** Writes rows as CSV; given by the app, which fetches the writer when it is needed. */
export type WriteTable = (rows: (string | number | undefined)[][]) => Promise<string>

interface Props {
  log: readonly TaughtClass[]
  today: Day
  writeTable: WriteTable
}

const HEAD = ['date', 'start', 'room', 'ride', 'title', 'artist', 'seconds_played', 'head_count']

/** What was played when, for those who license music. */
export function SongsUsed({ log, today, writeTable }: Props) {
  const announce = useApp((state) => state.announce)
  const [from, setFrom] = useState<Day>(`${today.slice(0, 8)}01`)
  const [to, setTo] = useState(today)
  const used = songsUsed(log, from, to)
  const save = async () => {
    const rows = used.map(({ day, startedAt, room, ride, title, artist, seconds, headCount }) => [
      day,
      startedAt,
      room,
      ride,
      title,
      artist,
      Math.round(seconds),
      headCount,
    ])
    const name = `songs-used-${from}-to-${to}.csv`
    saveTextFile(name, `\ufeff${await writeTable([HEAD, ...rows])}`, 'text/csv;charset=utf-8')
    announce(words.log.saved({ file: name }))
  }
  return (
    <>
      <style>{'@page { margin: 15mm }'}</style>
      <div className="log-range">
        <DayField label={words.log.from} day={from} onChange={setFrom} />
        <DayField label={words.log.to} day={to} onChange={setTo} />
        <Button tone="action" onClick={() => void save()} disabled={used.length === 0}>
          {words.log.saveCsv}
        </Button>
        <Button onClick={() => window.print()} disabled={used.length === 0}>
          {words.log.print}
        </Button>
      </div>
      <p className="log-hint">{words.log.licenses}</p>
      {used.length === 0 ? <p>{words.log.noSongs}</p> : <UsedTable used={used} from={from} to={to} />}
    </>
  )
}

function UsedTable({ used, from, to }: { used: readonly SongUsed[]; from: Day; to: Day }) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: where the table is wider than the screen, arrow keys scroll it
    <section className="log-table-frame" aria-label={words.log.songsTable} tabIndex={0}>
      <table className="log-used">
        <caption>{words.log.songsPlayed({ count: used.length, from, to })}</caption>
        <thead>
          <tr>
            <th scope="col">{words.log.head.day}</th>
            <th scope="col">{words.log.head.start}</th>
            <th scope="col">{words.log.head.room}</th>
            <th scope="col">{words.log.head.title}</th>
            <th scope="col">{words.log.head.artist}</th>
            <th scope="col">{words.log.head.played}</th>
            <th scope="col">{words.log.head.riders}</th>
          </tr>
        </thead>
        <tbody>
          {used.map(({ day, startedAt, room, title, artist, seconds, headCount }, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a row of a report is its place
            <tr key={index}>
              <td>{words.log.shortDay(day)}</td>
              <td>{startedAt && wallClock(startedAt)}</td>
              <td>{room}</td>
              <td>{title}</td>
              <td>{artist}</td>
              <td className="log-number">{clock(seconds)}</td>
              <td className="log-number">{headCount}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  )
}
