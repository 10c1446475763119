import { useEffect, useEffectEvent, useState } from 'react'
import { Source } from '#ui/Source.tsx'
import { words } from '#words/words.ts'
import { COMFORTABLE_QR, darkPath, type Modules, scansWell } from './qrComfort.ts'
import './qr.css'

interface Props {
  /** The whole address. */
  link: string
  /** Makes the code; fetched when it is first needed. */
  qrOf: (text: string) => Promise<Modules>
  /** The code stands on the screen: whoever points a camera at it has the ride. */
  onShown: () => void
}

/** The link to be read by a camera; where it would be too dense for that, the reason and the way that serves. */
export function QrPart({ link, qrOf, onShown }: Props) {
  return (
    <section className="handover-part" aria-labelledby="handover-qr">
      <h2 id="handover-qr">{words.handover.qr}</h2>
      {scansWell(link) ? (
        <QrCode link={link} qrOf={qrOf} onShown={onShown} />
      ) : (
        <p>
          {words.handover.tooLongForQr({ count: link.length, most: COMFORTABLE_QR })} <Source text={words.handover.tooLongForQrSource} />
        </p>
      )}
    </section>
  )
}

function QrCode({ link, qrOf, onShown }: Props) {
  const [made, setMade] = useState<{ link: string; modules: Modules | null }>()
  useEffect(() => {
    let wanted = true
    const show = (modules: Modules | null) => wanted && setMade({ link, modules })
    qrOf(link).then(show, () => show(null))
    return () => {
      wanted = false
    }
  }, [link, qrOf])
  const shown = made?.link === link && made.modules !== null
  const note = useEffectEvent(onShown)
  useEffect(() => {
    if (shown) note()
  }, [shown])
  // A code of the link as it was would hand over another ride.
  if (made?.link !== link) return <p role="status">{words.handover.drawingQr}</p>
  if (!made.modules) return <p role="alert">{words.handover.qrFailed}</p>
  const size = made.modules.length
  return (
    <>
      <svg
        className="handover-qr"
        viewBox={`0 0 ${size} ${size}`}
        role="img"
        aria-label={words.handover.qrLabel}
        shapeRendering="crispEdges"
      >
        <rect className="handover-qr-light" width={size} height={size} />
        <path className="handover-qr-dark" d={darkPath(made.modules)} />
      </svg>
      <p className="handover-hint">{words.handover.qrAbout({ count: link.length })}</p>
    </>
  )
}
