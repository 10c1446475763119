import { useSyncExternalStore } from 'react'
import { ActionButton } from '#actions/ActionButton.tsx'
import type { RehearsalGround } from '#features/drafting/actions/rehearsing/rehearsalGround.ts'
import { REHEARSE } from '#features/drafting/actions/rehearsing/rehearse.ts'
import type { Rehearsal } from './rehearsal.ts'

/** Opens the bar to rehearse from the selection, or from the start; closes it again. */
export function RehearseButton({ on }: { on: RehearsalGround }) {
  useIsRehearsed(on.rehearsing.rehearsal)
  return <ActionButton action={REHEARSE} on={on} tone="quiet" />
}

/** Whether the ride is being rehearsed. */
export function useIsRehearsed(rehearsal: Rehearsal | undefined): boolean {
  return useSyncExternalStore(rehearsal?.subscribe ?? nothing, () => rehearsal?.snapshot().open ?? false)
}

const nothing = () => () => {}
