import { useCallback, useRef, useState } from 'react'

/** What is offered for the whole ride, in place of the details; the focus goes back to where it was asked for. */
export function useOffer() {
  const [offer, setOffer] = useState<'slot' | 'length' | 'draft' | null>(null)
  const asker = useRef<HTMLElement | null>(null)
  const makeOffer = useCallback((next: 'slot' | 'length' | 'draft') => {
    asker.current = document.activeElement instanceof HTMLElement ? document.activeElement : null
    setOffer(next)
  }, [])
  const closeOffer = useCallback(() => {
    setOffer(null)
    asker.current?.focus({ preventScroll: true })
  }, [])
  return { offer, makeOffer, closeOffer }
}
