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
import { words } from '#words/words.ts'
import { foundWords, refusedWords } from './linkWords.ts'
import { PlaylistTable } from './PlaylistTable.tsx'
import { type FirstOfLine, playlistRows, type ReadPlaylist, withLine } from './readPlaylist.ts'
import { SlotField } from './SlotField.tsx'

/** What a new ride is made of; without songs it is blank. */
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

const LEVELS = ['beginner', 'mixed', 'advanced'] as const
/** As many characters as a title may have in the document. */
const LONGEST_TITLE = 300
const NO_LINES: ReadonlySet<number> = new Set()

/**
 * One form for both beginnings: a blank ride, or a playlist to fill. Its fields are read as they
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
      onCreate({ title: title.trim() || words.start.newRideTitle, level, slotMinutes, bike, songs: songs.slice(0, LIMITS.sections) })
    }
  }

  return (
    <form ref={form} className="start-form" onSubmit={create}>
      <div className="ui-field">
        <label className="ui-field-label" htmlFor={`${id}-title`}>
          {words.start.title}
        </label>
        <input
          id={`${id}-title`}
          type="text"
          value={title}
          maxLength={LONGEST_TITLE}
          placeholder={words.start.newRideTitle}
          autoComplete="off"
          onChange={(event) => setTitle(event.currentTarget.value)}
        />
      </div>
      <SlotField minutes={slotMinutes} onChange={setSlotMinutes} />
      <Segmented
        label={words.start.level}
        value={level}
        choices={LEVELS.map((value) => ({ value, label: words.names.level({ level: value }) }))}
        onChange={setLevel}
      />
      {bikes.length > 1 && <Select label={words.start.bike} value={bikeShown} choices={bikes} onChange={setBikeChosen} />}
      <div className="start-songs ui-field">
        <label className="ui-field-label" htmlFor={`${id}-songs`}>
          {words.start.playlist}
        </label>
        <textarea
          id={`${id}-songs`}
          aria-describedby={`${id}-hint`}
          rows={4}
          value={text}
          placeholder={words.start.playlistExample}
          spellCheck={false}
          autoComplete="off"
          onChange={(event) => {
            setText(event.currentTarget.value)
            setOpenLines(NO_LINES)
          }}
        />
        <p id={`${id}-hint`} className="start-hint">
          {words.start.playlistHint}
        </p>
        <p className="start-hint">{words.start.musicHint}</p>
      </div>
      {link && (
        <p className="start-found" role="status">
          {link.ok ? words.start.linkInstead({ ride: foundWords(link) }) : refusedWords(link)}
        </p>
      )}
      {reading.guessed && <Segmented label={words.start.lineBegins} value={first} choices={firstChoices()} onChange={setFirst} />}
      {rows.length > 0 && (
        <PlaylistTable rows={rows} open={openLines} slotMinutes={slotMinutes ?? DEFAULT_SLOT} onLine={writeLine} onLineDone={closeLine} />
      )}
      <div className="start-go">
        <Button tone="solid" type="submit">
          {link?.ok ? words.start.openIt : goWords(songs.length)}
        </Button>
        {songs.length > LIMITS.sections && <span className="start-hint">{words.start.mostSongs({ most: LIMITS.sections })}</span>}
        {songs.length > 0 && problems.length > 0 && (
          <span className="start-hint">{words.start.linesSkipped({ count: problems.length })}</span>
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

/** The bikes kept on this device, and after them the typical knob, which one of them may have begun as. */
function useBikes(): readonly (Choice<string> & { bike: Bike })[] {
  const profiles = useApp((state) => state.profiles)
  const kept = profiles.flatMap((profile) =>
    profile.kind === 'bike' ? [{ value: profile.id, label: profile.name, bike: profile.bike }] : [],
  )
  return [...kept, { value: '', label: words.start.typicalBike({ name: DEFAULT_BIKE.name }), bike: DEFAULT_BIKE }]
}

const firstChoices = (): readonly Choice<FirstOfLine>[] => [
  { value: 'title', label: words.start.theTitle },
  { value: 'artist', label: words.start.theArtist },
]

function goWords(songs: number): string {
  if (songs === 0) return words.start.startBlank
  if (songs > LIMITS.sections) return words.start.makeRideOfFirst({ most: LIMITS.sections, count: songs })
  return words.start.makeRide({ count: songs })
}
