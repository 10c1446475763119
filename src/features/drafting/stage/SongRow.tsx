import { memo } from 'react'
import { ariaKeys } from '#actions/action.ts'
import type { SectionReport } from '#engine/played.ts'
import { MOVE_AFTER, MOVE_BEFORE } from '#features/drafting/actions/changing/move.ts'
import type { Section } from '#plan/model.ts'
import { secondAt } from '#plan/songs/beatGrid.ts'
import type { Stretch } from '#units/units.ts'
import { words } from '#words/words.ts'
import { DragHandle } from './drag/DragHandle.tsx'
import { reaches } from './drawnStretch.ts'
import { SongRuler } from './SongRuler.tsx'
import { SongWave } from './SongWave.tsx'
import { type TimeScale, toX } from './timeScale.ts'

interface SongRowProps {
  section: Section
  report: SectionReport
  number: number
  scale: TimeScale
  stretch: Stretch
  /** Whether any song of the ride shows its wave, which is then this one's room as well. */
  hasWaves: boolean
  selected: boolean
  focusable: boolean
  onSelect: (sectionId: string) => void
  onFit: (sectionId: string) => void
}

/** One section's head: its song in words, what it looks like, and the ruler of eights and phrases the blocks stand on. */
export function SongRow({ section, report, number, scale, stretch, hasWaves, selected, focusable, onSelect, onFit }: SongRowProps) {
  const { song } = section
  const width = toX(scale, report.to - report.one)
  const isEmpty = width <= 0
  const name = song?.title ?? section.title ?? words.drafting.noSong
  const cut = reaches(stretch, report) ? cutOf(report, stretch, scale) : null
  return (
    <section
      className="song"
      data-section-id={section.id}
      data-selected={selected || undefined}
      data-empty={isEmpty || undefined}
      style={{ left: toX(scale, report.one), ...(!isEmpty && { width }) }}
      aria-label={words.drafting.song({ number, name })}
    >
      <SongHead
        id={section.id}
        number={number}
        name={name}
        artist={song?.artist ?? ''}
        facts={isEmpty ? words.drafting.empty : facts(section, report)}
        selected={selected}
        focusable={focusable}
        onSelect={onSelect}
        onFit={onFit}
      />
      {cut && song?.fingerprint && (
        <SongWave
          fingerprint={song.fingerprint}
          origin={song.grid && report.counts ? secondAt(song.grid, report.counts.in) : 0}
          scale={scale}
          {...cut}
        />
      )}
      {cut && song?.grid && report.counts && (
        <SongRuler
          grid={song.grid}
          marks={song.marks}
          inCount={report.counts.in}
          total={report.counts.total}
          eight={report.unit.eight}
          phrase={report.unit.phrase}
          scale={scale}
          {...cut}
          hasWave={hasWaves && song.fingerprint !== undefined}
        />
      )}
    </section>
  )
}

/** What is drawn of a section is cut this coarsely, in pixels, so that little of it is drawn again when it moves. */
const CUT = 512

function cutOf({ one, to }: SectionReport, stretch: Stretch, scale: TimeScale): { from: number; to: number } {
  return {
    from: Math.max(0, Math.floor(toX(scale, stretch.from - one) / CUT) * CUT),
    to: Math.min(toX(scale, to - one), Math.ceil(toX(scale, stretch.to - one) / CUT) * CUT),
  }
}

interface SongHeadProps {
  id: string
  number: number
  name: string
  artist: string
  facts: string
  selected: boolean
  focusable: boolean
  onSelect: (sectionId: string) => void
  onFit: (sectionId: string) => void
}

/** The keys that move a whole song. */
const MOVE_KEYS = ariaKeys(MOVE_BEFORE, MOVE_AFTER)

const SongHead = memo(function SongHead({ id, number, name, artist, facts, selected, focusable, onSelect, onFit }: SongHeadProps) {
  return (
    <DragHandle kind="section" id={id}>
      <button
        type="button"
        className="song-head"
        data-stage-stop="section"
        data-id={id}
        tabIndex={focusable ? 0 : -1}
        aria-pressed={selected}
        aria-keyshortcuts={MOVE_KEYS}
        onClick={() => onSelect(id)}
        onDoubleClick={(event) => {
          if (!event.defaultPrevented) onFit(id)
        }}
        title={words.drafting.songTitle({ name, artist })}
      >
        <span className="song-head-text">
          <b>
            {number}. {name}
          </b>{' '}
          <span className="song-facts">{facts}</span>
        </span>
      </button>
    </DragHandle>
  )
})

function facts(section: Section, report: SectionReport): string {
  const length = report.to - report.one
  const { song } = section
  if (!song) return words.drafting.timed({ length })
  if (!song.grid || report.bpm === undefined) return words.drafting.noTempo({ length })
  const { drafting, measures, names } = words
  const said = [measures.bpm(report.bpm)]
  said.push(song.strikesPerBeat === null ? drafting.offBeat : measures.rpm((report.bpm * song.strikesPerBeat) / 2))
  if (section.lead) said.push(drafting.leadFoot({ foot: names.foot({ foot: section.lead }) }))
  if (report.counts) said.push(drafting.counted({ counts: report.counts.total, unit: report.unit.eight, length }))
  return said.join(' · ')
}
