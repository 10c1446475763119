import type { ReactNode } from 'react'
import { useApp } from '#store/useApp.ts'
import { type DraftKeeper, DraftKeeping, DraftScope } from '#ui/draftKeeping.ts'

/** Tells every field what it is about, and who keeps what is typed in it. */
export function DraftScopes({ keeper, children }: { keeper: DraftKeeper; children: ReactNode }) {
  const scope = useApp(({ place, ride, selection }) => [place, ride?.id, selection.sectionId, ...selection.ids].join(' '))
  return (
    <DraftKeeping value={keeper}>
      <DraftScope value={scope}>{children}</DraftScope>
    </DraftKeeping>
  )
}
