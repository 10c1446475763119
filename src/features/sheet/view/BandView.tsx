import type { Band } from '#features/sheet/contents/contents.ts'
import { words } from '#words/words.ts'
import { AsideLine } from './AsideLine.tsx'
import { Facts } from './Facts.tsx'
import { FootMark } from './marks.tsx'
import { RowView } from './RowView.tsx'

interface BandViewProps {
  band: Band
  /** Rows shown, from (inclusive) to (exclusive); all unless given. */
  from?: number
  to?: number
  /** Rows whose blocks are named, by number, on a sheet that is short of room. */
  named?: ReadonlySet<number>
}

/** One song: its head and its changes, and what the class does before the first and after the last. */
export function BandView({ band, from = 0, to = Number.POSITIVE_INFINITY, named }: BandViewProps) {
  const { rows, before, after } = band
  return (
    <section className="sheet-band" data-part="band">
      {from === 0 && before && <AsideLine aside={before} />}
      <h3 className="sheet-band-head">
        <span className="sheet-band-title">
          <b>
            <Name band={band} />
          </b>
          {from > 0 && ` ${words.printed.continued}`}
          {band.title && band.song && (
            <>
              {' · '}
              <bdi>{band.song}</bdi>
            </>
          )}
          {band.artist && (
            <span className="sheet-band-artist">
              {' · '}
              <bdi>{band.artist}</bdi>
            </span>
          )}
          {band.lead && <FootMark foot={band.lead} />}
        </span>
        <span className="sheet-band-facts">
          {from === 0 && band.handOver && <b>{band.handOver} · </b>}
          <Facts facts={band.facts} />
        </span>
      </h3>
      <ol>
        {rows.slice(from, to).map((row, index) => (
          <RowView key={row.id} row={row} named={named?.has(from + index)} />
        ))}
      </ol>
      {/* Packed like one more change. */}
      {after && from <= rows.length && to > rows.length && (
        <div data-part="row">
          <AsideLine aside={after} />
        </div>
      )}
    </section>
  )
}

function Name({ band: { number, title, song } }: { band: Band }) {
  const name = title ?? song
  if (!name) return words.names.songPlace({ place: number })
  return (
    <>
      {number} <bdi>{name}</bdi>
    </>
  )
}
