import { type FormEvent, useCallback, useId, useMemo, useRef, useState } from 'react'
import { DEFAULT_BIKE, DEFAULT_LEVEL, DEFAULT_SLOT } from '#plan/defaults.ts'
import { LIMITS } from '#plan/document/schema.ts'
import { type RideInText, rideInText } from '#plan/link/rideInText.ts'
import type { Bike, Level } from '#plan/model.ts'
import type { PlaylistSong } from '#plan/songs/sectionsFromPlaylist.ts'
import { useApp } from '#store/useApp.ts'
import { useDroppedList } from '#store/useDroppedList.ts'
import { Button } from '#ui/Button.tsx'
import { Segmented } from '#ui/Segmented.tsx'
import { type Choice, Select } from '#ui/Select.tsx'
import { useAfterDrawing } from '#ui/useAfterDrawing.ts'
import { useKeptState } from '#ui/useKeptState.ts'
import { foundWords, refusedWords } from './linkWords.ts'
import { PlaylistTable } from './PlaylistTable.tsx'
import { type FirstOfLine, playlistRows, type ReadPlaylist, withLine } from './readPlaylist.ts'
import { SlotField } from './SlotField.tsx'

/** What a new ride is made of; without songs it is a blank slot. */
export interface NewRideChoice {
  title: string
  level: Level
  slotMinutes: number
  bike: Bike
  songs: PlaylistSong[]
}

interface Props {
  readPlaylist: ReadPlaylist
  onCreate: (choice: NewRideChoice) => void
  /** Opens the link in a text as its address would. */
  onOpenLink: (text: string) => void
}

const LEVELS = (['beginner', 'mixed', 'advanced'] as const).map((value) => ({ value, label: value }))
/** As many characters as a title may have in the document. */
const LONGEST_TITLE = 300
const FIRST = [
  { value: 'title', label: 'the title' },
  { value: 'artist', label: 'the artist' },
] as const
const NO_LINES: ReadonlySet<number> = new Set()
const EXAMPLE = 'Paper Lanterns – The Odd Hours – 3:42 – 128 bpm\nSlow Ferry, 4:10, 96\nNight Market 3:05'

/**
 * One form for both beginnings: a blank slot, or a playlist to fill. Its fields are read as they
 * are typed: on a touch screen a press on the button does not leave the field before it.
 */
export function NewRide({ readPlaylist, onCreate, onOpenLink }: Props) {
  const [title, setTitle, forgetTitle] = useKeptState('new ride, title', '')
  const [level, setLevel] = useState<Level>(DEFAULT_LEVEL)
  const [slotMinutes, setSlotMinutes] = useState<number | null>(DEFAULT_SLOT)
  const bikes = useBikes()
  const [bikeChosen, setBikeChosen] = useState<string | null>(null)
  const { bike, value: bikeShown } = bikes.find(({ value }) => value === bikeChosen) ?? bikes[0]!
  const [text, setText, forgetText] = useKeptState('new ride, playlist', '')
  const [first, setFirst] = useState<FirstOfLine>('title')
  const [openLines, setOpenLines] = useState(NO_LINES)
  const form = useRef<HTMLFormElement>(null)
  const afterDrawing = useAfterDrawing()
  const id = useId()
  const link = useMemo(() => linkIn(text), [text])
  const songLines = link ? '' : text
  const reading = useMemo(() => readPlaylist(songLines, first), [readPlaylist, songLines, first])
  const rows = playlistRows(songLines, reading, openLines)
  const { songs, problems } = reading

  const takeDropped = useCallback(
    (dropped: string) => {
      setText(dropped)
      setOpenLines(NO_LINES)
      form.current?.querySelector('textarea')?.focus()
    },
    [setText],
  )
  useDroppedList('start', takeDropped)

  const focusOn = (selector: string) => form.current?.querySelector<HTMLElement>(selector)?.focus()
  const writeLine = (line: number, words: string) => {
    setText(withLine(text, line, words))
    setOpenLines(new Set(openLines).add(line))
  }
  const closeLine = (line: number) => {
    if (problems.some((problem) => problem.line === line)) return
    setOpenLines(new Set([...openLines].filter((other) => other !== line)))
    // The field goes with the line; the focus goes on to what is to be done next.
    afterDrawing(() => focusOn('.start-refused input, [type="submit"]'))
  }
  const create = (event: FormEvent) => {
    event.preventDefault()
    if (link?.ok) onOpenLink(text)
    else if (slotMinutes === null) focusOn('.start-slot-other input')
    else {
      forgetTitle()
      forgetText()
      onCreate({ title: title.trim() || 'New ride', level, slotMinutes, bike, songs: songs.slice(0, LIMITS.sections) })
    }
  }

  return (
    <form ref={form} className="start-form" onSubmit={create}>
      <div className="ui-field">
        <label className="ui-field-label" htmlFor={`${id}-title`}>
          title
        </label>
        <input
          id={`${id}-title`}
          type="text"
          value={title}
          maxLength={LONGEST_TITLE}
          placeholder="New ride"
          autoComplete="off"
          onChange={(event) => setTitle(event.currentTarget.value)}
        />
      </div>
      <SlotField minutes={slotMinutes} onChange={setSlotMinutes} />
      <Segmented label="level" value={level} choices={LEVELS} onChange={setLevel} />
      {bikes.length > 1 && <Select label="bike" value={bikeShown} choices={bikes} onChange={setBikeChosen} />}
      <div className="start-songs ui-field">
        <label className="ui-field-label" htmlFor={`${id}-songs`}>
          playlist
        </label>
        <textarea
          id={`${id}-songs`}
          aria-describedby={`${id}-hint`}
          rows={4}
          value={text}
          placeholder={EXAMPLE}
          spellCheck={false}
          autoComplete="off"
          onChange={(event) => {
            setText(event.currentTarget.value)
            setOpenLines(NO_LINES)
          }}
        />
        <p id={`${id}-hint`} className="start-hint">
          One song a line with title, length and tempo, a table with named columns (CSV), or the text of an XSPF or M3U playlist. Empty for
          a blank slot. Its file can be dropped anywhere on this page.
        </p>
        <p className="start-hint">
          With the songs as files, drop them or their folder anywhere on this page: they are read on your machine and go to your songs,
          where those you tick make a ride.
        </p>
      </div>
      {link && (
        <p className="start-found" role="status">
          {link.ok ? `That’s a link to a ride: ${foundWords(link)}. Open it?` : refusedWords(link)}
        </p>
      )}
      {reading.guessed && <Segmented label="each line begins with" value={first} choices={FIRST} onChange={setFirst} />}
      {rows.length > 0 && (
        <PlaylistTable rows={rows} open={openLines} slotMinutes={slotMinutes ?? DEFAULT_SLOT} onLine={writeLine} onLineDone={closeLine} />
      )}
      <div className="start-go">
        <Button tone="solid" type="submit">
          {link?.ok ? 'open it' : goWords(songs.length)}
        </Button>
        {songs.length > LIMITS.sections && (
          <span className="start-hint">
            A ride holds at most {LIMITS.sections}; as a list all of them can go to your songs, to choose from.
          </span>
        )}
        {songs.length > 0 && problems.length > 0 && (
          <span className="start-hint">{problems.length === 1 ? 'One line is' : `${problems.length} lines are`} left out.</span>
        )}
      </div>
    </form>
  )
}

/** The link to a ride in a text, also one that cannot be opened; null where there is none, which for a playlist is as it should be. */
function linkIn(text: string): RideInText | null {
  const read = rideInText(text)
  return !read.ok && (read.fault === 'notOurs' || read.fault === 'tooLong') ? null : read
}

/** The bikes kept on this machine, and after them the typical knob, which one of them may have begun as. */
function useBikes(): readonly (Choice<string> & { bike: Bike })[] {
  const profiles = useApp((state) => state.profiles)
  const kept = profiles.flatMap((profile) =>
    profile.kind === 'bike' ? [{ value: profile.id, label: profile.name, bike: profile.bike }] : [],
  )
  return [...kept, { value: '', label: `${DEFAULT_BIKE.name}, typical`, bike: DEFAULT_BIKE }]
}

function goWords(songs: number): string {
  if (songs === 0) return 'start with a blank slot'
  if (songs > LIMITS.sections) return `make a ride of the first ${LIMITS.sections} of ${songs} songs`
  return songs === 1 ? 'make a ride of this song' : `make a ride of ${songs} songs`
}
