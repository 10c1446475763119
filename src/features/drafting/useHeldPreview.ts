import { useEffect } from 'react'
import type { Command } from '#plan/commands/command.ts'
import { useApp, useAppStore } from '#store/useApp.ts'

/**
 * Shows on the stage what a command would do for as long as the component is there; what else is
 * previewed in between (a drag, a repair pointed at) comes first and then gives way again.
 */
export function useHeldPreview(command: Command | null): void {
  const store = useAppStore()
  const idle = useApp((state) => state.previewing === null)
  useEffect(() => {
    if (command && idle) store.getState().preview(command, 'offer')
  }, [store, command, idle])
  // Another command, or none, takes this one's place.
  useEffect(() => {
    if (!command) return
    return () => store.getState().dropPreview()
  }, [store, command])
}
