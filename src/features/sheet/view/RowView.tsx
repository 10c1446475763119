import type { Row } from '#features/sheet/contents/contents.ts'
import { stopped } from '#features/sheet/contents/sentence.ts'
import { Figure } from '#ui/figures/Figure.tsx'
import { EffortBar } from './EffortBar.tsx'
import { FootMark, HandsMark, PostureMark } from './marks.tsx'

/** One change: effort, clocks, length, body, resistance, words. */
export function RowView({ row }: { row: Row }) {
  return (
    <li className="sheet-row" data-part="row" data-mine={row.mine} data-wordless={row.shortWords === '' && row.notes.length === 0}>
      <EffortBar effort={row.effort} />
      {row.handOver && <b className="sheet-hand-over">{row.handOver}</b>}
      <span className="sheet-line">
        <span className="sheet-data">
          <span className="sheet-effort">{row.level}</span>
          <span className="sheet-ride">{row.rideClock}</span>
          <span className="sheet-song">{row.songClock}</span>
          <span className="sheet-length">{row.length}</span>
          <PostureMark posture={row.posture} />
          <HandsMark hands={row.hands} />
          <b className="sheet-total">{row.total}</b>
          <span className="sheet-call">{row.call}</span>
        </span>
        <span className="sheet-words">
          {row.foot && <FootMark foot={row.foot} />}
          {row.water && <Figure name="water" size="1em" label="water" className="sheet-mark" />}
          <b className="sheet-name">{row.name} </b>
          {row.notes.length > 0 && <i className="sheet-notes">{row.notes.join(', ')}. </i>}
          <span className="sheet-long">{row.words}</span>
          <span className="sheet-short">{row.shortWords}</span>
          {row.feel && <span className="sheet-feel"> ({row.feel})</span>}
          {row.easier && <span> Easier: {stopped(row.easier)}</span>}
        </span>
      </span>
    </li>
  )
}
