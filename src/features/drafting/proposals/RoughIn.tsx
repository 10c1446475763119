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
import { tell, words } from '#words/words.ts'

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
      title={words.drafts.title}
      where={
        draft
          ? words.drafts.where({
              songs: draft.songs.length,
              level: words.names.level({ level: ride.level }),
              minutes: ride.slotMinutes,
            })
          : words.drafts.noOpenSong
      }
      onClose={onClose}
      actions={
        draft && (
          <>
            <Button tone="solid" onClick={take}>
              {words.drafts.use}
            </Button>
            <Button onClick={() => setSeed(seed >= MOST_DRAFTS ? 1 : seed + 1)}>{words.drafts.another}</Button>
          </>
        )
      }
    >
      {draft ? (
        <>
          <div className="proposal-row">
            <Select label={words.drafts.aim} value={aim} choices={aimChoices()} onChange={setAim} />
            <NumberField
              label={words.drafts.draft}
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
            {words.drafts.hint}
            {drives.size > 0 && ` ${words.drafts.driveHint}`}
          </p>
          <ul className="proposal-list">
            {draft.arc.map(tell).map((text) => (
              <li key={text}>{text}</li>
            ))}
            <li>{sayFindings(findings)}</li>
          </ul>
          <h3>{words.drafts.songBySong}</h3>
          <ul className="proposal-list">
            {draft.songs.map(({ sectionId, text }) => (
              <li key={sectionId}>
                <button type="button" className="panel-link" onClick={() => onShow(sectionId)}>
                  {tell(text)}
                </button>
              </li>
            ))}
          </ul>
        </>
      ) : (
        <p>{words.drafts.everySongFilled}</p>
      )}
    </Proposal>
  )
}

const aimChoices = () => AIMS.map((aim) => ({ value: aim, label: words.drafts.aimName({ aim }) }))

function sayFindings(findings: readonly { severity: string }[] | null | undefined): string {
  if (!findings) return words.drafts.working
  const count = (severity: string) => findings.filter((finding) => finding.severity === severity).length
  const [fix, consider, know] = [count('problem'), count('warning'), count('hint')]
  return fix + consider + know === 0 ? words.drafts.clean : words.drafts.checks({ fix, consider, know })
}
