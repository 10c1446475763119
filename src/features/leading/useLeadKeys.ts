import { useEffect, useEffectEvent } from 'react'
import { type LeadKey, leadKeyOf } from './leadKeys.ts'

/**
 * The keys of the leading screen, wherever the focus is; only space and enter belong to a button
 * that has it. A handled key goes no further, so that nothing scrolls and no change of the ride is
 * undone by mistake.
 *
 * @param onKey gets the press's own timestamp: when it was made, not when there was time for it
 */
export function useLeadKeys(onKey: (key: LeadKey, timeStamp: number) => void): void {
  const press = useEffectEvent((event: KeyboardEvent) => {
    if (event.isComposing || document.querySelector('dialog[open]')) return
    const key = leadKeyOf(event)
    if (!key || (key === 'one' && event.target instanceof HTMLButtonElement)) return
    event.preventDefault()
    event.stopPropagation()
    onKey(key, event.timeStamp)
  })
  useEffect(() => {
    window.addEventListener('keydown', press, { capture: true })
    return () => window.removeEventListener('keydown', press, { capture: true })
  }, [])
}
