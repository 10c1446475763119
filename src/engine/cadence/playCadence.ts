import type { PlayedCadence } from '#engine/report.ts'
import type { Laid } from '#engine/timeline/laySection.ts'
import { secondAt, stretchAt } from '#plan/beatGrid.ts'
import type { BeatGrid, Block, Section, StrikesPerBeat } from '#plan/model.ts'
import { type Bpm, type Counts, EIGHT, type Rpm } from '#units/units.ts'

/** Cadence that strikes on the beat: tempo × strikes per beat ÷ 2, one turn being two strikes. */
const cadenceOnBeat = (bpm: Bpm, strikesPerBeat: number): Rpm => (bpm * strikesPerBeat) / 2

/** Strikes per beat of a block: its own, else its song's; null rides off the beat. */
export function strikesOf(block: Block, section: Section): StrikesPerBeat {
  return block.strikesPerBeat === undefined ? (section.song?.strikesPerBeat ?? null) : block.strikesPerBeat
}

/**
 * The cadence a block is ridden at: what it states, else what the beat gives from its first
 * eight to its last. Off the bike nothing turns.
 */
export function playCadence(laid: Laid, section: Section): PlayedCadence {
  const { cadence, posture } = laid.block
  if (cadence === 'legsStill') return { kind: 'still' }
  if (cadence) return { kind: 'turning', from: cadence.rpm, to: cadence.rampTo ?? cadence.rpm }
  if (posture === 'offBike') return { kind: 'still' }
  const beat = beatCadence(laid, section)
  return beat ? { kind: 'turning', ...beat } : { kind: 'unknown' }
}

/** Cadence the beat alone would give from the first eight of a block to its last; undefined off the beat or without a grid. */
export function beatCadence({ block, countFrom, countTo }: Laid, section: Section): { from: Rpm; to: Rpm } | undefined {
  const grid = section.song?.grid
  const strikes = strikesOf(block, section)
  if (!grid || strikes === null || countFrom === undefined || countTo === undefined) return undefined
  const first = (section.inCount ?? 0) + countFrom
  const last = (section.inCount ?? 0) + countTo
  const reach = Math.min(EIGHT, last - first)
  return {
    from: cadenceOnBeat(tempoBetween(grid, first, first + reach), strikes),
    to: cadenceOnBeat(tempoBetween(grid, last - reach, last), strikes),
  }
}

/**
 * Mean tempo between two counts of a song. Inside one stretch of the grid it is that
 * stretch's own, so that a song of constant tempo gives the same number everywhere.
 */
function tempoBetween(grid: BeatGrid, from: Counts, to: Counts): Bpm {
  const [[c0, s0], [c1, s1]] = stretchAt(grid, from, 0)
  if (to <= c1 || c1 === grid.anchors.at(-1)![0]) return (60 * (c1 - c0)) / (s1 - s0)
  return (60 * (to - from)) / (secondAt(grid, to) - secondAt(grid, from))
}
