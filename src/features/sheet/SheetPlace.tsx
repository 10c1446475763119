import { useState } from 'react'
import { useApp } from '#store/useApp.ts'
import { Button } from '#ui/Button.tsx'
import { Segmented } from '#ui/Segmented.tsx'
import type { SongClock } from './contents/contents.ts'
import type { Paper } from './paging/paper.ts'
import { rememberedPaper, rememberPaper } from './rememberedPaper.ts'
import { CompactSheet } from './view/CompactSheet.tsx'
import './SheetPlace.css'

export interface SheetPlaceProps {
  /** The day of printing, ready to read; the clock belongs to the app. */
  today: string
}

const PAPER_CHOICES = [
  { value: 'a4', label: 'A4' },
  { value: 'letter', label: 'US Letter' },
] as const
const CLOCK_CHOICES = [
  { value: 'left', label: 'time left' },
  { value: 'elapsed', label: 'since the one' },
] as const

/** The printable sheet of the ride on the screen. */
export function SheetPlace({ today }: SheetPlaceProps) {
  const ride = useApp((state) => state.shown)
  const report = useApp((state) => state.shownReport)
  const [paper, setPaper] = useState<Paper>(rememberedPaper)
  const [songClock, setSongClock] = useState<SongClock>('left')
  if (!ride || !report) return null

  const choosePaper = (chosen: Paper) => {
    setPaper(chosen)
    rememberPaper(chosen)
  }
  return (
    <section className="sheet-place" aria-label="sheet">
      <h1 className="ui-hidden">Sheet of {ride.title || 'an untitled ride'}</h1>
      <div className="sheet-bar-of-choices">
        <Segmented label="paper" value={paper} choices={PAPER_CHOICES} onChange={choosePaper} />
        <Segmented label="song clock" value={songClock} choices={CLOCK_CHOICES} onChange={setSongClock} />
        <Button tone="solid" onClick={() => window.print()}>
          print
        </Button>
      </div>
      {report.blocks.length === 0 ? (
        <p>There is nothing to print yet. Draft a first block, and its line appears here.</p>
      ) : (
        <CompactSheet ride={ride} report={report} paper={paper} songClock={songClock} date={today} />
      )}
    </section>
  )
}
