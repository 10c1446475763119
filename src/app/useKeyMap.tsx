import { type ComponentType, useCallback, useState } from 'react'
import { useAppStore } from '#store/useApp.ts'
import { words } from '#words/words.ts'

/** The key map, fetched when it is first asked for: it names the actions of every place. */
export function useKeyMap() {
  const store = useAppStore()
  const [open, setOpen] = useState(false)
  const [KeyMap, setKeyMap] = useState<ComponentType<{ open: boolean; onClose: () => void }> | null>(null)
  const openKeys = useCallback(() => {
    setOpen(true)
    import('./KeyMap.tsx').then(
      (module) => setKeyMap(() => module.KeyMap),
      () => store.getState().notify({ kind: 'problem', sentence: words.app.shortcutsNotFetched }),
    )
  }, [store])
  return { openKeys, keyMap: KeyMap && <KeyMap open={open} onClose={() => setOpen(false)} /> }
}
