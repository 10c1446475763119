import { startLead, startsWithBlock } from '#plan/cueStart.ts'
import { editBlocksIn } from '#plan/edits.ts'
import { type BeatGrid, type Block, type Cue, type Item, type Length, type Section, type Song, tempoOf } from '#plan/model.ts'
import type { Counts, Seconds } from '#units/units.ts'
import { eightOf } from './songs/beatGrid.ts'

/** What measures a stretch of the ride: the song with its beats, or the clock. */
type Measure = Pick<Section, 'song'>

/** Seconds of a number of counts at a grid's tempo: to the nearest whole second, at least one. */
const wholeSeconds = (counts: Counts, grid: BeatGrid): Seconds => Math.max(1, Math.round((counts * 60) / tempoOf(grid)))

/** Counts of a stretch of time at a grid's tempo: to the nearest whole eight, at least one. */
function wholeEights(seconds: Seconds, grid: BeatGrid): Counts {
  const eight = eightOf(grid)
  return Math.max(1, Math.round((seconds * tempoOf(grid)) / 60 / eight)) * eight
}

/**
 * An item taken from one measure to another. Between two songs counts stay counts, whatever
 * the tempo. From counts to the clock, lengths and cue leads become whole seconds and the
 * cadence the beat gave is written down; the other way lengths become whole eights, and a
 * steady cadence is left to the beat where the song is ridden on it.
 */
export function remeasureItem(item: Item, from: Measure, to: Measure): Item {
  return editBlocksIn(item, (block) => remeasureBlock(block, from, to))
}

/** A single block taken from one measure to another; see `remeasureItem`. */
export function remeasureBlock(block: Block, from: Measure, to: Measure): Block {
  const source = from.song?.grid
  const target = to.song?.grid
  if (source && !target) return toClock(block, from.song!, source)
  if (!source && target) return toBeats(block, to.song!, target)
  return block
}

/** A length as the section measures: whole counts or whole seconds, at least one; the other kind is converted where a grid is known. */
export function lengthFor(section: Section, length: Length): Length {
  const grid = section.song?.grid
  if (grid) return 'counts' in length ? { counts: atLeastOne(length.counts) } : { counts: wholeEights(length.seconds, grid) }
  return 'seconds' in length ? { seconds: atLeastOne(length.seconds) } : { seconds: atLeastOne(length.counts / 2) }
}

/** Counts or seconds, whichever the length is in. */
export const amountOf = (length: Length): number => ('counts' in length ? length.counts : length.seconds)

/** The longest single block a command makes: far past any class, short of overflow. */
const LONGEST = 20_000
const atLeastOne = (amount: number): number => (Number.isNaN(amount) ? 1 : Math.min(LONGEST, Math.max(1, Math.round(amount))))

function toClock(block: Block, song: Song, grid: BeatGrid): Block {
  if (!('counts' in block.length)) return block
  const { strikesPerBeat: own, ...rest } = block
  const strikes = own === undefined ? song.strikesPerBeat : own
  const cadence = block.cadence ?? (strikes === null ? undefined : { rpm: Math.round((tempoOf(grid) * strikes) / 2) })
  return {
    ...rest,
    length: { seconds: wholeSeconds(block.length.counts, grid) },
    ...(cadence && { cadence }),
    cues: block.cues.map((cue) => cueToClock(cue, grid)),
  }
}

function cueToClock(cue: Cue, grid: BeatGrid): Cue {
  if (!('counts' in cue.lead)) return cue
  if (startsWithBlock(cue.lead)) return { ...cue, lead: startLead('seconds') }
  return { ...cue, lead: { seconds: Math.round((cue.lead.counts * 60) / tempoOf(grid)) } }
}

function toBeats(block: Block, song: Song, grid: BeatGrid): Block {
  if (!('seconds' in block.length)) return block
  const { cadence, ...rest } = block
  const steady = cadence !== undefined && cadence !== 'legsStill' && cadence.rampTo === undefined
  const onBeat = block.strikesPerBeat !== null && (block.strikesPerBeat ?? song.strikesPerBeat) !== null
  return {
    ...rest,
    length: { counts: wholeEights(block.length.seconds, grid) },
    ...(cadence && !(steady && onBeat) && { cadence }),
  }
}
