import { useState } from 'react'
import { gridOfTempo } from '#plan/beatGrid.ts'
import { patched } from '#plan/edits.ts'
import { type Song, tempoOf } from '#plan/model.ts'
import { strikesForTempo, USUAL_SONG } from '#plan/sectionsFromPlaylist.ts'
import type { ShelfSong } from '#plan/shelfSong.ts'
import { Button } from '#ui/Button.tsx'
import { Dialog } from '#ui/Dialog.tsx'
import { Field } from '#ui/Field.tsx'
import { Select } from '#ui/Select.tsx'
import { formatClock } from '#units/formatClock.ts'
import { formatNumber } from '#units/formatNumber.ts'
import { parseClock } from '#units/parseClock.ts'
import { parseNumber } from '#units/parseNumber.ts'

export interface EditSongProps {
  kept: ShelfSong
  onKeep: (song: ShelfSong) => void
  onClose: () => void
}

export const blankSong = (id: string): ShelfSong => ({
  id,
  song: { id, title: '', lengthSeconds: USUAL_SONG, strikesPerBeat: null },
})

const ENERGY = ['', '1', '2', '3', '4', '5'].map((value) => ({ value, label: value === '' ? 'not said' : value }))
const LONGEST = 300

/** A kept song's fields; it is kept when asked, not while typing. Beats, marks and quiet windows are put right in a ride, where they show. */
export function EditSong({ kept, onKeep, onClose }: EditSongProps) {
  const [draft, setDraft] = useState(kept)
  const { song } = draft
  const change = (patch: Partial<Song>) => setDraft((before) => ({ ...before, song: patched(before.song, patch) }))
  const words = (text: string, take: (text: string) => void) => {
    if (text.trim().length > LONGEST) return `At most ${LONGEST} characters.`
    take(text.trim())
    return null
  }
  const setLength = (text: string) => {
    const read = parseClock(text)
    if (!read.ok) return read.problem
    if (read.value < 5 || read.value > 3600) return 'A song is from 0:05 to 60:00 long.'
    change({ lengthSeconds: read.value })
    return null
  }
  const setTempo = (text: string) => {
    if (text.trim() === '') {
      change({ grid: undefined, strikesPerBeat: null })
      return null
    }
    const read = parseNumber(text, {
      subject: 'The tempo',
      min: 30,
      max: 300,
      decimals: 3,
      unit: 'beats a minute',
      suffixes: ['bpm'],
      example: '128',
    })
    if (!read.ok) return read.problem
    const { grid } = song
    if (grid && Math.abs(tempoOf(grid) - read.value) < 0.0005) return null
    change({
      grid: gridOfTempo(read.value, grid?.anchors[0]?.[1], grid?.beatsPerBar),
      strikesPerBeat: grid ? song.strikesPerBeat : strikesForTempo(read.value),
    })
    return null
  }
  return (
    <Dialog
      open
      title={kept.song.title === '' ? 'a song by hand' : `edit ${kept.song.title}`}
      onClose={onClose}
      closeLabel="leave it"
      actions={
        <Button tone="solid" disabled={song.title === ''} onClick={() => onKeep(draft)}>
          keep on the shelf
        </Button>
      }
    >
      <div className="shelf-edit">
        <Field label="title" value={song.title} onCommit={(text) => words(text, (title) => change({ title }))} />
        <Field
          label="artist"
          value={song.artist ?? ''}
          onCommit={(text) => words(text, (artist) => change({ artist: artist || undefined }))}
        />
        <Field label="length" value={formatClock(song.lengthSeconds)} onCommit={setLength} />
        <Field
          label="tempo"
          value={song.grid ? formatNumber(tempoOf(song.grid), 3) : ''}
          placeholder="bpm, if you know it"
          onCommit={setTempo}
        />
        <Select
          label="energy"
          value={draft.energy ? String(draft.energy) : ''}
          choices={ENERGY}
          onChange={(value) => setDraft(patched(draft, { energy: value === '' ? undefined : (Number(value) as ShelfSong['energy']) }))}
        />
        <label className="shelf-check">
          <input
            type="checkbox"
            checked={song.clean === true}
            onChange={(event) => change({ clean: event.currentTarget.checked || undefined })}
          />
          clean lyrics, fit for every room
        </label>
      </div>
    </Dialog>
  )
}
