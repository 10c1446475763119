import { countsRow, secondsRow } from '#features/drafting/panel/block/LengthRow.tsx'
import { MixedQuantityRow } from '#features/drafting/panel/rows/MixedQuantityRow.tsx'
import { eightOf } from '#plan/songs/beatGrid.ts'
import { words } from '#words/words.ts'
import type { EachBlock } from './eachBlock.ts'
import { sharedOf } from './sharedOf.ts'

/** The length of several blocks: in eights where all are counted, by the clock where none is; where both are among them there is no one length to give. */
export function BlocksLength({ each: { blocks, songs, edit } }: { each: EachBlock }) {
  const lengths = blocks.map(({ length }) => length)
  const counts = lengths.flatMap((length) => ('counts' in length ? [length.counts] : []))
  const seconds = lengths.flatMap((length) => ('seconds' in length ? [length.seconds] : []))
  const eight = sharedOf(songs, (song) => eightOf(song?.grid))
  if (counts.length === blocks.length && eight !== null)
    return (
      <MixedQuantityRow
        label={words.panels.length}
        value={sharedOf(counts, (count) => count)}
        unit={words.panels.groups({ six: eight === 6 })}
        {...countsRow(eight)}
        onChange={(next) => edit({ length: { counts: next } })}
      />
    )
  if (seconds.length !== blocks.length) return null
  return (
    <MixedQuantityRow
      label={words.panels.length}
      value={sharedOf(seconds, (each) => each)}
      {...secondsRow}
      onChange={(next) => edit({ length: { seconds: next } })}
    />
  )
}
