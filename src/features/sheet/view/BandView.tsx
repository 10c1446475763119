import type { Band } from '#features/sheet/contents/contents.ts'
import { FootMark } from './marks.tsx'
import { RowView } from './RowView.tsx'

interface BandViewProps {
  band: Band
  /** Rows shown, from (inclusive) to (exclusive); all unless given. */
  from?: number
  to?: number
}

/** One song: its head and its changes. */
export function BandView({ band, from = 0, to = band.rows.length }: BandViewProps) {
  return (
    <section className="sheet-band" data-part="band">
      <h3 className="sheet-band-head">
        <span className="sheet-band-title">
          <b>{nameOf(band)}</b>
          {from > 0 && ' (continued)'}
          {band.title && band.song && ` · ${band.song}`}
          {band.artist && <span className="sheet-band-artist"> · {band.artist}</span>}
          {band.lead && <FootMark foot={band.lead} />}
        </span>
        <span className="sheet-band-facts">
          {from === 0 && band.handOver && <b>{band.handOver} · </b>}
          {band.facts.join(' · ')}
        </span>
      </h3>
      <ol>
        {band.rows.slice(from, to).map((row) => (
          <RowView key={row.id} row={row} />
        ))}
      </ol>
    </section>
  )
}

const nameOf = ({ number, title, song }: Band): string => (title || song ? `${number} ${title ?? song}` : `section ${number}`)
