import { isTyping } from '#ui/isTyping.ts'

export interface HeldSpace {
  isHeld: () => boolean
  /** The stage has been moved with it: it means nothing else any more. */
  use: () => void
  stop: () => void
}

/**
 * Space held over the stage, by which it is moved. What the key means by itself where the focus is happens when it comes up
 * again, unless the stage was moved meanwhile. Away from the stage, in fields, and on buttons it is left alone.
 */
export function watchSpace(scroller: HTMLElement, content: HTMLElement): HeldSpace {
  let isOver = false
  let held: KeyboardEvent | null = null
  let isUsed = false
  let isReplayed = false
  const listeners = new AbortController()

  const letGo = () => {
    held = null
    delete content.dataset.hand
  }
  const down = (event: KeyboardEvent) => {
    if (event.key !== ' ' || isReplayed) return
    const target = event.target as Element
    if (held) return take(event)
    const isPlain = !event.ctrlKey && !event.metaKey && !event.altKey && !event.repeat && !event.defaultPrevented
    if (!isOver || !isPlain || isTyping(target) || target.closest('[role="menu"], dialog')) return
    held = event
    isUsed = false
    content.dataset.hand = 'ready'
    if (!target.closest('button, a, summary')) take(event)
  }
  const up = (event: KeyboardEvent) => {
    if (event.key !== ' ' || !held) return
    const pressed = held
    letGo()
    // On a button the browser makes the press itself, as the key comes up.
    if (isUsed) return take(event)
    if (!pressed.defaultPrevented) return
    isReplayed = true
    const { key, code, shiftKey } = pressed
    const again = new KeyboardEvent('keydown', { key, code, shiftKey, bubbles: true, cancelable: true })
    ;(document.activeElement ?? document.body).dispatchEvent(again)
    isReplayed = false
  }

  const { signal } = listeners
  const enter = ({ pointerType }: PointerEvent) => {
    isOver = pointerType === 'mouse'
  }
  scroller.addEventListener('pointerenter', enter, { signal })
  scroller.addEventListener('pointermove', enter, { signal })
  scroller.addEventListener('pointerleave', () => (isOver = false), { signal })
  window.addEventListener('keydown', down, { signal, capture: true })
  window.addEventListener('keyup', up, { signal, capture: true })
  window.addEventListener('blur', letGo, { signal })
  return {
    isHeld: () => held !== null,
    use: () => {
      isUsed = true
    },
    stop: () => listeners.abort(),
  }
}

function take(event: Event): void {
  event.preventDefault()
  event.stopImmediatePropagation()
}
