import { useEffect, useRef, useState } from 'react'
import type { LeadClock } from '#store/leadClock.ts'
import { useApp, useAppStore } from '#store/useApp.ts'
import { useWakeLock } from '#ui/useWakeLock.ts'
import { words } from '#words/words.ts'
import { FollowBar } from './FollowBar.tsx'
import { LeadScreen } from './LeadScreen.tsx'
import { OtherClass } from './OtherClass.tsx'
import { StartCard } from './StartCard.tsx'
import './lead.css'
import './leadWords.css'
import './leadControls.css'
import './leadUpright.css'

/** Leading a class: the card before the first one, then the screen. Always dark, over everything else. */
export function LeadPlace({
  clock,
  onTakeOver,
}: {
  clock: LeadClock /** Leads in this window what another one leads. */
  onTakeOver: () => void
}) {
  const store = useAppStore()
  const leading = useApp((state) => state.leading)
  const shown = useApp((state) => state.shown)
  const begun = leading?.log != null
  /** The ride that was opened while another is being led, and was put aside for it. */
  const [aside, setAside] = useState<string | null>(null)
  const awake = useWakeLock()
  const place = useRef<HTMLElement>(null)
  // biome-ignore lint/correctness/useExhaustiveDependencies: a ride that is opened anew is made ready anew
  useEffect(() => store.getState().readyClass(clock.instantOf(clock.now())), [store, clock, shown, leading === null])
  // Keys are for the class: the focus leaves the link or button that led here.
  // biome-ignore lint/correctness/useExhaustiveDependencies: anew on the screen that takes the card's place
  useEffect(() => place.current?.focus(), [begun])
  if (!leading || !shown) return null
  const other = leading.log !== null && leading.plan.ride.id !== shown.id && aside !== shown.id
  return (
    <section ref={place} className="lead" data-theme="dark" aria-label={words.leading.place} tabIndex={-1}>
      <FollowBar onTakeOver={onTakeOver} />
      {other ? (
        <OtherClass
          led={leading.plan.ride.title || words.names.untitled}
          opened={shown.title || words.names.untitled}
          onGoOn={() => setAside(shown.id)}
          onEnd={() => store.getState().endClass()}
        />
      ) : leading.led && leading.log ? (
        <LeadScreen clock={clock} led={leading.led} log={leading.log} awake={awake} />
      ) : (
        <StartCard clock={clock} leading={leading} awake={awake} />
      )}
    </section>
  )
}
