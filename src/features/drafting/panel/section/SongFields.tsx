import { memo, useMemo } from 'react'
import { sayTempo } from '#engine/alignment/sayTempo.ts'
import { CheckRow } from '#features/drafting/panel/rows/CheckRow.tsx'
import { Fold } from '#features/drafting/panel/rows/Fold.tsx'
import { OptionalQuantityRow } from '#features/drafting/panel/rows/OptionalQuantityRow.tsx'
import { QuantityRow } from '#features/drafting/panel/rows/QuantityRow.tsx'
import { SelectRow } from '#features/drafting/panel/rows/SelectRow.tsx'
import { TextRow } from '#features/drafting/panel/rows/TextRow.tsx'
import type { SectionActions } from '#features/drafting/panel/section/actionsOnSection.ts'
import { BeatTools } from '#features/drafting/panel/section/BeatTools.tsx'
import { OddBeats } from '#features/drafting/panel/section/OddBeats.tsx'
import { StrikesField } from '#features/drafting/panel/section/StrikesField.tsx'
import { TapTempo } from '#features/drafting/panel/section/tapping/TapTempo.tsx'
import { setOddBeats } from '#plan/commands/setOddBeats.ts'
import { LIMITS } from '#plan/document/schema.ts'
import { patched } from '#plan/edits.ts'
import { type BeatGrid, type Item, isSet, type Ride, type Song, tempoOf } from '#plan/model.ts'
import { eightOf } from '#plan/songs/beatGrid.ts'
import { formatOdd, parseOdd } from '#plan/songs/oddText.ts'
import { formatMarks, formatQuiet, parseMarks, parseQuiet } from '#plan/songs/songPlace.ts'
import { formatSongLength, formatTempo, parseFirstBeat, parseSongLength, parseTempo, withinSongLength } from '#plan/songs/songRules.ts'
import { useAppStore } from '#store/useApp.ts'
import { Field } from '#ui/Field.tsx'
import type { Choice } from '#ui/Select.tsx'
import type { Bpm, Seconds } from '#units/units.ts'
import { number } from '#words/forms.ts'
import { tell, words } from '#words/words.ts'

interface SongFieldsProps {
  sectionId: string
  song: Song
  blocks: readonly Item[]
  houseRules: Ride['houseRules']
  does: SectionActions
}

const barChoices = (): readonly Choice<'4' | '3' | '6'>[] =>
  (['4', '3', '6'] as const).map((value) => ({ value, label: words.panelsSong.beatsPerBar({ count: Number(value) }) }))

/** The song of a section: what it is called, how fast it goes and how its beat is ridden. */
export const SongFields = memo(function SongFields({ sectionId, song, blocks, houseRules, does }: SongFieldsProps) {
  const { grid } = song
  const tempoNote = grid ? sayTempo(tempoOf(grid)) : null
  const single = useMemo(() => blocks.flatMap((item) => (isSet(item) ? item.parts : [item])), [blocks])
  return (
    <>
      <TextRow
        label={words.panelsSong.song}
        value={song.title}
        required={words.panelsSong.titleNeeded}
        longest={300}
        onChange={(title) => title !== undefined && does.setSong({ ...song, title })}
      />
      <TextRow
        label={words.panelsSong.artist}
        value={song.artist}
        longest={300}
        onChange={(artist) => does.setSong(patched(song, { artist }))}
      />
      <OptionalQuantityRow
        label={words.panelsSong.tempo}
        value={grid && tempoOf(grid)}
        unit={words.panelsSong.bpm}
        placeholder={words.panelsSong.tempoUnknown}
        format={formatTempo}
        parse={parseTempo}
        onChange={(bpm) => does.setTempo(bpm === undefined ? null : { bpm })}
        step={(bpm, direction, fine) => withinTempo(Number((bpm + direction * (fine ? 0.1 : 1)).toFixed(3)))}
      />
      <div className="panel-edit-only">
        <TapTempo song={song} blocks={single} houseRules={houseRules} does={does} />
      </div>
      <QuantityRow
        label={words.panels.length}
        value={song.lengthSeconds}
        format={formatSongLength}
        parse={parseSongLength}
        onChange={(lengthSeconds) => does.setSong({ ...song, lengthSeconds })}
        step={(seconds, direction, large) => withinSongLength(Math.round(seconds) + direction * (large ? 10 : 1))}
      />
      {grid && (
        <>
          <StrikesField
            grid={grid}
            strikes={song.strikesPerBeat}
            blocks={single}
            houseRules={houseRules}
            onChange={(strikesPerBeat) => does.setSong({ ...song, strikesPerBeat })}
          />
          <BeatFields song={song} grid={grid} sectionId={sectionId} does={does} />
          {/* Beside what puts it right; under the tempo it would move buttons from under the pointer that leaves the field. */}
          {tempoNote !== null && <p className="panel-quiet">{tell(tempoNote)}</p>}
          <Fold title={words.panelsSong.fixBeat}>
            <BeatTools sectionId={sectionId} grid={grid} />
            <OddBeats sectionId={sectionId} grid={grid} />
          </Fold>
        </>
      )}
    </>
  )
})

const withinTempo = (bpm: Bpm): Bpm => Math.min(LIMITS.tempo.high, Math.max(LIMITS.tempo.low, bpm))

/** Where the beat starts and how it is grouped, what the song is marked with, and where it is to be heard alone. */
function BeatFields({ song, grid, sectionId, does }: { song: Song; grid: BeatGrid; sectionId: string; does: SectionActions }) {
  const store = useAppStore()
  const eight = eightOf(grid)
  const firstBeat = grid.anchors[0]![1]
  const quietText = formatQuiet(song.quiet ?? [], eight)
  const marksText = formatMarks(song.marks ?? [], eight)
  const oddText = formatOdd(grid.odd ?? [], eight)
  const setOdd = (text: string) => {
    if (text.trim() === oddText) return null
    const odd = parseOdd(text, eight)
    if (!odd.ok) return odd.problem
    store.getState().run(setOddBeats(store.getState().ride!, { sectionId, odd: odd.value }))
    return null
  }
  const setQuiet = (text: string) => {
    if (text.trim() === quietText) return null
    const quiet = parseQuiet(text, eight)
    if (!quiet.ok) return quiet.problem
    does.setSong(patched(song, { quiet: quiet.value.length === 0 ? undefined : quiet.value }))
    return null
  }
  const setMarks = (text: string) => {
    if (text.trim() === marksText.trim()) return null
    const marks = parseMarks(text, eight)
    if (!marks.ok) return marks.problem
    does.setSong(patched(song, { marks: marks.value.length === 0 ? undefined : marks.value }))
    return null
  }
  return (
    <>
      <QuantityRow
        label={words.panelsSong.firstBeat}
        value={firstBeat}
        unit={words.panelsSong.intoSong}
        format={(seconds) => number(seconds, 3)}
        parse={parseFirstBeat}
        onChange={(seconds) => does.setSong({ ...song, grid: startingAt(grid, seconds) })}
        step={(seconds, direction, large) => Math.max(0, Number((seconds + direction * (large ? 1 : 0.05)).toFixed(3)))}
      />
      <SelectRow
        label={words.panelsSong.bars}
        value={`${grid.beatsPerBar}`}
        choices={barChoices()}
        onChange={(beats) => does.setSong({ ...song, grid: { ...grid, beatsPerBar: Number(beats) as BeatGrid['beatsPerBar'] } })}
      />
      <Field
        label={words.panelsSong.oddBeats}
        value={oddText}
        rows={Math.max(1, grid.odd?.length ?? 0)}
        placeholder="33 +2"
        hint={words.panelsSong.oddHint}
        onCommit={setOdd}
      />
      <Fold title={words.panelsSong.zonesMarkersLyrics} holds={heldBy(song)}>
        <Field
          label={words.panelsSong.noTalk}
          value={quietText}
          placeholder="33–40, 65–72"
          hint={words.panelsSong.noTalkHint}
          onCommit={setQuiet}
        />
        <Field
          label={words.panelsSong.markers}
          value={marksText}
          rows={2}
          placeholder={words.panelsSong.markersExample}
          hint={words.panelsSong.markersHint}
          onCommit={setMarks}
        />
        <CheckRow
          label={words.panelsSong.lyrics}
          says={words.panelsSong.clean}
          checked={song.clean === true}
          onChange={(clean) => does.setSong(patched(song, { clean: clean || undefined }))}
        />
      </Fold>
    </>
  )
}

/** The grid moved so that its first beat falls at another second of the song; the beats keep their distances. */
function startingAt(grid: BeatGrid, firstBeat: Seconds): BeatGrid {
  const shift = firstBeat - grid.anchors[0]![1]
  return { ...grid, anchors: grid.anchors.map(([count, second]) => [count, Number((second + shift).toFixed(6))]) }
}

function heldBy({ quiet, marks, clean }: Song): string | undefined {
  const held = [
    quiet?.length && words.panelsSong.heldZones({ count: quiet.length }),
    marks?.length && words.panelsSong.heldMarkers({ count: marks.length }),
    clean && words.panelsSong.clean,
  ].filter((part) => typeof part === 'string')
  return held.length === 0 ? undefined : held.join(', ')
}
