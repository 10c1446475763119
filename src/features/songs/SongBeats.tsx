import { sayTempo } from '#engine/alignment/sayTempo.ts'
import { patched, sameValue } from '#plan/edits.ts'
import { type BeatGrid, type Song, type StrikesPerBeat, tempoOf } from '#plan/model.ts'
import { eightOf, gridOfTempo, withOdd } from '#plan/songs/beatGrid.ts'
import { formatOdd, parseOdd } from '#plan/songs/oddText.ts'
import { rescaledSong } from '#plan/songs/rescaledSong.ts'
import { strikesForTempo } from '#plan/songs/sectionsFromPlaylist.ts'
import { formatMarks, formatQuiet, parseMarks, parseQuiet } from '#plan/songs/songPlace.ts'
import { formatTempo, parseFirstBeat, parseTempo } from '#plan/songs/songRules.ts'
import { Button } from '#ui/Button.tsx'
import { Field } from '#ui/Field.tsx'
import { type Choice, Select } from '#ui/Select.tsx'
import type { Seconds } from '#units/units.ts'
import { number } from '#words/forms.ts'
import { tell, tellRefusal, words } from '#words/words.ts'

interface SongBeatsProps {
  song: Song
  onChange: (song: Song) => void
}

const bars = (): readonly Choice<'4' | '3' | '6'>[] =>
  (['4', '3', '6'] as const).map((value) => ({ value, label: words.songs.beatsPerBar({ beats: Number(value) }) }))

/** The beats of a kept song: how fast, from where, in which bars, and what is marked on them. */
export function SongBeats({ song, onChange }: SongBeatsProps) {
  const { grid } = song
  const setTempo = (text: string) => {
    if (text.trim() === '') {
      onChange(patched(song, { grid: undefined, strikesPerBeat: null }))
      return null
    }
    const read = parseTempo(text)
    if (!read.ok) return tellRefusal(read.problem)
    if (grid && Math.abs(tempoOf(grid) - read.value) < 0.0005) return null
    const steady = gridOfTempo(read.value, grid?.anchors[0]?.[1], grid?.beatsPerBar)
    onChange(
      patched(song, {
        grid: grid?.odd ? withOdd(steady, grid.odd) : steady,
        strikesPerBeat: grid ? song.strikesPerBeat : strikesForTempo(read.value),
      }),
    )
    return null
  }
  return (
    <>
      <Field
        label={words.songs.tempo}
        value={grid ? formatTempo(tempoOf(grid)) : ''}
        placeholder={words.songs.tempoExample}
        hint={<Octaves song={song} onChange={onChange} />}
        onCommit={setTempo}
      />
      <OnBeats song={song} onChange={onChange} />
    </>
  )
}

function Octaves({ song, onChange }: SongBeatsProps) {
  return ([0.5, 2] as const).map((factor) => (
    <Button key={factor} tone="quiet" disabled={rescaledSong(song, factor) === song} onClick={() => onChange(rescaledSong(song, factor))}>
      {words.songs.octave({ factor, bpm: song.grid && tempoOf(song.grid) * factor })}
    </Button>
  ))
}

/** What needs a tempo. It keeps its place without one: a dialog that grew on leaving the tempo would move its buttons from under the pointer. */
function OnBeats({ song, onChange }: SongBeatsProps) {
  const { grid } = song
  const eight = eightOf(grid)
  const disabled = grid === undefined
  const setFirst = (text: string) => {
    const read = parseFirstBeat(text)
    if (!read.ok) return tellRefusal(read.problem)
    if (grid) onChange({ ...song, grid: startingAt(grid, read.value) })
    return null
  }
  const setOdd = (text: string) => {
    const read = parseOdd(text, eight)
    if (!read.ok) return tellRefusal(read.problem)
    if (grid && !sameValue(read.value, grid.odd ?? [])) onChange({ ...song, grid: withOdd(grid, read.value) })
    return null
  }
  const setMarks = (text: string) => {
    const read = parseMarks(text, eight)
    if (!read.ok) return tellRefusal(read.problem)
    onChange(patched(song, { marks: read.value.length === 0 ? undefined : read.value }))
    return null
  }
  const setQuiet = (text: string) => {
    const read = parseQuiet(text, eight)
    if (!read.ok) return tellRefusal(read.problem)
    onChange(patched(song, { quiet: read.value.length === 0 ? undefined : read.value }))
    return null
  }
  return (
    <>
      <Field
        label={words.songs.firstBeat}
        unit={words.songs.intoSong}
        value={grid ? number(grid.anchors[0]![1], 3) : ''}
        disabled={disabled}
        onCommit={setFirst}
      />
      <Select
        label={words.songs.bars}
        value={`${grid?.beatsPerBar ?? 4}`}
        choices={bars()}
        disabled={disabled}
        onChange={(beats) => grid && onChange({ ...song, grid: { ...grid, beatsPerBar: Number(beats) as BeatGrid['beatsPerBar'] } })}
      />
      <Select
        label={words.songs.strokes}
        value={`${song.strikesPerBeat}`}
        choices={strikeChoices(grid && tempoOf(grid))}
        disabled={disabled}
        onChange={(strikes) => onChange({ ...song, strikesPerBeat: STRIKES.find((each) => `${each}` === strikes) ?? null })}
      />
      {/* The line is there without words too: see above. */}
      <p className="shelf-tempo-said" role="status">
        {tell((grid && sayTempo(tempoOf(grid))) ?? '')}
      </p>
      <Field
        label={words.songs.oddBeats}
        rows={2}
        value={formatOdd(grid?.odd ?? [], eight)}
        placeholder={'33 +2\n65 −1'}
        hint={words.songs.oddBeatsHint}
        disabled={disabled}
        onCommit={setOdd}
      />
      <Field
        label={words.songs.markersField}
        rows={3}
        value={formatMarks(song.marks ?? [], eight)}
        placeholder={words.songs.markersExample}
        hint={words.songs.markersHint}
        disabled={disabled}
        onCommit={setMarks}
      />
      <Field
        label={words.songs.noTalk}
        value={formatQuiet(song.quiet ?? [], eight)}
        placeholder="33–40, 65–72"
        hint={words.songs.noTalkHint}
        disabled={disabled}
        onCommit={setQuiet}
      />
    </>
  )
}

const STRIKES: readonly StrikesPerBeat[] = [0.5, 1, 2, null]

const strikeChoices = (bpm: number | undefined): Choice<string>[] =>
  STRIKES.map((strikes) => {
    const rpm = bpm !== undefined && strikes !== null ? (bpm * strikes) / 2 : undefined
    return { value: `${strikes}`, label: words.songs.strokesChoice({ strokes: `${strikes}`, rpm }) }
  })

/** The grid moved so that its first beat falls at another second of the song; the beats keep their distances. */
function startingAt(grid: BeatGrid, firstBeat: Seconds): BeatGrid {
  const shift = firstBeat - grid.anchors[0]![1]
  return shift === 0 ? grid : { ...grid, anchors: grid.anchors.map(([count, second]) => [count, Number((second + shift).toFixed(6))]) }
}
