import { useSyncExternalStore } from 'react'
import { useApp, useAppStore } from '#store/useApp.ts'
import { Button } from '#ui/Button.tsx'
import type { Rehearsal } from './rehearsal.ts'
import { startOfSelection } from './startOf.ts'

/** Opens the bar to rehearse from the selection, or from the start; closes it again. */
export function RehearseButton({ rehearsal }: { rehearsal: Rehearsal }) {
  const store = useAppStore()
  const isEmpty = useApp(({ shownReport }) => (shownReport?.overall.total ?? 0) === 0)
  const isOpen = useIsRehearsed(rehearsal)
  const press = () => (isOpen ? rehearsal.close() : rehearsal.open(startOfSelection(store.getState()) ?? 0))
  return (
    <Button tone="quiet" data-rehearse="" pressed={isOpen} disabled={isEmpty && !isOpen} onClick={press}>
      rehearse
    </Button>
  )
}

/** Whether the ride is being rehearsed. */
export function useIsRehearsed(rehearsal: Rehearsal | undefined): boolean {
  return useSyncExternalStore(rehearsal?.subscribe ?? nothing, () => rehearsal?.snapshot().open ?? false)
}

const nothing = () => () => {}
