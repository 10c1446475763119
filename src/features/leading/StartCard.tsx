import { useMemo, useState } from 'react'
import { openingCard } from '#engine/words/openingCard.ts'
import { nameOfItem, nameOfSection } from '#plan/names.ts'
import type { LeadClock } from '#store/leadClock.ts'
import type { Leading } from '#store/leadSlice.ts'
import { useApp, useAppStore } from '#store/useApp.ts'
import type { Awake } from '#ui/useWakeLock.ts'
import { formatDuration } from '#units/formatDuration.ts'
import { bookedSlot } from './bookedSlot.ts'
import { dueWords } from './dueWords.ts'
import { AwakeNote, FullScreenButton, LeadButton, LeaveButton } from './LeadButton.tsx'
import { useConfirm } from './useConfirm.ts'
import { useFrames } from './useFrames.ts'
import { useFullScreen } from './useFullScreen.ts'
import { useLeadKeys } from './useLeadKeys.ts'

interface Props {
  clock: LeadClock
  leading: Leading
  awake: Awake
}

/** What stands on the screen while the room fills: the words to open with, what comes first, and the one thing to press. */
export function StartCard({ clock, leading, awake }: Props) {
  const store = useAppStore()
  const follows = useApp((state) => state.ledElsewhere)
  const { ride, report } = leading.plan
  const card = useMemo(() => openingCard(ride, report), [ride, report])
  const [instant, setInstant] = useState(() => clock.instantOf(clock.now()))
  useFrames((timestamp) => {
    const now = clock.instantOf(timestamp)
    if (Math.floor(now / 1000) !== Math.floor(instant / 1000)) setInstant(now)
  })
  const { toggle } = useFullScreen()
  const confirm = useConfirm()
  const leave = () => confirm.press('leave', () => store.getState().setPlace('draft'))
  const start = (timeStamp: number) => {
    const pressed = clock.instantOf(timeStamp)
    store.getState().startClass(pressed, bookedSlot(ride.startsAt, ride.slotMinutes, pressed))
  }
  const brief = (timeStamp: number) => store.getState().beginSlot(clock.instantOf(timeStamp))
  const begun = leading.slotFrom !== null
  useLeadKeys((key, timeStamp) => {
    if (key === 'one' || key === 'next') start(timeStamp)
    else if (key === 'brief' && ride.briefingSeconds > 0) brief(timeStamp)
    else if (key === 'screen') toggle?.()
    else if (key === 'leave') leave()
  })
  const first = report.blocks[0]
  const firstSection = ride.sections[0]
  const due = dueWords(
    ride,
    leading.slotFrom ?? bookedSlot(ride.startsAt, ride.slotMinutes, instant),
    report.sections[0]?.one ?? 0,
    instant,
  )
  return (
    <div className="lead-card">
      <header>
        <h1>{ride.title || 'untitled ride'}</h1>
        <p className="lead-quiet">{due}</p>
      </header>
      <div className="lead-opening">
        {card.sentences.map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
        <p className="lead-quiet">{timeWords(card.seconds, ride.briefingSeconds)}</p>
      </div>
      {first && firstSection && (
        <p className="lead-first">
          First: <b>{nameOfSection(ride, firstSection)}</b>, {nameOfItem(first.block)}
          {first.foot && `, ${first.foot} foot on the one`},{' '}
          {first.ledger.total === '0' && ride.datum === 'base' ? 'at base' : `to ${first.ledger.total}`}.
        </p>
      )}
      <div className="lead-bar">
        {!follows && (
          <LeadButton tone="main" keys="space" onPress={start}>
            {first ? 'the first one is now' : 'begin'}
          </LeadButton>
        )}
        {!follows && ride.briefingSeconds > 0 && (
          <LeadButton keys="B" onPress={brief}>
            {begun ? 'briefing from now again' : 'begin the briefing'}
          </LeadButton>
        )}
        <FullScreenButton />
        <LeaveButton armed={confirm.armed === 'leave'} onPress={leave} />
      </div>
      <AwakeNote awake={awake} />
    </div>
  )
}

/** "12 s to say, of a briefing of 1:00." */
function timeWords(seconds: number, briefing: number): string {
  const said = `About ${formatDuration(seconds)} to say`
  if (briefing === 0) return `${said}.`
  const fits =
    seconds <= briefing ? `of a briefing of ${formatDuration(briefing)}` : `longer than the briefing of ${formatDuration(briefing)}`
  return `${said}, ${fits}.`
}
