import { useEffect, useEffectEvent } from 'react'
import { useAppStore } from '#store/useApp.ts'
import { isTyping } from '#ui/isTyping.ts'
import type { KeyGroup } from './KeyMap.tsx'
import { meaningOf } from './meaningOf.ts'

/** The keys that work in every place, for the key map. */
export const SHELL_KEYS: readonly KeyGroup[] = [
  {
    title: 'everywhere',
    rows: [
      { keys: ['Ctrl+Z', '⌘+Z'], does: 'undo' },
      { keys: ['Ctrl+Shift+Z', 'Ctrl+Y', '⌘+Shift+Z'], does: 'do again' },
      { keys: ['?'], does: 'this map' },
    ],
  },
]

/** Undo, redo and the key map, from the keyboard. In a text field undo belongs to the text, and "?" is a letter. */
export function useShellKeys(openKeys: () => void): void {
  const store = useAppStore()
  const press = useEffectEvent((event: KeyboardEvent) => {
    if (event.defaultPrevented || event.isComposing || isTyping(event.target) || document.querySelector('dialog[open]')) return
    const meaning = meaningOf(event)
    if (!meaning) return
    event.preventDefault()
    if (meaning === 'keys') openKeys()
    else store.getState()[meaning]()
  })
  useEffect(() => {
    window.addEventListener('keydown', press)
    return () => window.removeEventListener('keydown', press)
  }, [])
}
