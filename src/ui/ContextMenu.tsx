import { type KeyboardEvent, useEffect, useEffectEvent, useId, useLayoutEffect, useRef } from 'react'
import './ContextMenu.css'

/** Something in a menu. */
interface MenuEntry {
  id: string
  words: string
  /** Its keys as they stand on the screen; empty where it has none. */
  keys: string
  /** Why it cannot be done now; null where it can. */
  why: string | null
  do: () => void
}

/** Entries that hold together, under a name that is only heard. */
export interface MenuGroup {
  title: string
  entries: readonly MenuEntry[]
}

interface ContextMenuProps {
  label: string
  groups: readonly MenuGroup[]
  /** Where its corner goes, in the window's pixels, as far as there is room. */
  at: { x: number; y: number }
  /** Id of the entry it begins at; the first unless given. */
  beginsAt?: string
  /** Asked to close: Escape, Tab, a press outside, or an entry that was done. The focus goes back by itself. */
  onClose: () => void
}

/** Pixels between the menu and the window's edge. */
const MARGIN = 8

/** Milliseconds after which letters typed begin another word. */
const WORD = 700

/**
 * A menu over everything, with the focus in it until it closes: arrows, Home, End, first letters, Enter, and Space. What
 * cannot be done stays in it and says why. The browser's own light dismissal is not used: it would close the menu at the
 * end of the very press that opened it.
 */
export function ContextMenu({ label, groups, at, beginsAt, onClose }: ContextMenuProps) {
  const menu = useRef<HTMLDivElement>(null)
  const typed = useRef({ text: '', at: 0 })
  const id = useId()
  const close = useEffectEvent(onClose)

  useLayoutEffect(() => {
    const element = menu.current!
    const before = document.activeElement
    element.showPopover()
    const { width, height } = element.getBoundingClientRect()
    element.style.left = `${Math.max(MARGIN, Math.min(at.x, innerWidth - width - MARGIN))}px`
    element.style.top = `${Math.max(MARGIN, Math.min(at.y, innerHeight - height - MARGIN))}px`
    const items = itemsOf(element)
    const first = items.find(({ dataset }) => dataset.entry === beginsAt) ?? items[0]
    first?.focus({ preventScroll: true })
    first?.scrollIntoView({ block: 'nearest' })
    return () => {
      // What was done may have moved it on already.
      const hasIt = element.contains(document.activeElement) || document.activeElement === document.body
      if (hasIt && before instanceof HTMLElement && before.isConnected) before.focus({ preventScroll: true })
    }
  }, [at, beginsAt])

  useEffect(() => {
    const outside = (event: Event) => {
      if (!(event.target instanceof Node && menu.current?.contains(event.target))) close()
    }
    const gone = () => close()
    document.addEventListener('pointerdown', outside, true)
    document.addEventListener('wheel', outside, { capture: true, passive: true })
    window.addEventListener('resize', gone)
    window.addEventListener('blur', gone)
    return () => {
      document.removeEventListener('pointerdown', outside, true)
      document.removeEventListener('wheel', outside, { capture: true })
      window.removeEventListener('resize', gone)
      window.removeEventListener('blur', gone)
    }
  }, [])

  const press = (event: KeyboardEvent) => {
    const { key } = event
    const items = itemsOf(menu.current!)
    const now = items.indexOf(document.activeElement as HTMLElement)
    const go = (index: number) => items[(index + items.length) % items.length]?.focus()
    // Nothing behind the menu hears keys while it is open; the browser's own commands stay.
    event.stopPropagation()
    if (event.ctrlKey || event.metaKey || event.altKey) return
    if (key === 'Enter' || key === ' ') return
    if (key === 'ArrowDown') go(now + 1)
    else if (key === 'ArrowUp') go(now - 1)
    else if (key === 'Home' || key === 'PageUp') go(0)
    else if (key === 'End' || key === 'PageDown') go(-1)
    else if (key === 'Escape' || key === 'Tab') onClose()
    else if (key.length === 1) seek(items, now, key, event.timeStamp)
    event.preventDefault()
  }

  /** Goes to what begins with the letters typed; the same letter again goes to the next that begins with it. */
  const seek = (items: readonly HTMLElement[], now: number, key: string, time: number) => {
    const goesOn = time - typed.current.at < WORD
    const text = (goesOn ? typed.current.text : '') + key.toLocaleLowerCase()
    typed.current = { text, at: time }
    const sought = [...text].every((letter) => letter === text[0]) ? text[0]! : text
    const from = sought.length === 1 ? now + 1 : now
    const order = [...items.slice(from), ...items.slice(0, from)]
    order.find(({ textContent }) => textContent.toLocaleLowerCase().startsWith(sought))?.focus()
  }

  return (
    <div
      ref={menu}
      className="ui-menu"
      role="menu"
      aria-label={label}
      popover="manual"
      tabIndex={-1}
      onKeyDown={press}
      onContextMenu={(event) => event.preventDefault()}
    >
      {groups.map(({ title, entries }, g) => (
        // biome-ignore lint/a11y/useSemanticElements: a fieldset is not allowed in a menu
        <div key={title} className="ui-menu-group" role="group" aria-label={title}>
          {entries.map((entry, e) => (
            <button
              key={entry.id}
              type="button"
              className="ui-menu-item"
              role="menuitem"
              tabIndex={-1}
              data-entry={entry.id}
              aria-disabled={entry.why !== null || undefined}
              aria-describedby={entry.why === null ? undefined : `${id}${g}.${e}`}
              onPointerMove={(event) => event.currentTarget.focus({ preventScroll: true })}
              onClick={() => {
                if (entry.why !== null) return
                onClose()
                entry.do()
              }}
            >
              <span>{entry.words}</span>
              {entry.keys && (
                <span className="ui-menu-keys" aria-hidden="true">
                  {entry.keys}
                </span>
              )}
              {entry.why !== null && (
                <span className="ui-menu-why" id={`${id}${g}.${e}`}>
                  {entry.why}
                </span>
              )}
            </button>
          ))}
        </div>
      ))}
    </div>
  )
}

const itemsOf = (menu: HTMLElement): HTMLElement[] => [...menu.querySelectorAll<HTMLElement>('[role="menuitem"]')]
