import { useEffect, useEffectEvent } from 'react'
import { possible } from '#actions/action.ts'
import { COPY, CUT, PASTE, take, takeCue } from '#features/drafting/actions/clipboard/copyAndPaste.ts'
import type { DraftGround } from '#features/drafting/actions/draftGround.ts'
import type { Carried } from '#store/clipSlice.ts'
import { isTyping } from '#ui/isTyping.ts'
import { tell } from '#words/words.ts'
import { paste } from './pasting.ts'

const ACTIONS = { copy: COPY, cut: CUT, paste: PASTE } as const

/**
 * Copies, cuts, and pastes by the browser's own keys and menus. Text that is marked, and text in a field, is left to the
 * browser; where the focus is in a cue and in none of its words, the cue is what is copied.
 */
export function useClipboardEvents(groundAt: (focus: Element | null) => DraftGround): void {
  const hear = useEffectEvent((event: ClipboardEvent) => {
    const { clipboardData: data } = event
    const focus = document.activeElement
    if (event.defaultPrevented || !data || document.querySelector('dialog[open]')) return
    if (isTyping(focus) && !(focus instanceof HTMLSelectElement)) return
    const kind = event.type as keyof typeof ACTIONS
    if (kind !== 'paste' && getSelection()?.isCollapsed === false) return
    const on = groundAt(focus)
    const hand = (carried: Carried | null) => {
      if (!carried) return
      data.setData('text/html', carried.html)
      data.setData('text/plain', carried.text)
    }
    const cueId = kind === 'paste' ? undefined : focus?.closest<HTMLElement>('[data-cue-id]')?.dataset.cueId
    const answer = possible(ACTIONS[kind], on)
    if (answer === false) return
    event.preventDefault()
    if (answer !== true) on.store.getState().announce(tell(answer))
    else if (kind === 'paste') paste(on, { html: data.getData('text/html'), text: data.getData('text/plain') }, 'all')
    else hand(cueId === undefined ? take(on, kind) : takeCue(on, cueId, kind))
  })
  useEffect(() => {
    const listener = (event: ClipboardEvent) => hear(event)
    for (const name of ['copy', 'cut', 'paste'] as const) document.addEventListener(name, listener)
    return () => {
      for (const name of ['copy', 'cut', 'paste'] as const) document.removeEventListener(name, listener)
    }
  }, [])
}
