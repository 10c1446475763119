import { useState, useSyncExternalStore } from 'react'
import { type MarkStep, PARTS } from '#features/drafting/rehearsal/marking.ts'
import type { Rehearsing } from '#features/drafting/rehearsal/RehearsalContext.ts'
import { Button } from '#ui/Button.tsx'
import { Segmented } from '#ui/Segmented.tsx'
import { words } from '#words/words.ts'

const stepChoices = () => [
  { value: 'eight' as const, label: words.panelsSong.theEight },
  { value: 'count' as const, label: words.panelsSong.theCount },
]

/** Marks tapped while the song plays: one press names the part that begins here, two the stretch to be kept free of speech. */
export function MarkButtons({ rehearsing }: { rehearsing: Rehearsing }) {
  const { hearing, lastMark } = rehearsing
  const { quietFrom } = useSyncExternalStore(hearing.subscribe, hearing.snapshot)
  const [step, setStep] = useState<MarkStep>('eight')
  const mark = (label: string, timeStamp: number) => {
    lastMark.label = label
    hearing.mark(label, step, timeStamp)
  }
  return (
    <>
      <p className="panel-label">{words.panelsSong.markHere}</p>
      <p className="hear-beat-row">
        {PARTS.map((part) => words.panelsSong.part({ part })).map((label) => (
          <Button key={label} onClick={(event) => mark(label, event.timeStamp)}>
            {label}
          </Button>
        ))}
      </p>
      <Segmented label={words.panelsSong.markersSnap} value={step} choices={stepChoices()} onChange={setStep} />
      <p className="hear-beat-row">
        <Button pressed={quietFrom !== null} onClick={(event) => hearing.quiet(step, event.timeStamp)}>
          {quietFrom === null ? words.panelsSong.noTalkFrom : words.panelsSong.noTalkTo}
        </Button>
      </p>
      <p className="panel-note">{words.panelsSong.otherNames}</p>
    </>
  )
}
