import { memo } from 'react'
import { isDoubtful, sayHearing } from '#engine/alignment/sayHearing.ts'
import { sayHearings } from '#engine/alignment/sayHearings.ts'
import { OctaveButtons } from '#features/songs/OctaveButtons.tsx'
import { isUnderWay } from '#plan/heardSong.ts'
import type { ShelfSong } from '#plan/shelfSong.ts'
import { plural } from '#plan/words.ts'
import type { ShelfHearing } from '#store/hearingSlice.ts'
import { useApp } from '#store/useApp.ts'
import { Button } from '#ui/Button.tsx'

/** Files on their way to the shelf: each with its state, those that need somebody first. */
export function HearingQueue({ onEdit }: { onEdit: (song: ShelfSong) => void }) {
  const hearings = useApp((state) => state.hearings)
  const leftOut = useApp((state) => state.filesLeftOut)
  const stopAll = useApp((state) => state.stopHearings)
  const clear = useApp((state) => state.clearHearings)
  if (hearings.length === 0 && leftOut === 0) return null
  const left = hearings.filter(({ hearing }) => isUnderWay(hearing)).length
  const outWords = leftOut > 0 && `${plural(leftOut, 'file')} left out, being no music.`
  return (
    <section className="shelf-queue" aria-labelledby="shelf-queue">
      <div className="shelf-queue-head">
        <h2 id="shelf-queue">{left > 0 ? 'being read' : 'read'}</h2>
        <p>{[sayHearings(hearings.map(({ hearing }) => hearing)), outWords].filter((word) => word).join(' ')}</p>
        {left > 0 && <progress value={hearings.length - left} max={hearings.length} aria-label="files read" />}
        {left > 0 && <Button onClick={stopAll}>stop all</Button>}
        {left < hearings.length + leftOut && (
          <Button tone="quiet" onClick={clear}>
            clear the list
          </Button>
        )}
      </div>
      {hearings.length > 0 && (
        // A long list is scrolled by the arrow keys, so it takes the focus.
        // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by key
        <ul className="shelf-queue-list" tabIndex={0} aria-label="files">
          {inOrder(hearings).map((one) => (
            <HearingRow key={one.key} one={one} onEdit={onEdit} />
          ))}
        </ul>
      )}
    </section>
  )
}

/** What is being read, then what failed or is not sure, then what waits, then the rest; each as it was given. */
function inOrder(hearings: readonly ShelfHearing[]): ShelfHearing[] {
  const rank = ({ hearing }: ShelfHearing): number => {
    if (hearing.kind === 'decoding' || hearing.kind === 'analysing') return 0
    if (hearing.kind === 'failed' || isDoubtful(hearing)) return 1
    return hearing.kind === 'waiting' ? 2 : 3
  }
  return hearings.toSorted((a, b) => rank(a) - rank(b) || a.key - b.key)
}

const HearingRow = memo(function HearingRow({ one, onEdit }: { one: ShelfHearing; onEdit: (song: ShelfSong) => void }) {
  const { key, name, hearing, songId } = one
  const stop = useApp((state) => state.stopHearing)
  const kept = useApp((state) => (songId === undefined ? undefined : state.songs.find(({ id }) => id === songId)))
  const goesOn = isUnderWay(hearing)
  return (
    <li data-hearing={hearing.kind}>
      <span>{sayHearing(name, hearing)}</span>
      {hearing.kind === 'analysing' && <progress value={hearing.share} max={1} aria-label={`reading ${name}`} />}
      {goesOn && (
        <Button tone="quiet" aria-label={`stop reading ${name}`} onClick={() => stop(key)}>
          stop
        </Button>
      )}
      {kept && hearing.kind === 'heard' && hearing.song.beats && <OctaveButtons kept={kept} bpm={hearing.song.beats.bpm} />}
      {kept && (
        <Button tone="quiet" aria-label={`edit ${kept.song.title}, from ${name}`} onClick={() => onEdit(kept)}>
          edit
        </Button>
      )}
    </li>
  )
})
