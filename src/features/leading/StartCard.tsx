import { useMemo, useState } from 'react'
import { usePlaceActions } from '#actions/ActionBoardProvider.tsx'
import type { PlayedBlock } from '#engine/played.ts'
import { openingCard } from '#engine/words/openingCard.ts'
import { isSingle } from '#plan/ledger/ledgerState.ts'
import type { Ride } from '#plan/model.ts'
import { itemName, sectionName } from '#plan/names.ts'
import type { LeadClock } from '#store/leadClock.ts'
import type { Leading } from '#store/leadSlice.ts'
import { useAppStore } from '#store/useApp.ts'
import type { Awake } from '#ui/useWakeLock.ts'
import type { Seconds } from '#units/units.ts'
import { tell, words } from '#words/words.ts'
import type { StartGround } from './actions/leadGround.ts'
import { BEFORE_CLASS, START_BAR } from './actions/leadPlaces.ts'
import { bookedSlot } from './bookedSlot.ts'
import { dueWords } from './dueWords.ts'
import { LeadBar } from './LeadBar.tsx'
import { AwakeNote } from './LeadButton.tsx'
import { useFrames } from './useFrames.ts'
import { useScreenGround } from './useScreenGround.ts'

interface Props {
  clock: LeadClock
  leading: Leading
  awake: Awake
}

/** What stands on the screen while the room fills: the words to open with, what comes first, and the one thing to press. */
export function StartCard({ clock, leading, awake }: Props) {
  const store = useAppStore()
  const { ride, report } = leading.plan
  const card = useMemo(() => openingCard(ride, report), [ride, report])
  const [instant, setInstant] = useState(() => clock.instantOf(clock.now()))
  useFrames((timestamp) => {
    const now = clock.instantOf(timestamp)
    if (Math.floor(now / 1000) !== Math.floor(instant / 1000)) setInstant(now)
  })
  const first = report.blocks[0]
  const on: StartGround = {
    ...useScreenGround(),
    start: (timeStamp) => {
      const pressed = clock.instantOf(timeStamp)
      store.getState().startClass(pressed, bookedSlot(ride.startsAt, ride.slotMinutes, pressed))
    },
    brief: (timeStamp) => store.getState().beginSlot(clock.instantOf(timeStamp)),
    hasBlocks: first !== undefined,
    hasBriefing: ride.briefingSeconds > 0,
    begun: leading.slotFrom !== null,
  }
  usePlaceActions(BEFORE_CLASS, () => on)
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
        <h1>{ride.title || words.names.untitled}</h1>
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
          {words.leading.first} <b>{tell(sectionName(ride, firstSection))}</b>
          {firstWords(ride, first).map((word) => `, ${word}`)}.
        </p>
      )}
      <LeadBar actions={START_BAR} on={on} />
      <AwakeNote awake={awake} />
    </div>
  )
}

/** What is ridden first: the block, its foot, and where the knob is. */
function firstWords({ datum }: Ride, { block, foot, ledger }: PlayedBlock): string[] {
  const isBase = datum === 'base' && isSingle(ledger.after) && ledger.after.nominal === 0 && !ledger.reading
  return [
    tell(itemName(block)),
    ...(foot ? [words.leading.footOnOne({ foot })] : []),
    isBase ? words.leading.atBase : words.leading.at({ total: tell(ledger.total) }),
  ]
}

/** How long the card takes to say, beside the welcome that is planned for it. */
function timeWords(seconds: Seconds, welcome: Seconds): string {
  if (welcome === 0) return words.leading.toSay({ seconds })
  return seconds <= welcome ? words.leading.toSayOf({ seconds, welcome }) : words.leading.toSayOver({ seconds, welcome })
}
