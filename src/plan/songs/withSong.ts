import { mapSame, patched, withItems } from '#plan/edits.ts'
import { type BeatGrid, type Item, isSet, type Length, type Section, type Song } from '#plan/model.ts'
import { amountOf, remeasureItem } from '#plan/remeasure.ts'
import type { Counts, Seconds } from '#units/units.ts'
import { secondAt } from './beatGrid.ts'

/**
 * A section with another song, a changed one, or none. In- and out-point are counts of one
 * song, so they go with it; a song of the same id is the same song and keeps them while it
 * has beats. Lengths are converted where the measure changes (see `remeasureItem`); from
 * beats to the clock each change falls on the whole second nearest to where it was.
 */
export function withSong(section: Section, song: Song | null): Section {
  const next = patched(section, { song })
  if (next === section || (!section.song && !song)) return section
  const keeps = song?.grid !== undefined && song.id === section.song?.id
  const pointed = keeps ? next : patched(next, { inCount: undefined, outCount: undefined })
  const old = section.song?.grid
  const converted = mapSame(section.blocks, (item) => remeasureItem(item, section, pointed))
  return withItems(pointed, old && !song?.grid ? onWholeSeconds(converted, section.blocks, old, section.inCount ?? 0) : converted)
}

/**
 * Lengths in seconds that put every change on the whole second nearest to its time in the
 * song: rounding each length alone would drift by half a second a block. Rounds of a set
 * share one length a part, so what they are off by is made up after the set.
 */
function onWholeSeconds(items: readonly Item[], counted: readonly Item[], grid: BeatGrid, inCount: Counts): readonly Item[] {
  const start = secondAt(grid, inCount)
  let count = inCount
  let clock: Seconds = 0

  const fit = (length: Length): Length => {
    count += amountOf(length)
    const seconds = Math.max(1, Math.round(secondAt(grid, count) - start) - clock)
    clock += seconds
    return { seconds }
  }

  return items.map((item, index) => {
    const source = counted[index]!
    if (!isSet(item) || !isSet(source)) return isSet(item) || isSet(source) ? item : { ...item, length: fit(source.length) }
    const before = { count, clock }
    const parts = item.parts.map((part, p) => ({ ...part, length: fit(source.parts[p]!.length) }))
    count = before.count + (count - before.count) * item.rounds
    clock = before.clock + (clock - before.clock) * item.rounds
    return { ...item, parts }
  })
}
