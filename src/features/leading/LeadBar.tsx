import { usePlaceActions } from '#actions/ActionBoardProvider.tsx'
import type { LeadAction, ScreenGround } from './actions/leadGround.ts'
import { SCREEN, SCREEN_BAR } from './actions/leadPlaces.ts'
import { LeadButton } from './LeadButton.tsx'

/** Large targets for what keys do too; a screen’s own, then what every screen has. */
export function LeadBar<On extends ScreenGround>({ actions, on }: { actions: readonly LeadAction<On>[]; on: On }) {
  usePlaceActions(SCREEN, () => on)
  return (
    <div className="lead-bar">
      {[...actions, ...SCREEN_BAR].map((action) => (
        <LeadButton key={action.id} action={action} on={on} />
      ))}
    </div>
  )
}
