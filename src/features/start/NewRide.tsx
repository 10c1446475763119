import { useId, useMemo, useRef, useState } from 'react'
import { DEFAULT_LEVEL, DEFAULT_SLOT } from '#plan/defaults.ts'
import type { Level } from '#plan/model.ts'
import type { PlaylistSong } from '#plan/sectionsFromPlaylist.ts'
import { Button } from '#ui/Button.tsx'
import { Field } from '#ui/Field.tsx'
import { Segmented } from '#ui/Segmented.tsx'
import { PlaylistTable } from './PlaylistTable.tsx'
import { playlistRows, type ReadPlaylist, withLine } from './readPlaylist.ts'
import { SlotField } from './SlotField.tsx'

/** What a new ride is made of; without songs it is a blank slot. */
export interface NewRideChoice {
  title: string
  level: Level
  slotMinutes: number
  songs: PlaylistSong[]
}

interface Props {
  readPlaylist: ReadPlaylist
  onCreate: (choice: NewRideChoice) => void
}

const LEVELS = (['beginner', 'mixed', 'advanced'] as const).map((value) => ({ value, label: value }))

const EXAMPLE = 'Paper Lanterns – The Odd Hours – 3:42 – 128 bpm\nSlow Ferry, 4:10, 96\nNight Market 3:05'

/** One form for both beginnings: a blank slot, or a playlist to fill. */
export function NewRide({ readPlaylist, onCreate }: Props) {
  const [title, setTitle] = useState('')
  const [level, setLevel] = useState<Level>(DEFAULT_LEVEL)
  const [slotMinutes, setSlotMinutes] = useState(DEFAULT_SLOT)
  const [text, setText] = useState('')
  const songsId = useId()
  const form = useRef<HTMLFormElement>(null)
  const reading = useMemo(() => readPlaylist(text), [readPlaylist, text])
  const { songs, problems } = reading

  const replaceLine = (line: number, replacement: string): string | null => {
    setText(withLine(text, line, replacement))
    // A line that is understood loses its field; the focus goes on to what is to be done next.
    requestAnimationFrame(() => {
      if (document.activeElement !== document.body) return
      form.current?.querySelector<HTMLElement>('.start-refused input, [type="submit"]')?.focus()
    })
    return null
  }

  return (
    <form
      ref={form}
      className="start-form"
      onSubmit={(event) => {
        event.preventDefault()
        onCreate({ title: title.trim() || 'New ride', level, slotMinutes, songs })
      }}
    >
      <Field
        label="title"
        value={title}
        placeholder="New ride"
        onCommit={(next) => {
          if (next.trim().length > LONGEST_TITLE)
            return `A title has at most ${LONGEST_TITLE} characters; this one has ${next.trim().length}.`
          setTitle(next.trim())
          return null
        }}
      />
      <SlotField minutes={slotMinutes} onChange={setSlotMinutes} />
      <Segmented label="level" value={level} choices={LEVELS} onChange={setLevel} />
      <div className="start-songs ui-field">
        <label className="ui-field-label" htmlFor={songsId}>
          playlist
        </label>
        <textarea
          id={songsId}
          aria-describedby={`${songsId}-hint`}
          rows={4}
          value={text}
          placeholder={EXAMPLE}
          spellCheck={false}
          autoComplete="off"
          onChange={(event) => setText(event.currentTarget.value)}
        />
        <p id={`${songsId}-hint`} className="start-hint">
          One song a line with title, length and tempo. Empty for a blank slot.
        </p>
      </div>
      {(songs.length > 0 || problems.length > 0) && (
        <PlaylistTable rows={playlistRows(reading)} slotMinutes={slotMinutes} onLine={replaceLine} />
      )}
      <div className="start-go">
        <Button tone="solid" type="submit">
          {goWords(songs.length)}
        </Button>
        {songs.length > 0 && problems.length > 0 && (
          <span className="start-hint">{problems.length === 1 ? 'One line is' : `${problems.length} lines are`} left out.</span>
        )}
      </div>
    </form>
  )
}

/** As many characters as a title may have in the document. */
const LONGEST_TITLE = 300

function goWords(songs: number): string {
  if (songs === 0) return 'start with a blank slot'
  return songs === 1 ? 'make a ride of this song' : `make a ride of ${songs} songs`
}
