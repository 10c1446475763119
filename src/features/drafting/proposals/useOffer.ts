import { useCallback, useRef, useState } from 'react'

export type Offer = 'slot' | 'length' | 'draft' | 'words'

/** What is offered for the whole ride, in place of the details: asked for again, it is left. The focus goes back to where it was asked for. */
export function useOffer() {
  const [offer, setOffer] = useState<Offer | null>(null)
  const asker = useRef<HTMLElement | null>(null)
  const makeOffer = useCallback((next: Offer) => {
    asker.current = document.activeElement instanceof HTMLElement ? document.activeElement : null
    setOffer((open) => (open === next ? null : next))
  }, [])
  const closeOffer = useCallback(() => {
    setOffer(null)
    asker.current?.focus({ preventScroll: true })
  }, [])
  return { offer, makeOffer, closeOffer }
}
