import { useEffect, useRef, useState } from 'react'
import { usePlaceActions } from '#actions/ActionBoardProvider.tsx'
import { classTime, type LeadLog } from '#engine/leading/leadLog.ts'
import type { LedClass } from '#engine/leading/ledClass.ts'
import { stateOf } from '#engine/leading/stateOf.ts'
import type { LeadClock } from '#store/leadClock.ts'
import { useAppStore } from '#store/useApp.ts'
import type { Awake } from '#ui/useWakeLock.ts'
import type { Seconds } from '#units/units.ts'
import { tell, words } from '#words/words.ts'
import type { LeadGround } from './actions/leadGround.ts'
import { LEAD_BAR, LEADING } from './actions/leadPlaces.ts'
import { LeadBar } from './LeadBar.tsx'
import { AwakeNote } from './LeadButton.tsx'
import { ProposalBar } from './ProposalBar.tsx'
import { useFrames } from './useFrames.ts'
import { useProposals } from './useProposals.ts'
import { useScreenGround } from './useScreenGround.ts'
import { LeadFace } from './view/LeadFace.tsx'
import { leadView } from './view/leadView.ts'
import { createPainter, type Painter } from './view/painter.ts'

interface Props {
  clock: LeadClock
  led: LedClass
  log: LeadLog
  awake: Awake
}

/**
 * The screen to teach from. Its words are painted frame by frame from the frame's own timestamp,
 * past React; React draws what changes with a press.
 */
export function LeadScreen({ clock, led, log, awake }: Props) {
  const store = useAppStore()
  const face = useRef<HTMLDivElement>(null)
  const painter = useRef<Painter | null>(null)
  useEffect(() => {
    painter.current = face.current && createPainter(face.current)
  }, [])

  /** Where the class is, for what React draws: changes with every block. */
  const [place, setPlace] = useState({ key: '', at: 0, finished: false })
  const timeAt = (timeStamp: number): Seconds => Math.max(log.events.at(-1)?.at ?? 0, classTime(log, clock.instantOf(timeStamp)))
  useFrames((timestamp) => {
    const state = stateOf(led, timeAt(timestamp))
    const view = leadView(led, state)
    painter.current?.(view)
    const key = `${state.phase} ${state.section} ${state.block}`
    if (key === place.key) return
    setPlace({ key, at: state.at, finished: state.phase === 'finished' })
    store.getState().announce(view.spoken)
  })

  const proposals = useProposals(led, place.at, () => timeAt(clock.now()))
  const said = useSaid(led)
  const on: LeadGround = {
    ...useScreenGround(),
    act: (what, timeStamp) => {
      on.confirm.disarm()
      store.getState().lead(what, clock.instantOf(timeStamp))
      store.getState().announce(tell(store.getState().leading?.led?.said ?? ''))
    },
    end: () => endClass(store),
    held: led.led.hold !== undefined,
    acts: log.events.length,
    finished: place.finished,
    proposal: proposals.shown,
    more: proposals.more,
    other: proposals.other,
  }
  usePlaceActions(LEADING, () => on)

  return (
    <>
      <LeadFace ref={face} />
      {proposals.shown && !on.follows ? (
        <ProposalBar text={tell(proposals.shown.text)} said={said} on={on} />
      ) : (
        <p className="lead-said">{said || (place.finished ? '' : proposals.none)}</p>
      )}
      {/* A class that is left alone needs none of them. */}
      <LeadBar actions={LEAD_BAR} on={on} />
      <AwakeNote awake={awake} />
    </>
  )
}

/** Ends the class and offers to log it, while it is remembered. */
function endClass(store: ReturnType<typeof useAppStore>): void {
  const { leading, endClass: end, setPlace, announce, keepsLog, notify } = store.getState()
  setPlace('draft')
  end()
  announce(words.leading.ended)
  if (!keepsLog || !leading?.log) return
  const sentence = words.leading.logIt({ title: leading.plan.ride.title || words.names.untitled })
  notify({ kind: 'info', sentence, offer: { label: words.leading.log, place: 'log', entry: true } })
}

/** Time a sentence stands. */
const STANDS_MS = 6000

/** What the last press did, for a while. */
function useSaid(led: LedClass): string {
  const [gone, setGone] = useState<LedClass | null>(led)
  useEffect(() => {
    const timer = setTimeout(() => setGone(led), STANDS_MS)
    return () => clearTimeout(timer)
  }, [led])
  return gone === led ? '' : tell(led.said)
}
