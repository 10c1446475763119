import { type MouseEvent, memo } from 'react'
import { isDoubtful, sayHearing } from '#engine/alignment/sayHearing.ts'
import { sayHearings } from '#engine/alignment/sayHearings.ts'
import { OctaveButtons } from '#features/songs/OctaveButtons.tsx'
import { isUnderWay } from '#plan/songs/heardSong.ts'
import type { ShelfSong } from '#plan/songs/shelfSong.ts'
import type { ShelfHearing } from '#store/hearingSlice.ts'
import { useApp } from '#store/useApp.ts'
import { Button } from '#ui/Button.tsx'
import { tell, words } from '#words/words.ts'

/** Files on their way to the shelf: each with its state, those that need somebody first. */
export function HearingQueue({ onEdit }: { onEdit: (song: ShelfSong) => void }) {
  const hearings = useApp((state) => state.hearings)
  const leftOut = useApp((state) => state.filesLeftOut)
  const stopAll = useApp((state) => state.stopHearings)
  const clear = useApp((state) => state.clearHearings)
  if (hearings.length === 0 && leftOut === 0) return null
  const left = hearings.filter(({ hearing }) => isUnderWay(hearing)).length
  const outWords = leftOut > 0 && words.songs.skipped({ files: leftOut })
  return (
    <section className="shelf-queue" aria-labelledby="shelf-queue" tabIndex={-1}>
      <div className="shelf-queue-head">
        <h2 id="shelf-queue">{left > 0 ? words.songs.reading : words.songs.read}</h2>
        <p>{[tell(sayHearings(hearings.map(({ hearing }) => hearing))), outWords].filter((word) => word).join(' ')}</p>
        {left > 0 && <progress value={hearings.length - left} max={hearings.length} aria-label={words.songs.filesRead} />}
        {left > 0 && <Button onClick={(event) => leaveTo('.shelf-queue', event, stopAll)}>{words.songs.stopAll}</Button>}
        {left < hearings.length + leftOut && (
          <Button tone="quiet" onClick={(event) => leaveTo('main', event, clear)}>
            {words.songs.clearList}
          </Button>
        )}
      </div>
      {hearings.length > 0 && (
        // A long list is scrolled by the arrow keys, so it takes the focus.
        // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by key
        <section className="shelf-queue-list" tabIndex={0} aria-label={words.songs.allFiles}>
          <Files label={words.songs.filesToCheck} hearings={hearings.filter(needsLook)} onEdit={onEdit} />
          <Files label={words.songs.filesUnderWay} hearings={hearings.filter(({ hearing }) => isUnderWay(hearing))} onEdit={onEdit} />
          <Files label={words.songs.filesDone} hearings={hearings.filter(isDone)} onEdit={onEdit} />
        </section>
      )}
    </section>
  )
}

const needsLook = ({ hearing }: ShelfHearing): boolean => hearing.kind === 'failed' || isDoubtful(hearing)
const isDone = (one: ShelfHearing): boolean => !isUnderWay(one.hearing) && !needsLook(one)

/**
 * Files of one state, as they were given. A file goes from list to list and moves no other, so that nobody loses the
 * button they are about to press.
 */
function Files({ label, hearings, onEdit }: { label: string; hearings: readonly ShelfHearing[]; onEdit: (song: ShelfSong) => void }) {
  if (hearings.length === 0) return null
  return (
    <ul aria-label={label}>
      {hearings.map((one) => (
        <HearingRow key={one.key} one={one} onEdit={onEdit} />
      ))}
    </ul>
  )
}

/** Does what takes the pressed button away, and leaves the focus near it. */
function leaveTo(where: string, { currentTarget }: MouseEvent<HTMLElement>, act: () => void): void {
  const near = currentTarget.closest<HTMLElement>(where)
  act()
  near?.focus({ preventScroll: true })
}

const HearingRow = memo(function HearingRow({ one, onEdit }: { one: ShelfHearing; onEdit: (song: ShelfSong) => void }) {
  const { key, name, hearing, songId } = one
  const stop = useApp((state) => state.stopHearing)
  const kept = useApp((state) => (songId === undefined ? undefined : state.songs.find(({ id }) => id === songId)))
  const goesOn = isUnderWay(hearing)
  return (
    <li data-hearing={hearing.kind}>
      <span>{tell(sayHearing(name, hearing))}</span>
      {hearing.kind === 'analysing' && <progress value={hearing.share} max={1} aria-label={words.songs.readingFile({ file: name })} />}
      {goesOn && (
        <Button
          tone="quiet"
          aria-label={words.songs.stopReading({ file: name })}
          onClick={(event) => leaveTo('.shelf-queue', event, () => stop(key))}
        >
          {words.songs.stop}
        </Button>
      )}
      {kept && hearing.kind === 'heard' && hearing.song.beats && <OctaveButtons kept={kept} bpm={hearing.song.beats.bpm} />}
      {kept && (
        <Button tone="quiet" aria-label={words.songs.editFrom({ song: kept.song.title, file: name })} onClick={() => onEdit(kept)}>
          {words.songs.edit}
        </Button>
      )}
    </li>
  )
})
