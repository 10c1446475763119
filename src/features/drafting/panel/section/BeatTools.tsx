import { moveBeats } from '#plan/commands/moveBeats.ts'
import { rescaleBeats } from '#plan/commands/rescaleBeats.ts'
import { type BeatGrid, tempoOf } from '#plan/model.ts'
import { type BeatFactor, isTempo } from '#plan/songs/rescaledSong.ts'
import { useAppStore } from '#store/useApp.ts'
import { Button } from '#ui/Button.tsx'
import type { Seconds } from '#units/units.ts'
import { words } from '#words/words.ts'

/** One press of a nudge: about the least that can be heard against a click. */
const NUDGE: Seconds = 0.01

/** Puts right in one press what is wrong most often with a beat: a hair's breadth, which beat is beat 1, and which octave. */
export function BeatTools({ sectionId, grid }: { sectionId: string; grid: BeatGrid }) {
  const store = useAppStore()
  const move = (seconds: Seconds) => store.getState().run(moveBeats(store.getState().ride!, { sectionId, seconds }))
  const beat = 60 / tempoOf(grid)
  const first = grid.anchors[0]![1]
  return (
    <fieldset className="panel-beat-tools panel-edit-only" aria-label={words.panelsSong.fixBeat}>
      <Button disabled={first < NUDGE} onClick={() => move(-NUDGE)}>
        {words.panelsSong.byMilliseconds({ amount: '−10' })}
      </Button>
      <Button onClick={() => move(NUDGE)}>{words.panelsSong.byMilliseconds({ amount: '+10' })}</Button>
      <Button disabled={first < beat} onClick={() => move(-beat)}>
        {words.panelsSong.byBeat({ amount: '−1' })}
      </Button>
      <Button onClick={() => move(beat)}>{words.panelsSong.byBeat({ amount: '+1' })}</Button>
      <OctaveTools sectionId={sectionId} grid={grid} />
    </fieldset>
  )
}

/** Reads the song at half or at double its tempo. */
export function OctaveTools({ sectionId, grid }: { sectionId: string; grid: BeatGrid }) {
  const store = useAppStore()
  const rescale = (factor: BeatFactor) => store.getState().run(rescaleBeats(store.getState().ride!, { sectionId, factor }))
  const bpm = tempoOf(grid)
  return (
    <>
      <Button disabled={!isTempo(bpm / 2)} onClick={() => rescale(0.5)}>
        {words.panelsSong.half({ bpm: bpm / 2 })}
      </Button>
      <Button disabled={!isTempo(bpm * 2)} onClick={() => rescale(2)}>
        {words.panelsSong.double({ bpm: bpm * 2 })}
      </Button>
    </>
  )
}
