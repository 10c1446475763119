import { type DragEvent, useEffect, useMemo, useRef, useState } from 'react'
import { tempoWindow } from '#engine/cadence/tempoWindow.ts'
import { constantsOf } from '#engine/constants.ts'
import { KeepSongFile } from '#features/drafting/panel/section/KeepSongFile.tsx'
import { HearingRow, type SongHearing } from '#features/drafting/panel/section/SongHearing.tsx'
import { type Block, type Ride, type Song, tempoOf } from '#plan/model.ts'
import { type BeatHints, type Hearing, octaveAbout } from '#plan/songs/heardSong.ts'
import { linkedSong } from '#plan/songs/linkedSong.ts'
import { MUSIC_TYPES } from '#plan/songs/musicFile.ts'
import { songHeard } from '#plan/songs/songHeard.ts'
import type { HearingOf } from '#store/ports.ts'
import { useApp, useAppStore } from '#store/useApp.ts'
import { FileButton } from '#ui/FileButton.tsx'
import { words } from '#words/words.ts'
import './hearSong.css'

interface HearSongProps {
  sectionId: string
  /** The song of the section, whose beat is looked for; without one a song is made of the file. */
  song: Song | null | undefined
  /** What is ridden to it. */
  blocks: readonly Block[]
  houseRules: Ride['houseRules']
  newId: () => string
  onSong: (song: Song) => void
}

/**
 * Reads tempo, beats and bars from files of music that are chosen or dropped here. One file goes straight to the
 * section's song, as one undo step; of several, each says what it gave and can be taken. Nothing leaves the device.
 */
export function HearSong({ sectionId, song, blocks, houseRules, newId, onSong }: HearSongProps) {
  const store = useAppStore()
  const hear = useApp((state) => state.hearSong)
  const [rows, setRows] = useState<SongHearing[]>([])
  const [over, setOver] = useState(false)
  const running = useRef(new Map<number, HearingOf>())
  const lastKey = useRef(0)
  const hints = useMemo(() => hintsFor(song, blocks, houseRules), [song, blocks, houseRules])
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

  /** What the file is known to be: the section's own song, or one of the shelf. */
  const knownAs = (fingerprint: string): Song | undefined => {
    const { song: own, newId: makeId } = latest.current
    if (own?.fingerprint === fingerprint && own.grid) return own
    const kept = store.getState().songs.find((one) => one.song.fingerprint === fingerprint && one.song.grid)
    return kept && linkedSong(kept, own, makeId)
  }
  const isKnown = async (fingerprint: string) => {
    if (!knownAs(fingerprint)) return false
    await store.getState().wantSounds([fingerprint])
    return store.getState().sounds.has(fingerprint)
  }
  const put = (next: Song | undefined) => {
    if (next && next !== latest.current.song) latest.current.onSong(next)
  }
  const take = (hearing: Hearing) => {
    if (hearing.kind === 'heard') put(songHeard(hearing.song, latest.current.song, latest.current.newId))
    if (hearing.kind === 'known') put(knownAs(hearing.fingerprint))
  }
  const start = (files: readonly File[], anew = false) => {
    const fresh = files.map((file) => ({ file, key: ++lastKey.current }))
    setRows(fresh.map(({ file, key }) => ({ key, file, hearing: { kind: 'waiting' } })))
    for (const one of running.current.values()) one.abort()
    running.current.clear()
    for (const { file, key } of fresh) {
      const onChange = (hearing: Hearing) => {
        setRows((before) => before.map((row) => (row.key === key ? { ...row, hearing } : row)))
        if (fresh.length === 1) take(hearing)
      }
      running.current.set(key, hear(file, hints, onChange, { ahead: true, ...(!anew && { isKnown }) }))
    }
  }
  const drop = (event: DragEvent) => {
    setOver(false)
    const { files, items } = event.dataTransfer
    // A folder is for the shelf, where the page takes it.
    if (files.length === 0 || [...items].some((item) => item.webkitGetAsEntry?.()?.isDirectory)) return
    event.preventDefault()
    // The page itself takes what is dropped for the shelf, or for a ride.
    event.stopPropagation()
    start([...files])
  }
  return (
    <section
      className="panel-group panel-edit-only panel-hear"
      aria-label={words.panelsSong.beatFromFile}
      data-over={over || undefined}
      onDragOver={(event) => {
        if (!event.dataTransfer.types.includes('Files')) return
        event.preventDefault()
        setOver(true)
      }}
      onDragLeave={() => setOver(false)}
      onDrop={drop}
    >
      <FileButton accept={MUSIC_TYPES} onFile={(file) => start([file])}>
        {words.panelsSong.detectBeat}
      </FileButton>
      <p className="panel-note">{words.panelsSong.dropFiles}</p>
      <ul className="panel-hearings" aria-live="polite">
        {rows.map((row) => (
          <HearingRow
            key={row.key}
            row={row}
            sectionId={sectionId}
            grid={rows.length === 1 ? song?.grid : undefined}
            onAbort={() => running.current.get(row.key)?.abort()}
            onTake={rows.length > 1 ? () => take(row.hearing) : undefined}
            onAnew={() => start([row.file], true)}
          />
        ))}
      </ul>
      {song?.fingerprint !== undefined && <KeepSongFile fingerprint={song.fingerprint} />}
    </section>
  )
}

/** Half or double as the song has it already, so that its counts stay what they are; else as its terrain wants the legs. */
function hintsFor(song: Song | null | undefined, blocks: readonly Block[], houseRules: Ride['houseRules']): BeatHints {
  const window = song?.grid ? octaveAbout(tempoOf(song.grid)) : tempoWindow(blocks, constantsOf({ houseRules }))
  return window ? { window } : {}
}
