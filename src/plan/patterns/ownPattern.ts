import { editBlocksIn } from '#plan/edits.ts'
import { limitsOf } from '#plan/ledger/limits.ts'
import { standingBefore } from '#plan/ledger/standingBefore.ts'
import { type BeatGrid, type Bike, type Block, type Item, type Ride, type Section, type StrikesPerBeat, tempoOf } from '#plan/model.ts'
import { findBlock, findItem, findSection } from '#plan/places.ts'
import type { Bpm, KnobSteps } from '#units/units.ts'
import { withTotals } from './withTotals.ts'

/** Most own patterns that are kept. */
export const MOST_PATTERNS = 200
/** Most blocks and sets of one. */
export const MOST_ITEMS = 60
/** Longest name, in characters: it stands on a button. */
export const LONGEST_NAME = 60

/** Blocks and sets to start from, as somebody made them once. */
export interface OwnPattern {
  /** With their cues and moves, led by nobody; totals in steps of `bike` counted from the total they are entered with. */
  items: readonly Item[]
  /** That total, over the base of the bike. */
  entered: KnobSteps
  bike: Bike
  /** The beat their counts were ridden on; absent, they are measured by the clock. */
  beat?: Beat
}

export interface Beat {
  bpm: Bpm
  beatsPerBar: BeatGrid['beatsPerBar']
  strikesPerBeat: StrikesPerBeat
}

interface Run {
  section: Section
  /** Where it begins, among the items of its section. */
  index: number
  items: readonly Item[]
}

/** The unbroken run that is chosen: items of one section, parts of one set, or a whole section; null where they stand apart. */
export function runOf(ride: Ride, ids: readonly string[]): Run | null {
  const section = ids.length === 1 ? findSection(ride, ids[0]!) : undefined
  if (section) return section.blocks.length > 0 ? { section, index: 0, items: section.blocks } : null
  const chosen = new Set(ids)
  // A part goes along with its set.
  const within = ids.filter((id) => !chosen.has(findBlock(ride, id)?.set?.id ?? ''))
  const place = findItem(ride, within[0] ?? '') ?? findBlock(ride, within[0] ?? '')
  if (!place) return null
  const set = 'set' in place ? place.set : undefined
  const list: readonly Item[] = set ? set.parts : place.section.blocks
  const first = list.findIndex(({ id }) => chosen.has(id))
  const items = list.slice(first, first + within.length)
  if (items.length < within.length || !items.every(({ id }) => chosen.has(id))) return null
  return { section: place.section, index: set ? place.section.blocks.indexOf(set) : first, items }
}

/** What is chosen as a pattern; null where it is no unbroken run, or a longer one than is kept. */
export function patternOf(ride: Ride, ids: readonly string[]): OwnPattern | null {
  const run = runOf(ride, ids)
  if (!run || run.items.length > MOST_ITEMS) return null
  const { section, index, items } = run
  const entered = standingBefore(ride, section.id, index)
  const { song } = section
  return {
    items: items.map((item) => editBlocksIn(item, (block) => withTotals(ledByNobody(block), (total) => total - entered))),
    entered: entered - limitsOf(ride).base,
    bike: ride.bike,
    ...(song?.grid && {
      beat: { bpm: tempoOf(song.grid), beatsPerBar: song.grid.beatsPerBar, strikesPerBeat: song.strikesPerBeat },
    }),
  }
}

/** Leaders are a ride's own. */
function ledByNobody({ leader: _leader, mic: _mic, ...block }: Block): Block {
  return block
}
