import type { SongTrim } from '#engine/fit/rideFit.ts'
import { formatEightsInput } from '#units/formatEights.ts'
import type { Counts } from '#units/units.ts'
import { tell, words } from '#words/words.ts'

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
            <button type="button" className="panel-link" onClick={() => onShow(sectionId)} title={words.fit.showSong}>
              {tell(name)}
            </button>{' '}
            <b>{words.fit.fromTo({ from: count(from), to: count(to), unit: eight })}</b>, {words.fit.longer({ seconds })}
            {blocks.length > 0 && (
              <p className="panel-note">
                {blocks
                  .map((block) => words.fit.blockFromTo({ block: tell(block.name), from: count(block.from), to: count(block.to) }))
                  .join(', ')}
              </p>
            )}
          </li>
        )
      })}
    </ul>
  )
}
