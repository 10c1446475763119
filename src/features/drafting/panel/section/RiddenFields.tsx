import { OptionalQuantityRow } from '#features/drafting/panel/rows/OptionalQuantityRow.tsx'
import type { SectionActions } from '#features/drafting/panel/section/actionsOnSection.ts'
import type { BeatGrid, Section, Song } from '#plan/model.ts'
import { countsOf, eightOf, lastCountOf } from '#plan/songs/beatGrid.ts'
import { formatEnd, formatStart, parseEnd, parseStart } from '#plan/songs/songPlace.ts'
import { parsed, refused } from '#units/parsed.ts'
import type { Counts } from '#units/units.ts'
import { words } from '#words/words.ts'

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
  const six = eight === 6
  return (
    <>
      <OptionalQuantityRow
        label={words.panelsSong.playFrom}
        value={inCount}
        unit={words.panelsSong.startsOn({ six })}
        placeholder={words.panelsSong.firstGroup({ six })}
        format={(count) => formatStart(count, eight)}
        parse={(text) => {
          const count = parseStart(text, eight)
          if (!count.ok || count.value < end) return count
          return refused(words.panelsSong.startBeforeEnd({ six, end: formatEnd(end, eight) }))
        }}
        onChange={(count) => does.edit({ inCount: count === 0 ? undefined : count })}
        step={(count, direction, large) => Math.max(0, Math.min(end - eight, count + direction * (large ? 4 : 1) * eight))}
      />
      <OptionalQuantityRow
        label={words.panelsSong.playTo}
        value={outCount}
        unit={words.panelsSong.ofInSong({ count: Math.floor(last / eight) })}
        placeholder={words.panelsSong.lastWhole({ six, end: formatEnd(end, eight) })}
        format={(count) => formatEnd(count, eight)}
        parse={(text) => {
          const count = parseEnd(text, eight)
          if (!count.ok) return count
          if (count.value <= from) return refused(words.panelsSong.endAfterStart({ six, start: formatStart(from, eight) }))
          return count.value <= last ? parsed(count.value) : refused(words.panelsSong.songEndsAfter({ six, end: formatEnd(last, eight) }))
        }}
        onChange={(count) => does.edit({ outCount: count })}
        step={(count, direction, large) => Math.max(from + eight, Math.min(last, count + direction * (large ? 4 : 1) * eight))}
      />
    </>
  )
}
