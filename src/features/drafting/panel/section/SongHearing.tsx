import { sayHearing } from '#engine/alignment/sayHearing.ts'
import { OctaveTools } from '#features/drafting/panel/section/BeatTools.tsx'
import type { BeatGrid } from '#plan/model.ts'
import { type Hearing, isUnderWay } from '#plan/songs/heardSong.ts'
import { Button } from '#ui/Button.tsx'
import { tell, words } from '#words/words.ts'

/** A file given to a section, and where its hearing stands. */
export interface SongHearing {
  key: number
  file: File
  hearing: Hearing
}

interface HearingRowProps {
  row: SongHearing
  sectionId: string
  /** The beats of the section's song where this file gave them. */
  grid: BeatGrid | undefined
  onAbort: () => void
  /** Makes this file the section's song; absent where it is that already. */
  onTake: (() => void) | undefined
  /** Listens to the file although it is known. */
  onAnew: () => void
}

/** One file: what it gave or how far it is, and what can be done with it. */
export function HearingRow({ row: { file, hearing }, sectionId, grid, onAbort, onTake, onAnew }: HearingRowProps) {
  const over = hearing.kind === 'heard' || hearing.kind === 'known'
  return (
    <li data-hearing={hearing.kind}>
      <span>{tell(sayHearing(file.name, hearing))}</span>
      {isUnderWay(hearing) && (
        <>
          <progress
            value={hearing.kind === 'analysing' ? hearing.share : 0}
            max={1}
            aria-label={words.panelsSong.reading({ file: file.name })}
          />
          <Button tone="quiet" onClick={onAbort}>
            {words.panelsSong.stop}
          </Button>
        </>
      )}
      {over && grid && <OctaveTools sectionId={sectionId} grid={grid} />}
      {over && onTake && <Button onClick={onTake}>{words.panelsSong.applyThis}</Button>}
      {hearing.kind === 'known' && (
        <Button tone="quiet" onClick={onAnew}>
          {words.panelsSong.detectAgain}
        </Button>
      )}
    </li>
  )
}
