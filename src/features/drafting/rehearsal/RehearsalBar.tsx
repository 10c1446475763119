import { useEffect, useRef, useState, useSyncExternalStore } from 'react'
import { nameOfItem } from '#plan/names.ts'
import { findBlock } from '#plan/places.ts'
import { useApp, useAppStore } from '#store/useApp.ts'
import { Button } from '#ui/Button.tsx'
import { Face } from './Face.tsx'
import { Habits } from './Habits.tsx'
import type { Rehearsal, RehearsalState } from './rehearsal.ts'
import { ShakyList } from './ShakyList.tsx'
import { startOfSelection } from './startOf.ts'
import './rehearsal.css'

/** Plays the ride and shows what is ridden, said and counted; stands at the foot of the place, and only while it is wanted. */
export function RehearsalBar({ rehearsal }: { rehearsal: Rehearsal }) {
  const state = useSyncExternalStore(rehearsal.subscribe, rehearsal.snapshot)
  return state.open ? <OpenBar rehearsal={rehearsal} state={state} /> : null
}

function OpenBar({ rehearsal, state }: { rehearsal: Rehearsal; state: RehearsalState }) {
  const store = useAppStore()
  const readOnly = useApp(({ received }) => received !== null)
  const cautioned = useApp(({ rehearsalHabits }) => rehearsalHabits.cautioned)
  const selected = useApp((app) => startOfSelection(app))
  const [blockId, setBlockId] = useState<string | null>(null)
  const isShaky = useApp(({ shown }) => blockId !== null && (shown?.shaky?.includes(blockId) ?? false))
  const { phase, way } = state
  const runs = phase === 'playing' || phase === 'opening'
  const { buttons, close } = useFocusInBar(rehearsal)
  return (
    <section className="rehearsal" aria-label="rehearse" data-phase={phase}>
      {!cautioned && (
        <p className="rehearsal-caution">
          Learn the ride off the bike, then ride it. Keep the music low enough to talk over: loud sound harms hearing, in headphones too.{' '}
          <Button tone="quiet" onClick={() => store.getState().setRehearsalHabits({ cautioned: true })}>
            understood
          </Button>
        </p>
      )}
      <div className="rehearsal-row">
        <div className="rehearsal-buttons" ref={buttons}>
          <Button tone="solid" onClick={rehearsal.toggle}>
            {runs ? 'pause' : phase === 'waiting' ? 'go on' : phase === 'ended' ? 'play again' : 'play'}
          </Button>
          <Button onClick={rehearsal.back}>back</Button>
          <Button onClick={rehearsal.next}>next</Button>
          <Button pressed={way.kind === 'block'} disabled={way.kind !== 'block' && blockId === null} onClick={rehearsal.toggleRepeat}>
            repeat
          </Button>
          {!readOnly && (
            <Button pressed={isShaky} disabled={blockId === null} onClick={(event) => rehearsal.toggleShaky(event.timeStamp)}>
              shaky
            </Button>
          )}
        </div>
        <Face rehearsal={rehearsal} onBlock={setBlockId} />
      </div>
      <div className="rehearsal-row rehearsal-below">
        <p className="rehearsal-state" role="status">
          {useStateWords(state)}
        </p>
        <Button tone="quiet" disabled={selected === null} onClick={() => selected !== null && rehearsal.seek(selected)}>
          from the selection
        </Button>
        <Button tone="quiet" onClick={() => rehearsal.seek(0)}>
          from the start
        </Button>
        <Habits />
        <Button tone="quiet" onClick={close}>
          close
        </Button>
      </div>
      <ShakyList rehearsal={rehearsal} isOn={way.kind === 'shaky'} readOnly={readOnly} />
    </section>
  )
}

/** The focus goes from the button that opens the bar to what plays, and back again when the bar is closed. */
function useFocusInBar(rehearsal: Rehearsal) {
  const buttons = useRef<HTMLDivElement>(null)
  useEffect(() => {
    if (document.activeElement?.matches(OPENER)) buttons.current?.querySelector('button')?.focus({ preventScroll: true })
  }, [])
  const close = () => {
    rehearsal.close()
    document.querySelector<HTMLElement>(OPENER)?.focus({ preventScroll: true })
  }
  return { buttons, close }
}

const OPENER = '[data-rehearse]'

/** What is going on, in words. */
function useStateWords({ phase, way }: RehearsalState): string {
  const name = useApp(({ shown }) => {
    const block = shown && way.kind === 'block' ? findBlock(shown, way.blockId)?.block : undefined
    return block ? nameOfItem(block) : ''
  })
  const what = way.kind === 'block' ? `${name} again and again` : way.kind === 'shaky' ? 'the shaky blocks' : 'the ride'
  switch (phase) {
    case 'opening':
      return 'Opening the music.'
    case 'playing':
      return `Playing ${what}.`
    case 'waiting':
      return 'The next section waits for you.'
    case 'ended':
      return way.kind === 'shaky' ? 'Those were the shaky blocks.' : 'That was the ride.'
    case 'still':
      return `Ready to play ${what}.`
  }
}
