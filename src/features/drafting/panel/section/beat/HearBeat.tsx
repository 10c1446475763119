import { useEffect, useRef, useState, useSyncExternalStore } from 'react'
import { usePlaceActions } from '#actions/ActionBoardProvider.tsx'
import { ActionButton } from '#actions/ActionButton.tsx'
import { HEAR_BEAT, HEAR_FROM_IN_POINT, HEARING } from '#features/drafting/actions/rehearsing/hearBeat.ts'
import { BeatTools } from '#features/drafting/panel/section/BeatTools.tsx'
import { type Rehearsing, useRehearsal } from '#features/drafting/rehearsal/RehearsalContext.ts'
import { createSlots } from '#features/drafting/rehearsal/slots.ts'
import type { BeatGrid, Section, Song } from '#plan/model.ts'
import { beatOf, countAt, eightOf, secondAt } from '#plan/songs/beatGrid.ts'
import { formatStart } from '#plan/songs/songPlace.ts'
import { useApp, useAppStore } from '#store/useApp.ts'
import { Button } from '#ui/Button.tsx'
import type { Seconds } from '#units/units.ts'
import { clock } from '#words/forms.ts'
import { words } from '#words/words.ts'
import { MarkButtons } from './MarkButtons.tsx'
import { TapOnes } from './TapOnes.tsx'
import './hearBeat.css'

interface HearBeatProps {
  section: Section
  song: Song
  grid: BeatGrid
}

/** The grid held against the music by ear: the song with a click on every beat, from wherever in it, and what is tapped meanwhile. */
export function HearBeat(props: HearBeatProps) {
  const rehearsing = useRehearsal()
  return rehearsing ? <Hearing {...props} rehearsing={rehearsing} /> : null
}

function Hearing({ section, song, grid, rehearsing }: HearBeatProps & { rehearsing: Rehearsing }) {
  const store = useAppStore()
  const { hearing, deck } = rehearsing
  const state = useSyncExternalStore(hearing.subscribe, hearing.snapshot)
  const click = useApp(({ rehearsalHabits }) => rehearsalHabits.click)
  // Files come and go while the panel stands.
  const isThere = useApp(() => song.fingerprint !== undefined && deck.isThere(song.fingerprint))
  const isMine = state.sectionId === section.id
  const plays = isMine && state.phase !== 'still'
  const inPoint = Math.max(0, secondAt(grid, section.inCount ?? 0))
  const on = { store, rehearsing, sectionId: section.id, inPoint }
  usePlaceActions(HEARING, () => on)
  // What is heard here is stopped here: it ends with its panel.
  useEffect(
    () => () => {
      const { sectionId, phase } = hearing.snapshot()
      if (sectionId === section.id && phase !== 'still') hearing.stop()
    },
    [hearing, section.id],
  )
  return (
    <section className="panel-group hear-beat" aria-label={words.panelsSong.hearBeat}>
      <p className="hear-beat-row">
        <ActionButton action={HEAR_BEAT} on={on} tone="action" />
        <ActionButton action={HEAR_FROM_IN_POINT} on={on} tone="quiet" />
        {isThere && (
          <Button tone="quiet" pressed={click} onClick={() => store.getState().setRehearsalHabits({ click: !click })}>
            {words.panelsSong.click}
          </Button>
        )}
      </p>
      <PlaceInSong rehearsing={rehearsing} section={section} song={song} grid={grid} />
      {!isThere && (
        <>
          <p className="panel-note">{words.panelsSong.dropToHear}</p>
          <p className="hear-beat-row">
            {/* The moment the finger comes down is meant, not the one it is lifted. */}
            <Button
              onPointerDown={(event) => event.button === 0 && void hearing.oneNow(section.id, event.timeStamp, now)}
              onClick={(event) => event.detail === 0 && void hearing.oneNow(section.id, event.timeStamp, now)}
            >
              {words.panelsSong.beatOneNow}
            </Button>
          </p>
        </>
      )}
      {plays && (
        <div className="panel-edit-only hear-beat-more">
          <BeatTools sectionId={section.id} grid={grid} />
          <MarkButtons rehearsing={rehearsing} />
          <TapOnes key={section.id} rehearsing={rehearsing} sectionId={section.id} grid={grid} />
        </div>
      )}
    </section>
  )
}

/** The clock that events and frames are stamped by. */
const now = () => performance.now()

/** Where the song is, to be seen and to be set; moves with the sound, past React. */
function PlaceInSong({ rehearsing: { hearing }, section, song, grid }: HearBeatProps & { rehearsing: Rehearsing }) {
  const root = useRef<HTMLDivElement>(null)
  const slider = useRef<HTMLInputElement>(null)
  const [held, setHeld] = useState(false)
  useEffect(() => {
    if (!root.current) return
    const write = createSlots<'clock' | 'place'>(root.current)
    return hearing.frames.subscribe((timestamp) => {
      const at =
        hearing.snapshot().sectionId === section.id ? hearing.secondAt(timestamp) : Math.max(0, secondAt(grid, section.inCount ?? 0))
      write({ clock: clock(Math.floor(at)), place: sayPlace(grid, at) })
      if (slider.current && !held) show(slider.current, at)
    })
  }, [hearing, section.id, section.inCount, grid, held])
  return (
    <div ref={root} className="hear-beat-place">
      <input
        ref={slider}
        type="range"
        aria-label={words.panelsSong.placeInSong}
        min={0}
        max={Math.floor(song.lengthSeconds)}
        defaultValue={0}
        onPointerDown={() => setHeld(true)}
        onPointerUp={(event) => {
          setHeld(false)
          hearing.seek(section.id, Number(event.currentTarget.value))
        }}
        onPointerCancel={() => setHeld(false)}
        // By key at once; by pointer where it is let go.
        onChange={(event) => !held && hearing.seek(section.id, Number(event.currentTarget.value))}
      />
      <p>
        <b data-slot="clock" /> <span data-slot="place" />
      </p>
    </div>
  )
}

function show(slider: HTMLInputElement, at: Seconds): void {
  const second = `${Math.round(at)}`
  if (slider.value === second && slider.ariaValueText !== null) return
  slider.value = second
  slider.ariaValueText = clock(Math.round(at))
}

/** "eight 12, count 3" */
function sayPlace(grid: BeatGrid, at: Seconds): string {
  const eight = eightOf(grid)
  const count = countAt(grid, at) + 1e-6
  if (count < 0) return words.panelsSong.beforeFirstBeat
  const begun = Math.floor(count / eight) * eight
  // Beats over are counted on in their eight.
  const inEight = Math.floor(beatOf(grid, count) - beatOf(grid, begun))
  return words.panelsSong.placeSays({ six: eight === 6, place: formatStart(begun, eight), count: inEight + 1 })
}
