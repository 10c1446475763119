import { useEffect, useRef, useState, useSyncExternalStore } from 'react'
import { ActionButton } from '#actions/ActionButton.tsx'
import { BACK_A_BLOCK, NEXT_BLOCK } from '#features/drafting/actions/rehearsing/jump.ts'
import { FROM_SELECTION, FROM_START, PLAY } from '#features/drafting/actions/rehearsing/play.ts'
import type { RehearsalGround } from '#features/drafting/actions/rehearsing/rehearsalGround.ts'
import { CLOSE_REHEARSAL, isOpenerFocused } from '#features/drafting/actions/rehearsing/rehearse.ts'
import { REPEAT } from '#features/drafting/actions/rehearsing/repeat.ts'
import { MARK_SHAKY } from '#features/drafting/actions/rehearsing/shaky.ts'
import { itemName } from '#plan/names.ts'
import { findBlock } from '#plan/places.ts'
import { useApp, useAppStore } from '#store/useApp.ts'
import { Button } from '#ui/Button.tsx'
import { tell, words } from '#words/words.ts'
import { Face } from './Face.tsx'
import { Habits } from './Habits.tsx'
import type { RehearsalState } from './rehearsalState.ts'
import { ShakyList } from './ShakyList.tsx'
import './rehearsal.css'

/** Plays the ride and shows what is ridden, said and counted; stands at the foot of the place, and only while it is wanted. */
export function RehearsalBar({ on }: { on: RehearsalGround }) {
  const { rehearsal } = on.rehearsing
  const state = useSyncExternalStore(rehearsal.subscribe, rehearsal.snapshot)
  return state.open ? <OpenBar on={on} state={state} /> : null
}

function OpenBar({ on, state }: { on: RehearsalGround; state: RehearsalState }) {
  const { rehearsal } = on.rehearsing
  const store = useAppStore()
  const readOnly = useApp(({ received }) => received !== null)
  const cautioned = useApp(({ rehearsalHabits }) => rehearsalHabits.cautioned)
  // Drawn anew with every block: what can be done is about the one that is ridden.
  const [, setBlockId] = useState<string | null>(null)
  const { phase } = state
  const buttons = useFocusInBar()
  return (
    <section className="rehearsal" aria-label={words.rehearsing.bar} data-phase={phase}>
      {!cautioned && (
        <p className="rehearsal-caution">
          {words.rehearsing.caution}{' '}
          <Button tone="quiet" onClick={() => store.getState().setRehearsalHabits({ cautioned: true })}>
            {words.rehearsing.understood}
          </Button>
        </p>
      )}
      <div className="rehearsal-row">
        <div className="rehearsal-buttons" ref={buttons}>
          <ActionButton action={PLAY} on={on} tone="solid" />
          <ActionButton action={BACK_A_BLOCK} on={on} />
          <ActionButton action={NEXT_BLOCK} on={on} />
          <ActionButton action={REPEAT} on={on} />
          <ActionButton action={MARK_SHAKY} on={on} />
        </div>
        <Face rehearsal={rehearsal} onBlock={setBlockId} />
      </div>
      <div className="rehearsal-row rehearsal-below">
        <p className="rehearsal-state" role="status">
          {useStateWords(state)}
        </p>
        <ActionButton action={FROM_SELECTION} on={on} tone="quiet" />
        <ActionButton action={FROM_START} on={on} tone="quiet" />
        <Habits />
        <ActionButton action={CLOSE_REHEARSAL} on={on} tone="quiet" />
      </div>
      <ShakyList on={on} readOnly={readOnly} />
    </section>
  )
}

/** The focus goes from the button that opens the bar to what plays. */
function useFocusInBar() {
  const buttons = useRef<HTMLDivElement>(null)
  useEffect(() => {
    if (isOpenerFocused()) buttons.current?.querySelector('button')?.focus({ preventScroll: true })
  }, [])
  return buttons
}

/** What is going on, in words. */
function useStateWords({ phase, way }: RehearsalState): string {
  const name = useApp(({ shown }) => {
    const block = shown && way.kind === 'block' ? findBlock(shown, way.blockId)?.block : undefined
    return block ? tell(itemName(block)) : ''
  })
  const { rehearsing } = words
  const what = way.kind === 'block' ? rehearsing.looped({ name }) : way.kind === 'shaky' ? rehearsing.marked : rehearsing.ride
  switch (phase) {
    case 'opening':
      return rehearsing.opening
    case 'playing':
      return rehearsing.playing({ what })
    case 'waiting':
      return rehearsing.waiting
    case 'ended':
      return way.kind === 'shaky' ? rehearsing.endOfMarked : rehearsing.endOfRide
    case 'still':
      return rehearsing.ready({ what })
  }
}
