import { usePlaceActions } from '#actions/ActionBoardProvider.tsx'
import { words } from '#words/words.ts'
import type { OtherGround } from './actions/leadGround.ts'
import { OTHER_BAR, OTHER_CLASS } from './actions/leadPlaces.ts'
import { LeadBar } from './LeadBar.tsx'
import { useScreenGround } from './useScreenGround.ts'

interface Props {
  /** Titles of the ride that is being led and of the one that was opened. */
  led: string
  opened: string
  onGoOn: () => void
  /** Ends the class under way, for the one that was opened. */
  onEnd: () => void
}

/** A class of another ride is under way: it is not lost by opening the wrong one. */
export function OtherClass({ led, opened, onGoOn, onEnd }: Props) {
  const on: OtherGround = { ...useScreenGround(), goOn: onGoOn, endOther: onEnd }
  usePlaceActions(OTHER_CLASS, () => on)
  return (
    <div className="lead-card">
      <header>
        <h1>{words.leading.otherClass({ led })}</h1>
        <p className="lead-quiet">{words.leading.oneAtATime({ opened })}</p>
      </header>
      <LeadBar actions={OTHER_BAR} on={on} />
    </div>
  )
}
