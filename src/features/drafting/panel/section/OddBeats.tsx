import { useState } from 'react'
import { PreviewButton } from '#features/drafting/PreviewButton.tsx'
import { setOddBeats, withOddAt } from '#plan/commands/setOddBeats.ts'
import type { BeatGrid } from '#plan/model.ts'
import { eightOf } from '#plan/songs/beatGrid.ts'
import { faultOfOdd } from '#plan/songs/oddBeats.ts'
import { parseStart } from '#plan/songs/songPlace.ts'
import { useApp } from '#store/useApp.ts'
import { Field } from '#ui/Field.tsx'
import { words } from '#words/words.ts'

const BEATS = [1, 2, 4, -1, -2, -4] as const

/** Beats a song has over or misses before one of its eights: where they come is written, then how many is pressed. */
export function OddBeats({ sectionId, grid }: { sectionId: string; grid: BeatGrid }) {
  const ride = useApp((state) => state.ride)
  const [place, setPlace] = useState('')
  const eight = eightOf(grid)
  const count = place.trim() === '' ? null : parseStart(place, eight)
  const commit = (text: string) => {
    const read = text.trim() === '' ? null : parseStart(text, eight)
    if (read && !read.ok) return read.problem
    setPlace(text)
    return null
  }
  if (!ride) return null
  return (
    <div className="panel-edit-only">
      <Field
        label={words.panelsSong.extraOrMissing}
        value={place}
        placeholder={words.panelsSong.extraExample}
        hint={words.panelsSong.extraHint}
        onCommit={commit}
      />
      {count?.ok && (
        <p className="panel-beside">
          {BEATS.map((beats) => {
            const odd = withOddAt(grid.odd, [count.value, beats])
            return (
              <PreviewButton key={beats} command={setOddBeats(ride, { sectionId, odd })} disabled={faultOfOdd(odd) !== undefined}>
                {beats < 0 ? words.panelsSong.missing({ beats: -beats }) : words.panelsSong.extra({ beats })}
              </PreviewButton>
            )
          })}
        </p>
      )}
    </div>
  )
}
