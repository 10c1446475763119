import { useEffect, useEffectEvent } from 'react'
import { useAppStore } from '#store/useApp.ts'
import { isTyping } from '#ui/isTyping.ts'
import type { Rehearsing } from './RehearsalContext.ts'
import { startOfSelection } from './startOf.ts'

/**
 * The keys of a rehearsal, wherever the focus is but in a text. Space plays and pauses where nothing
 * else has a use for it; P does so everywhere.
 */
export function useRehearsalKeys(rehearsing: Rehearsing | null): void {
  const store = useAppStore()
  const press = useEffectEvent((event: KeyboardEvent) => {
    if (!rehearsing || event.defaultPrevented || event.repeat || event.ctrlKey || event.metaKey || event.altKey) return
    if (isTyping(event.target) || document.querySelector('dialog[open]')) return
    const does = meaningOf(event, rehearsing)
    if (!does) return
    event.preventDefault()
    does()
  })
  useEffect(() => {
    window.addEventListener('keydown', press)
    return () => window.removeEventListener('keydown', press)
  }, [])

  function meaningOf({ key, target, timeStamp }: KeyboardEvent, { rehearsal, hearing, lastMark }: Rehearsing): (() => void) | null {
    const isOpen = rehearsal.snapshot().open
    const hears = hearing.snapshot()
    switch (key.toLowerCase()) {
      case ' ':
        return (isOpen || hears.phase !== 'still') && !usesSpace(target) ? toggle : null
      case 'p':
        return toggle
      case 'n':
        return isOpen ? rehearsal.next : null
      case 'b':
        return isOpen ? rehearsal.back : null
      case 'r':
        return isOpen ? rehearsal.toggleRepeat : null
      case 'x':
        return isOpen ? () => void rehearsal.toggleShaky(timeStamp) : null
      case 'm':
        if (hears.phase === 'playing') return () => void hearing.mark(lastMark.label, 'eight', timeStamp)
        return isOpen ? () => void rehearsal.mark(lastMark.label, timeStamp) : null
      default:
        return null
    }

    function toggle() {
      if (hears.phase !== 'still') hearing.stop()
      else if (isOpen) rehearsal.toggle()
      else void rehearsal.playFrom(startOfSelection(store.getState()) ?? 0)
    }
  }
}

/** Buttons, ticks and the stops of the stage are pressed with the space bar themselves. */
const usesSpace = (target: EventTarget | null): boolean =>
  target instanceof Element && target.closest('button, a, summary, input, [role="option"], [data-stage-stop]') !== null
