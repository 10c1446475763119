import { useState } from 'react'
import { FEWEST_ONES, SURE_ONES, tapOnes } from '#engine/alignment/tapOnes.ts'
import { PreviewButton } from '#features/drafting/PreviewButton.tsx'
import type { Rehearsing } from '#features/drafting/rehearsal/RehearsalContext.ts'
import { setBars } from '#plan/commands/setBars.ts'
import type { BeatGrid } from '#plan/model.ts'
import { eightOf } from '#plan/songs/beatGrid.ts'
import { oddText } from '#plan/songs/oddText.ts'
import { useApp } from '#store/useApp.ts'
import { Button } from '#ui/Button.tsx'
import type { Seconds } from '#units/units.ts'
import { tell, words } from '#words/words.ts'

/** The first beats of bars, tapped as they are heard: from a few on they say how the bars lie, and sixteen make it sure. */
export function TapOnes({ rehearsing: { hearing }, sectionId, grid }: { rehearsing: Rehearsing; sectionId: string; grid: BeatGrid }) {
  const ride = useApp((state) => state.ride)
  const [ones, setOnes] = useState<readonly Seconds[]>([])
  const tap = (timeStamp: number) => setOnes((before) => [...before, hearing.secondAt(timeStamp)].slice(-SURE_ONES))
  const said = tapOnes(grid, ones)
  const settled = said !== null && said.shift === 0 && said.beatsPerBar === grid.beatsPerBar && said.odd === undefined
  return (
    <>
      <p className="hear-beat-row">
        <Button
          onPointerDown={(event) => event.button === 0 && tap(event.timeStamp)}
          onClick={(event) => event.detail === 0 && tap(event.timeStamp)}
        >
          {words.panelsSong.thisIsOne}
        </Button>
        {ones.length > 0 && (
          <Button tone="quiet" onClick={() => setOnes([])}>
            {words.panelsSong.startAgain}
          </Button>
        )}
        {ride && said && !settled && (
          <PreviewButton command={setBars(ride, { sectionId, ...said })} onDone={() => setOnes([])}>
            {words.panelsSong.applyBars({ count: said.beatsPerBar, odd: said.odd !== undefined })}
          </PreviewButton>
        )}
      </p>
      <p className="panel-note" role="status">
        {sayOnes(ones.length, said, settled)}
      </p>
    </>
  )
}

function sayOnes(tapped: number, said: ReturnType<typeof tapOnes>, settled: boolean): string {
  const { panelsSong } = words
  if (tapped === 0) return panelsSong.onesNone({ sure: SURE_ONES })
  if (tapped < FEWEST_ONES) return panelsSong.onesFew({ tapped, sure: SURE_ONES })
  if (!said) return panelsSong.onesUnsure({ tapped, sure: SURE_ONES })
  const { agree, of, shift, beatsPerBar: count, odd = [] } = said
  if (settled) return panelsSong.onesSettled({ agree, of })
  return panelsSong.onesSay({ agree, of, count, shift, odd: odd.map((place) => tell(oddText(place, eightOf(said)))) })
}
