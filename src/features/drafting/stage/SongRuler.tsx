import { memo } from 'react'
import type { BeatGrid, Song } from '#plan/model.ts'
import type { Counts } from '#units/units.ts'
import { markFlags, type RuledSong, rulerLabels, rulerTicks, showsCounts, type Tick } from './rulerTicks.ts'
import type { TimeScale } from './timeScale.ts'

const RULER = 36
/** Baselines of phrases and marks, and of the eights' numbers; the ticks stand below. */
const UPPER = 10
const LOWER = 23
/** How far a mark of each strength reaches up from the blocks. */
const REACH: Record<Tick['strength'], number> = { count: 3, bar: 5, eight: 8, phrase: 13 }
/** How far the beats reach up into the wave, where there is one. */
const INTO_WAVE = 30

interface SongRulerProps {
  grid: BeatGrid
  marks: Song['marks'] | undefined
  inCount: Counts
  total: Counts
  eight: Counts
  phrase: Counts
  scale: TimeScale
  /** What of it is drawn, in pixels from the section's left edge. */
  from: number
  to: number
  /** Whether a wave stands above it. */
  hasWave: boolean
}

/**
 * The ruler of a song: counts, bars, eights, phrases and section marks, as far as the zoom tells them apart. Plain
 * values, so that it is drawn again only when the song, its ridden stretch or the zoom is another.
 */
export const SongRuler = memo(function SongRuler({ grid, marks, inCount, total, eight, phrase, scale, from, to, hasWave }: SongRulerProps) {
  const song: RuledSong = { grid, inCount, total, eight, phrase }
  const cut = { from, to }
  const ticks = rulerTicks(song, scale, cut)
  const flags = markFlags(song, marks ?? [], scale).filter(({ x }) => x <= to)
  return (
    <svg className="ruler" width={Math.max(1, to)} height={RULER} aria-hidden="true">
      {hasWave && showsCounts(song, scale) && (
        <>
          <path className="ruler-beats" d={beatLines(ticks.filter(({ strength }) => strength === 'count'))} />
          <path className="ruler-ones" d={beatLines(ticks.filter(({ strength }) => strength !== 'count'))} />
        </>
      )}
      <path
        className="ruler-ticks"
        d={ticks
          .filter(({ strength }) => strength !== 'phrase')
          .map(({ x, strength }) => `M${tenth(x)} ${RULER}v-${REACH[strength]}`)
          .join('')}
      />
      <path
        className="ruler-phrases"
        d={ticks
          .filter(({ strength }) => strength === 'phrase')
          .map(({ x }) => `M${tenth(x)} ${RULER}v-${REACH.phrase}`)
          .join('')}
      />
      {rulerLabels(song, scale, cut, flags).map(({ x, text, kind, isFirst }) => (
        <text key={`${kind} ${text}`} x={tenth(x) + 3} y={kind === 'phrase' ? UPPER : LOWER} data-kind={isFirst ? 'first' : kind}>
          {text}
        </text>
      ))}
      {flags.map(({ x, label, room }) => (
        <g key={x} className="ruler-mark">
          <path d={`M${tenth(x)} ${RULER}V0h5l-1.5 2.5L${tenth(x) + 5} 5h-5`} />
          {room && (
            <text x={tenth(x) + 8} y={UPPER}>
              {label}
            </text>
          )}
          <title>{label}</title>
        </g>
      ))}
    </svg>
  )
})

const beatLines = (ticks: readonly Tick[]): string => ticks.map(({ x }) => `M${tenth(x)} 0v-${INTO_WAVE}`).join('')

const tenth = (x: number): number => Math.round(x * 10) / 10
