import type { Row } from '#features/sheet/contents/contents.ts'
import { stopped } from '#features/sheet/contents/sentence.ts'
import { Figure } from '#ui/figures/Figure.tsx'
import { words } from '#words/words.ts'
import { EffortBar } from './EffortBar.tsx'
import { FootMark, HandsMark, PostureMark } from './marks.tsx'

interface RowViewProps {
  row: Row
  /** Whether the block's name stands before its words on a sheet that is short of room. */
  named?: boolean
}

/** One change: effort, clocks, length, body, resistance, words. */
export function RowView({ row, named = false }: RowViewProps) {
  const wordless = row.shortWords === '' && row.notes.length === 0
  return (
    <li className="sheet-row" data-part="row" data-mine={row.mine} data-named={named || wordless}>
      <EffortBar effort={row.effort} />
      {row.handOver && <b className="sheet-hand-over">{row.handOver}</b>}
      <span className="sheet-line">
        <span className="sheet-data">
          <span className="sheet-effort" data-column="effort">
            {row.level}
          </span>
          <span className="sheet-ride" data-column="ride">
            {row.rideClock}
          </span>
          <span className="sheet-song" data-column="song">
            {row.songClock}
          </span>
          <span className="sheet-length" data-column="length">
            {row.length}
          </span>
          <PostureMark posture={row.posture} />
          <HandsMark hands={row.hands} />
          <span className="sheet-knob">
            <b className="sheet-total" data-column="total">
              {row.total}
            </b>
            <span className="sheet-call" data-column="call">
              {row.call}
            </span>
          </span>
        </span>
        <span className="sheet-words">
          {row.foot && <FootMark foot={row.foot} />}
          {row.water && <Figure name="water" size="1em" label={words.printed.water} className="sheet-mark" />}
          <b className="sheet-name">
            <bdi>{row.name}</bdi>{' '}
          </b>
          {row.notes.length > 0 && (
            <i className="sheet-notes">
              <bdi>{row.notes.join(', ')}</bdi>.{' '}
            </i>
          )}
          <bdi className="sheet-long">{row.words}</bdi>
          <bdi className="sheet-short">{row.shortWords}</bdi>
          {row.feel && (
            <span className="sheet-feel">
              {' '}
              (<bdi>{row.feel}</bdi>)
            </span>
          )}
          {row.easier && (
            <span>
              {' '}
              {words.printed.easier} <bdi>{stopped(row.easier)}</bdi>
            </span>
          )}
        </span>
      </span>
    </li>
  )
}
