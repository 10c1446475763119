import { OptionalQuantityRow } from '#features/drafting/panel/rows/OptionalQuantityRow.tsx'
import type { SectionActions } from '#features/drafting/panel/section/actionsOnSection.ts'
import type { BeatGrid, Section, Song } from '#plan/model.ts'
import { countsOf, eightOf, lastCountOf } from '#plan/songs/beatGrid.ts'
import { formatEnd, formatStart, parseEnd, parseStart } from '#plan/songs/songPlace.ts'
import { parsed, refused } from '#units/parsed.ts'
import type { Counts } from '#units/units.ts'

interface RiddenFieldsProps {
  song: Song
  grid: BeatGrid
  inCount: Counts | undefined
  outCount: Counts | undefined
  does: SectionActions
}

/** The stretch of the song that is ridden, by the numbers of its first and last eight. */
export function RiddenFields({ song, grid, inCount, outCount, does }: RiddenFieldsProps) {
  const eight = eightOf(grid)
  const from = inCount ?? 0
  const stretch: Pick<Section, 'song' | 'inCount'> = { song, inCount }
  const end = outCount ?? from + (countsOf({ ...stretch, id: '', leadInSeconds: 0, blocks: [] }) ?? 0)
  const last = Math.floor(lastCountOf(song, grid))
  const name = eight === 6 ? 'six' : 'eight'
  return (
    <>
      <OptionalQuantityRow
        label="starts at"
        value={inCount}
        unit={`the ${name} it starts on`}
        placeholder={`${name} 1, the first beat`}
        format={(count) => formatStart(count, eight)}
        parse={(text) => {
          const count = parseStart(text, eight)
          if (!count.ok || count.value < end) return count
          return refused(`The section ends after ${name} ${formatEnd(end, eight)}; start before that.`)
        }}
        onChange={(count) => does.edit({ inCount: count === 0 ? undefined : count })}
        step={(count, direction, large) => Math.max(0, Math.min(end - eight, count + direction * (large ? 4 : 1) * eight))}
      />
      <OptionalQuantityRow
        label="ends after"
        value={outCount}
        unit={`of ${Math.floor(last / eight)} in the song`}
        placeholder={`${name} ${formatEnd(end, eight)}, the last whole one`}
        format={(count) => formatEnd(count, eight)}
        parse={(text) => {
          const count = parseEnd(text, eight)
          if (!count.ok) return count
          if (count.value <= from) return refused(`The section starts at ${name} ${formatStart(from, eight)}; end after that.`)
          return count.value <= last ? parsed(count.value) : refused(`The song ends after ${name} ${formatEnd(last, eight)}.`)
        }}
        onChange={(count) => does.edit({ outCount: count })}
        step={(count, direction, large) => Math.max(from + eight, Math.min(last, count + direction * (large ? 4 : 1) * eight))}
      />
    </>
  )
}
