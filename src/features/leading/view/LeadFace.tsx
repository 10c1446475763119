import { memo, type RefObject } from 'react'
import { CAP_RATIO, capHeight } from '#units/capHeight.ts'
import { words } from '#words/words.ts'
import { MOST_TICKS } from './painter.ts'
import type { Slot } from './view.ts'

/** What is read from the bike, 1.5 m away: 22 minutes of arc for what matters most, never less than 16. In CSS pixels of 1/96 inch. */
const METRES = 1.5
const PIXELS_A_MM = 96 / 25.4
const sizeFor = (arcminutes: number): string => `${((capHeight(METRES, arcminutes) / CAP_RATIO) * PIXELS_A_MM).toFixed(1)}px`
const SIZES = { '--lead-good': sizeFor(22), '--lead-least': sizeFor(16) } as React.CSSProperties

const text = (slot: Slot) => ({ 'data-slot': slot })

/** The places the painter writes into. React draws them once and never again. */
export const LeadFace = memo(function LeadFace({ ref }: { ref: RefObject<HTMLDivElement | null> }) {
  return (
    <div ref={ref} className="lead-face" style={SIZES}>
      <header className="lead-top">
        <p>
          <b {...text('clock')} /> <span {...text('total')} /> · <span className="lead-slack" {...text('slack')} />
        </p>
        <p className="lead-song">
          <span className="lead-song-name" {...text('song')} />
          <b {...text('songLeft')} data-left={words.leading.left} /> <span className="lead-song-eight" {...text('songEight')} />
        </p>
      </header>
      <div className="lead-now">
        <div className="lead-what">
          <p className="lead-round" {...text('round')} />
          <h1 className="lead-name" {...text('name')} />
          <p className="lead-meta" {...text('meta')} />
          <dl className="lead-figures">
            <Figure label="resistanceLabel" value="resistance" />
            <Figure label="cadenceLabel" value="cadence" />
            <Figure label="upForLabel" value="upFor" />
          </dl>
          <div className="lead-track" aria-hidden="true" />
          <p className="lead-feel" {...text('feel')} />
        </div>
        <div className="lead-count">
          <span className="lead-number" {...text('count')} />
          <span className="lead-label" {...text('countLabel')} />
          <Beats />
        </div>
      </div>
      <p className="lead-cue" {...text('cue')} />
      <p className="lead-next">
        <span className="lead-next-what">
          <span {...text('nextWhen')} /> <b {...text('nextName')} />
          <span {...text('nextRest')} />
        </span>
        <span className="lead-next-time" {...text('nextTime')} />
      </p>
    </div>
  )
})

function Figure({ label, value }: { label: Slot; value: Slot }) {
  return (
    <div>
      <dt {...text(label)} />
      <dd {...text(value)} />
    </div>
  )
}

const TICKS = Array.from({ length: MOST_TICKS }, (_, i) => i + 1)

/** One tick a count, more or fewer where an eight has beats over or misses some; the one that sounds is bright and fades, or only lit where motion is unwanted. */
function Beats() {
  return (
    <span className="lead-beats" aria-hidden="true">
      {TICKS.map((count) => (
        <i key={count} data-beat={count} />
      ))}
    </span>
  )
}
