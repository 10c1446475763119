import { useState } from 'react'
import { FEWEST_ONES, SURE_ONES, tapOnes } from '#engine/alignment/tapOnes.ts'
import { PreviewButton } from '#features/drafting/PreviewButton.tsx'
import type { Rehearsing } from '#features/drafting/rehearsal/RehearsalContext.ts'
import { setBars } from '#plan/commands/setBars.ts'
import type { BeatGrid } from '#plan/model.ts'
import { eightOf } from '#plan/songs/beatGrid.ts'
import { sayOdd } from '#plan/songs/oddText.ts'
import { useApp } from '#store/useApp.ts'
import { Button } from '#ui/Button.tsx'
import { plural } from '#units/plural.ts'
import type { Seconds } from '#units/units.ts'

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
          this is a one
        </Button>
        {ones.length > 0 && (
          <Button tone="quiet" onClick={() => setOnes([])}>
            start again
          </Button>
        )}
        {ride && said && !settled && (
          <PreviewButton command={setBars(ride, { sectionId, ...said })} onDone={() => setOnes([])}>
            {`take ${said.beatsPerBar} beats a bar${said.odd ? ' and the odd beats' : ''}`}
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
  if (tapped === 0) return `Tap the first beat of each bar; ${SURE_ONES} make it sure.`
  if (tapped < FEWEST_ONES) return `${tapped} of ${SURE_ONES} ones.`
  if (!said) return `${tapped} of ${SURE_ONES} ones, which do not agree on a bar yet.`
  const agreed = `${said.agree} of ${said.of} ones agree`
  if (settled) return `${agreed}: the bars are right as they are.`
  const { shift } = said
  const moved = shift === 0 ? '' : `, the one ${plural(Math.abs(shift), 'beat')} ${shift > 0 ? 'later' : 'earlier'}`
  const odd = said.odd?.map((place) => `, ${sayOdd(place, eightOf(said))}`).join('') ?? ''
  return `${agreed}: ${said.beatsPerBar} beats a bar${moved}${odd}.`
}
