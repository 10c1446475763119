import { useMemo } from 'react'
import { encodeLink } from '#plan/link/encodeLink.ts'
import { useApp } from '#store/useApp.ts'
import { FilePart } from './FilePart.tsx'
import { holdings } from './holdings.ts'
import { LinkPart } from './LinkPart.tsx'
import { linkAddress } from './linkAddress.ts'
import './handover.css'

interface Props {
  /** The address of the page, with or without a fragment. */
  page: string
  onOpenFile: (file: File) => void
}

/** Hands the ride to someone else: as a link that holds all of it, or as a file. */
export function HandOverPlace({ page, onOpenFile }: Props) {
  const ride = useApp((state) => state.shown)
  const announce = useApp((state) => state.announce)
  const text = useMemo(() => (ride ? encodeLink(ride) : null), [ride])
  if (!ride || text === null) return null
  const { holds, never } = holdings(ride)
  return (
    <div className="handover">
      <header className="handover-head">
        <h1>Hand over “{ride.title || 'untitled ride'}”</h1>
      </header>
      <div className="handover-main">
        <LinkPart title={ride.title || 'untitled ride'} link={linkAddress(page, text)} onAnnounce={announce} />
        <FilePart ride={ride} onOpenFile={onOpenFile} onAnnounce={announce} />
      </div>
      <aside className="handover-holds" aria-labelledby="handover-holds">
        <h2 id="handover-holds">what goes with it</h2>
        <h3>goes</h3>
        <ul>
          {holds.map((phrase) => (
            <li key={phrase}>{phrase}</li>
          ))}
        </ul>
        <h3>never goes</h3>
        <ul>
          {never.map((phrase) => (
            <li key={phrase}>{phrase}</li>
          ))}
        </ul>
      </aside>
    </div>
  )
}
