import type { SongTrim } from '#engine/fit/rideFit.ts'
import { formatDuration } from '#units/formatDuration.ts'
import { formatEightsInput } from '#units/formatEights.ts'
import type { Counts } from '#units/units.ts'

interface TrimListProps {
  trims: readonly SongTrim[]
  /** Counts in an eight of a section. */
  eightOf: (sectionId: string) => Counts
  onShow: (sectionId: string) => void
}

/** Songs that end elsewhere, each with the blocks that give. */
export function TrimList({ trims, eightOf, onShow }: TrimListProps) {
  return (
    <ul className="proposal-list">
      {trims.map(({ sectionId, name, from, to, seconds, blocks }) => {
        const eight = eightOf(sectionId)
        const count = (counts: Counts) => formatEightsInput(counts, eight)
        return (
          <li key={sectionId}>
            <button type="button" className="panel-link" onClick={() => onShow(sectionId)} title="show the song">
              {name}
            </button>{' '}
            <b>
              {count(from)} → {count(to)} {eight === 6 ? 'sixes' : 'eights'}
            </b>
            , {formatDuration(Math.abs(seconds))} {seconds < 0 ? 'shorter' : 'longer'}
            {blocks.length > 0 && (
              <p className="panel-note">{blocks.map((block) => `${block.name} ${count(block.from)} → ${count(block.to)}`).join(', ')}</p>
            )}
          </li>
        )
      })}
    </ul>
  )
}
