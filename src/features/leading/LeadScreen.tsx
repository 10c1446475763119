import { useEffect, useMemo, useRef, useState } from 'react'
import { classTime, type LeadAct, type LeadLog } from '#engine/leading/leadLog.ts'
import type { LedClass } from '#engine/leading/ledClass.ts'
import { stateOf } from '#engine/leading/stateOf.ts'
import type { LeadClock } from '#store/leadClock.ts'
import { useApp, useAppStore } from '#store/useApp.ts'
import type { Awake } from '#ui/useWakeLock.ts'
import type { Seconds } from '#units/units.ts'
import { AwakeNote } from './LeadButton.tsx'
import { LeadControls } from './LeadControls.tsx'
import { ProposalBar } from './ProposalBar.tsx'
import { useConfirm } from './useConfirm.ts'
import { useFrames } from './useFrames.ts'
import { useFullScreen } from './useFullScreen.ts'
import { useLeadKeys } from './useLeadKeys.ts'
import { useProposals } from './useProposals.ts'
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
  const follows = useApp((state) => state.ledElsewhere)
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
  const confirm = useConfirm()
  const { toggle } = useFullScreen()
  const said = useSaid(led)
  const act = (what: LeadAct, timeStamp: number) => {
    confirm.disarm()
    store.getState().lead(what, clock.instantOf(timeStamp))
    store.getState().announce(store.getState().leading?.led?.said ?? '')
  }
  const actions = useMemo(() => ({ leave: () => store.getState().setPlace('draft'), end: () => endClass(store) }), [store])
  const press = {
    act,
    skipSong: (timeStamp: number) => confirm.press('skipSong', () => act({ kind: 'skipSong' }, timeStamp)),
    breakOff: (timeStamp: number) => act({ kind: 'breakOff' }, timeStamp),
    leave: () => confirm.press('leave', actions.leave),
    end: () => confirm.press('end', actions.end),
    undo: () => {
      if (store.getState().takeBack()) store.getState().announce('Undone.')
      else confirm.press('restart', () => store.getState().restartClass())
    },
    cut: (timeStamp: number) => {
      const proposal = proposals.shown
      if (proposal) act({ kind: 'cut', cuts: proposal.cuts }, timeStamp)
    },
  }
  useLeadKeys((key, timeStamp) => {
    if (key === 'one' || key === 'next' || key === 'back' || key === 'again' || key === 'hold') act({ kind: key }, timeStamp)
    else if (key === 'skipSong') press.skipSong(timeStamp)
    else if (key === 'breakOff') {
      if (confirm.armed === 'leave') press.breakOff(timeStamp)
      else confirm.press('breakOff', () => press.breakOff(timeStamp))
    } else if (key === 'cut') press.cut(timeStamp)
    else if (key === 'other') proposals.other()
    else if (key === 'undo') press.undo()
    else if (key === 'screen') toggle?.()
    else if (key === 'leave') press.leave()
  })

  return (
    <>
      <LeadFace ref={face} />
      {proposals.shown && !follows ? (
        <ProposalBar proposal={proposals.shown} said={said} more={proposals.more} onTake={press.cut} onOther={proposals.other} />
      ) : (
        <p className="lead-said">{said || (place.finished ? '' : proposals.none)}</p>
      )}
      <LeadControls
        held={led.led.hold !== undefined}
        acts={log.events.length}
        finished={place.finished}
        follows={follows}
        armed={confirm.armed}
        press={press}
      />
      <AwakeNote awake={awake} />
    </>
  )
}

/** Ends the class and offers to log it, while it is remembered. */
function endClass(store: ReturnType<typeof useAppStore>): void {
  const { leading, endClass: end, setPlace, announce, keepsLog, notify } = store.getState()
  setPlace('draft')
  end()
  announce('Class ended.')
  if (!keepsLog || !leading?.log) return
  const sentence = `“${leading.plan.ride.title || 'untitled ride'}” is taught. Log it now, as it really was, or later in the log.`
  notify({ kind: 'info', sentence, offer: { label: 'log this class', place: 'log', entry: true } })
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
  return gone === led ? '' : led.said
}
