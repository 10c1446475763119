import { type DragEvent, useEffect, useRef, useState } from 'react'
import { sayHearing } from '#engine/alignment/sayHearing.ts'
import type { HeardSong, Hearing } from '#plan/heardSong.ts'
import type { Song } from '#plan/model.ts'
import { songHeard } from '#plan/songHeard.ts'
import type { HearingOf } from '#store/ports.ts'
import { useApp } from '#store/useApp.ts'
import { Button } from '#ui/Button.tsx'
import { FileButton } from '#ui/FileButton.tsx'
import './hearSong.css'

export interface HearSongProps {
  /** The song of the section, whose beat is looked for; without one a song is made of the file. */
  song: Song | null | undefined
  newId: () => string
  onSong: (song: Song) => void
}

interface Row {
  key: number
  name: string
  hearing: Hearing
}

const SOUND = 'audio/*,.mp3,.m4a,.aac,.wav,.ogg,.opus,.flac'

/**
 * Reads tempo, beats and bars from files of music that are chosen or dropped here. One file goes straight to the
 * section's song, as one undo step; of several, each says what it gave and can be taken. Nothing leaves the machine.
 */
export function HearSong({ song, newId, onSong }: HearSongProps) {
  const hear = useApp((state) => state.hearSong)
  const [rows, setRows] = useState<Row[]>([])
  const [over, setOver] = useState(false)
  const running = useRef(new Map<number, HearingOf>())
  const lastKey = useRef(0)
  // The song and what takes it as they are when a file has been heard, which may be a minute after it was dropped.
  const latest = useRef({ song, newId, onSong })
  useEffect(() => {
    latest.current = { song, newId, onSong }
  })
  useEffect(() => {
    const started = running.current
    return () => {
      for (const one of started.values()) one.abort()
    }
  }, [])
  if (!hear) return null

  const take = (heard: HeardSong) => latest.current.onSong(songHeard(heard, latest.current.song, latest.current.newId))
  const start = (files: readonly File[]) => {
    const fresh = files.map((file) => ({ file, key: ++lastKey.current }))
    setRows(fresh.map(({ file, key }) => ({ key, name: file.name, hearing: { kind: 'waiting' } })))
    for (const one of running.current.values()) one.abort()
    running.current.clear()
    for (const { file, key } of fresh) {
      const one = hear(file, {}, (hearing) => {
        setRows((before) => before.map((row) => (row.key === key ? { ...row, hearing } : row)))
        if (hearing.kind === 'heard' && fresh.length === 1) take(hearing.song)
      })
      running.current.set(key, one)
    }
  }
  const drop = (event: DragEvent) => {
    setOver(false)
    const files = [...event.dataTransfer.files]
    if (files.length === 0) return
    event.preventDefault()
    // The page itself takes what is dropped for a ride.
    event.stopPropagation()
    start(files)
  }
  return (
    <section
      className="panel-group panel-edit-only panel-hear"
      aria-label="beat from a file"
      data-over={over || undefined}
      onDragOver={(event) => {
        if (!event.dataTransfer.types.includes('Files')) return
        event.preventDefault()
        setOver(true)
      }}
      onDragLeave={() => setOver(false)}
      onDrop={drop}
    >
      <FileButton accept={SOUND} onFile={(file) => start([file])}>
        read the beat from a file
      </FileButton>
      <p className="panel-note">Or drop files of music here. They are read on this machine and sent nowhere.</p>
      <ul className="panel-hearings" aria-live="polite">
        {rows.map((row) => (
          <HearingRow
            key={row.key}
            row={row}
            onAbort={() => running.current.get(row.key)?.abort()}
            onTake={rows.length > 1 ? take : undefined}
          />
        ))}
      </ul>
    </section>
  )
}

function HearingRow({ row, onAbort, onTake }: { row: Row; onAbort: () => void; onTake: ((song: HeardSong) => void) | undefined }) {
  const { name, hearing } = row
  const going = hearing.kind === 'waiting' || hearing.kind === 'decoding' || hearing.kind === 'analysing'
  return (
    <li data-hearing={hearing.kind}>
      <span>{sayHearing(name, hearing)}</span>
      {going && <progress value={hearing.kind === 'analysing' ? hearing.share : 0} max={1} aria-label={`reading ${name}`} />}
      {going && (
        <Button tone="quiet" onClick={onAbort}>
          stop
        </Button>
      )}
      {hearing.kind === 'heard' && onTake && <Button onClick={() => onTake(hearing.song)}>take this one</Button>}
    </li>
  )
}
