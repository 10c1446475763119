import { useMemo, useState } from 'react'
import { AIMS, type Aim, readAim } from '#engine/roughIn/aims.ts'
import { roughIn } from '#engine/roughIn/roughIn.ts'
import { Proposal } from '#features/drafting/proposals/Proposal.tsx'
import { useDrives } from '#features/drafting/proposals/useDrives.ts'
import { useHeldPreview } from '#features/drafting/useHeldPreview.ts'
import { useApp, useAppStore } from '#store/useApp.ts'
import { Button } from '#ui/Button.tsx'
import { NumberField } from '#ui/NumberField.tsx'
import { Select } from '#ui/Select.tsx'
import { parseNumber } from '#units/parseNumber.ts'
import { plural } from '#units/plural.ts'

const AIM_WORDS: Record<Aim, string> = {
  mixed: 'a bit of everything',
  climbs: 'climbs',
  intervals: 'intervals',
  endurance: 'endurance',
  rhythm: 'riding on the beat',
}
const AIM_CHOICES = AIMS.map((aim) => ({ value: aim, label: AIM_WORDS[aim] }))

/** Seeds people can read out to each other. */
const MOST_DRAFTS = 9999
const parseSeed = (text: string) => parseNumber(text, { of: 'draft', min: 1, max: MOST_DRAFTS })

/**
 * Proposes blocks for every song nothing is planned for, seen on the stage before they are taken:
 * the arc, what each song is ridden as and why, and another draft for the asking.
 */
export function RoughIn({ onShow, onClose }: { onShow: (sectionId: string) => void; onClose: () => void }) {
  const store = useAppStore()
  // The committed ride: what is shown is already the proposal.
  const ride = useApp((state) => state.ride)
  const findings = useApp((state) => (state.previewing === null ? null : state.shownReport?.findings))
  const [seed, setSeed] = useState(1)
  const [chosenAim, setAim] = useState<Aim>()
  const aim = chosenAim ?? readAim(ride?.aim)
  const drives = useDrives(ride)
  const draft = useMemo(() => ride && roughIn(ride, { seed, aim, drives }), [ride, seed, aim, drives])
  useHeldPreview(draft?.command ?? null)
  if (!ride) return null

  const take = () => {
    if (draft && store.getState().run(draft.command)) onClose()
  }
  return (
    <Proposal
      title="rough in"
      where={draft ? `a first draft of ${plural(draft.songs.length, 'song')}, ${ride.level}, ${ride.slotMinutes} minutes` : 'no open song'}
      onClose={onClose}
      actions={
        draft && (
          <>
            <Button tone="solid" onClick={take}>
              take this draft
            </Button>
            <Button onClick={() => setSeed(seed >= MOST_DRAFTS ? 1 : seed + 1)}>another draft</Button>
          </>
        )
      }
    >
      {draft ? (
        <>
          <div className="proposal-row">
            <Select label="aim" value={aim} choices={AIM_CHOICES} onChange={setAim} />
            <NumberField
              label="draft"
              value={seed}
              format={String}
              parse={parseSeed}
              onCommit={(value) => {
                setSeed(value)
                return null
              }}
              step={(value, direction) => Math.min(MOST_DRAFTS, Math.max(1, value + direction))}
            />
          </div>
          <p className="panel-note">
            The same number gives the same draft. Songs that have blocks stay as they are.
            {drives.size > 0 && ' Where a song’s sound or energy is known, it decides what is a peak and what is work.'}
          </p>
          <ul className="proposal-list">
            {draft.arc.map((text) => (
              <li key={text}>{text}</li>
            ))}
            <li>{sayFindings(findings)}</li>
          </ul>
          <h3>song by song</h3>
          <ul className="proposal-list">
            {draft.songs.map(({ sectionId, text }) => (
              <li key={sectionId}>
                <button type="button" className="panel-link" onClick={() => onShow(sectionId)}>
                  {text}
                </button>
              </li>
            ))}
          </ul>
        </>
      ) : (
        <p>Every song has blocks. Add a song, or take the blocks of one away, to have it roughed in.</p>
      )}
    </Proposal>
  )
}

function sayFindings(findings: readonly { severity: string }[] | null | undefined): string {
  if (!findings) return 'Working it out …'
  const count = (severity: string) => findings.filter((finding) => finding.severity === severity).length
  const [problems, warnings, hints] = [count('problem'), count('warning'), count('hint')]
  if (problems + warnings + hints === 0) return 'With it, nothing in the ride is noticed.'
  const words = [problems && plural(problems, 'problem'), warnings && plural(warnings, 'warning'), hints && plural(hints, 'hint')]
  return `With it, the ride has ${words.filter((word) => typeof word === 'string').join(', ')}.`
}
