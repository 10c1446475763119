import { useEffect, useEffectEvent } from 'react'
import type { Sought } from './searchSlice.ts'
import { useApp } from './useApp.ts'

/**
 * Shows what is sought where it is, as soon as the place that has it is drawn.
 *
 * @param kind what this place has
 * @param show goes there; called after the page has put the focus where it puts it on arrival
 */
export function useSought<Kind extends Sought['kind']>(kind: Kind, show: (sought: Extract<Sought, { kind: Kind }>) => void): void {
  const sought = useApp((state) => (state.sought?.kind === kind ? state.sought : null))
  const foundIt = useApp((state) => state.foundIt)
  const latest = useEffectEvent(show)
  useEffect(() => {
    if (!sought) return
    // A place that was just gone to takes the focus first.
    const turn = setTimeout(() => {
      foundIt()
      latest(sought as Extract<Sought, { kind: Kind }>)
    })
    return () => clearTimeout(turn)
  }, [sought, foundIt])
}
