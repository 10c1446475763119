import { type ComponentType, type ReactNode, useCallback, useState } from 'react'
import { useAppStore } from '#store/useApp.ts'

type DialogOf = ComponentType<{ open: boolean; onClose: () => void }>

/**
 * A dialog that is fetched when it is first asked for.
 *
 * @param fetch the same function at every drawing
 * @param notFetched says that it could not be fetched
 * @returns what opens it, and the dialog to be drawn
 */
export function useFetchedDialog(fetch: () => Promise<DialogOf>, notFetched: () => string): [open: () => void, dialog: ReactNode] {
  const store = useAppStore()
  const [open, setOpen] = useState(false)
  const [Fetched, setFetched] = useState<DialogOf | null>(null)
  const ask = useCallback(() => {
    setOpen(true)
    fetch().then(
      (dialog) => setFetched(() => dialog),
      () => {
        setOpen(false)
        store.getState().notify({ kind: 'problem', sentence: notFetched() })
      },
    )
  }, [store, fetch, notFetched])
  return [ask, Fetched && <Fetched open={open} onClose={() => setOpen(false)} />]
}
