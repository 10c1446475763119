import { type ReactNode, useEffect, useMemo } from 'react'
import { encodeLink } from '#plan/link/encodeLink.ts'
import { sentOf } from '#plan/merge/findBase.ts'
import { handedOver } from '#plan/merge/lineage.ts'
import { isReadOnly } from '#store/placeSlice.ts'
import { useApp, useAppStore } from '#store/useApp.ts'
import { words } from '#words/words.ts'
import { FilePart } from './FilePart.tsx'
import { holdings } from './holdings.ts'
import { LinkPart } from './LinkPart.tsx'
import { linkAddress } from './linkAddress.ts'
import { QrPart } from './QrPart.tsx'
import type { Modules } from './qrComfort.ts'
import './handover.css'

interface Props {
  /** The address of the page, with or without a fragment. */
  page: string
  onOpenFile: (file: File) => void
  /** Makes a QR code of a text. */
  qrOf: (text: string) => Promise<Modules>
  /** The versions of the ride, below the ways out of here. */
  versions?: ReactNode
}

/** Hands the ride to someone else: as a link that holds all of it, or as a file. */
export function HandOverPlace({ page, onOpenFile, qrOf, versions }: Props) {
  const store = useAppStore()
  const announce = useApp((state) => state.announce)
  const ride = useOutgoing()
  const text = useMemo(() => (ride ? encodeLink(ride) : null), [ride])
  if (!ride || text === null) return null
  const { holds, never } = holdings(ride)
  const note = () => void store.getState().noteHandedOver()
  return (
    <div className="handover">
      <header className="handover-head">
        <h1>{words.handover.title({ title: ride.title || words.names.untitled })}</h1>
      </header>
      <div className="handover-main">
        <LinkPart title={ride.title || words.names.untitled} link={linkAddress(page, text)} onAnnounce={announce} onSent={note} />
        <QrPart link={linkAddress(page, text)} qrOf={qrOf} onShown={note} />
        <FilePart ride={ride} onOpenFile={onOpenFile} onSent={note} />
        {versions}
      </div>
      <aside className="handover-holds" aria-labelledby="handover-holds">
        <h2 id="handover-holds">{words.handover.holdings}</h2>
        <h3>{words.handover.included}</h3>
        <ul>
          {holds.map((phrase) => (
            <li key={phrase}>{phrase}</li>
          ))}
        </ul>
        <h3>{words.handover.notIncluded}</h3>
        <ul>
          {never.map((phrase) => (
            <li key={phrase}>{phrase}</li>
          ))}
        </ul>
      </aside>
    </div>
  )
}

/** The ride as it would go out: one's own with the versions of it that went out before, once they are known; another's as it came. */
function useOutgoing() {
  const store = useAppStore()
  const ride = useApp((state) => state.shown)
  const theirs = useApp(isReadOnly)
  const versions = useApp((state) => state.versions)
  useEffect(() => void store.getState().refreshVersions(), [store])
  return useMemo(() => {
    if (!ride || theirs) return ride
    return versions && handedOver(ride, sentOf(ride.id, versions))
  }, [ride, theirs, versions])
}
