import { memo } from 'react'
import type { SectionReport } from '#engine/report.ts'
import type { BeatGrid, Section, Song } from '#plan/model.ts'
import { formatDuration } from '#units/formatDuration.ts'
import { formatEights } from '#units/formatEights.ts'
import { formatNumber } from '#units/formatNumber.ts'
import { DragHandle } from './drag/DragHandle.tsx'
import { markFlags, rulerTicks } from './rulerTicks.ts'
import { type TimeScale, toX } from './timeScale.ts'

const RULER = 24

/** One section's head: its song in words, and the ruler of eights and phrases the blocks stand on. */
export const SongRow = memo(function SongRow({
  section,
  report,
  number,
  scale,
  selected,
  focusable,
  onSelect,
  onFit,
}: {
  section: Section
  report: SectionReport
  number: number
  scale: TimeScale
  selected: boolean
  focusable: boolean
  onSelect: (sectionId: string) => void
  onFit: (sectionId: string) => void
}) {
  const width = toX(scale, report.to - report.one)
  const name = section.song?.title ?? section.title ?? 'no song yet'
  const grid = section.song?.grid
  const empty = report.to - report.one <= 0
  return (
    <section
      className="song"
      data-section-id={section.id}
      data-selected={selected || undefined}
      data-empty={empty || undefined}
      style={{ left: toX(scale, report.one), ...(!empty && { width }) }}
      aria-label={`section ${number}, ${name}`}
    >
      <DragHandle kind="section" id={section.id}>
        <button
          type="button"
          className="song-head"
          data-stage-stop="section"
          data-id={section.id}
          tabIndex={focusable ? 0 : -1}
          aria-pressed={selected}
          aria-keyshortcuts="Alt+ArrowLeft Alt+ArrowRight"
          onClick={() => onSelect(section.id)}
          onDoubleClick={() => onFit(section.id)}
          title={`${name}${section.song?.artist ? `, ${section.song.artist}` : ''}. Double-click fits it to the stage.`}
        >
          <span className="song-head-text">
            <b>
              {number}. {name}
            </b>{' '}
            <span className="song-facts">{empty ? 'empty' : facts(section, report)}</span>
          </span>
        </button>
      </DragHandle>
      {grid && <Ruler section={report} grid={grid} marks={section.song?.marks} scale={scale} />}
    </section>
  )
})

interface RulerProps {
  section: SectionReport
  grid: BeatGrid
  marks: Song['marks']
  scale: TimeScale
}

/** The ruler of a song's eights and phrases; drawn again only when the song, its ridden stretch or the zoom is another. */
const Ruler = memo(function Ruler({ section, grid, marks, scale }: RulerProps) {
  const ticks = rulerTicks(section, grid, scale)
  const flags = markFlags(section, grid, marks ?? [], scale)
  return (
    <svg className="ruler" width={Math.max(1, ticks.at(-1)?.x ?? 0)} height={RULER} aria-hidden="true">
      <path
        className="ruler-ticks"
        d={ticks
          .map(({ x, strength }) => `M${Math.round(x * 10) / 10} ${RULER}v-${strength === 'phrase' ? 12 : strength === 'eight' ? 7 : 4}`)
          .join('')}
      />
      {ticks.map(({ x, label }) =>
        label === undefined ? null : (
          <text key={x} x={x + 3} y={RULER - 11}>
            {label}
          </text>
        ),
      )}
      {flags.map(({ x, label, room }) => (
        <g key={x} className="ruler-mark">
          <path d={`M${x} ${RULER}V0`} />
          {room && (
            <text x={x + 3} y={RULER - 1}>
              {label}
            </text>
          )}
          <title>{label}</title>
        </g>
      ))}
    </svg>
  )
}, sameRuler)

function sameRuler(a: RulerProps, b: RulerProps): boolean {
  return (
    a.grid === b.grid &&
    a.marks === b.marks &&
    a.scale === b.scale &&
    a.section.counts?.in === b.section.counts?.in &&
    a.section.counts?.total === b.section.counts?.total &&
    a.section.unit.eight === b.section.unit.eight
  )
}

function facts(section: Section, report: SectionReport): string {
  const length = formatDuration(report.to - report.one)
  const { song } = section
  if (!song) return `timed, ${length}`
  if (!song.grid || report.bpm === undefined) return `tempo not known, ${length}`
  const words = [`${formatNumber(report.bpm, 1)} bpm`]
  words.push(song.strikesPerBeat === null ? 'off the beat' : `${formatNumber((report.bpm * song.strikesPerBeat) / 2, 0)} rpm`)
  if (section.lead) words.push(`${section.lead} foot`)
  if (report.counts) words.push(`${formatEights(report.counts.total, report.unit.eight)}, ${length}`)
  return words.join(' · ')
}
