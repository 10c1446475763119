import { useMemo, useState } from 'react'
import { fitRide, type RideTrim } from '#engine/fit/rideFit.ts'
import { Proposal } from '#features/drafting/proposals/Proposal.tsx'
import { TrimList } from '#features/drafting/proposals/TrimList.tsx'
import { useHeldPreview } from '#features/drafting/useHeldPreview.ts'
import { useApp, useAppStore } from '#store/useApp.ts'
import { Button } from '#ui/Button.tsx'
import { Segmented } from '#ui/Segmented.tsx'
import { clock } from '#words/forms.ts'
import { tell, words } from '#words/words.ts'

interface SlotFitProps {
  onShow: (sectionId: string) => void
  onClose: () => void
}

/**
 * Ends the ride inside its slot by letting songs end at other phrases: what would change, seen on the
 * stage before it is taken, or why it cannot be and what comes nearest.
 */
export function SlotFit({ onShow, onClose }: SlotFitProps) {
  const store = useAppStore()
  // The committed ride: what is shown is already the proposal.
  const ride = useApp((state) => state.ride)
  const overall = useApp((state) => state.report?.overall)
  const sections = useApp((state) => state.report?.sections)
  const fit = useMemo(() => ride && fitRide(ride), [ride])
  const [choice, setChoice] = useState(0)
  const nearest = fit && !fit.ok ? fit.nearest : []
  const picked: RideTrim | undefined = fit?.ok ? fit : (nearest[choice] ?? nearest[0])
  const offered = picked && picked.trims.length > 0 ? picked : undefined
  useHeldPreview(offered?.command ?? null)
  if (!ride || !fit || !overall) return null

  const take = () => {
    if (offered && store.getState().run(offered.command)) onClose()
  }
  return (
    <Proposal
      title={words.fit.slotTitle}
      where={words.fit.slotWhere({ ...overall, slack: nearly(overall.slack) })}
      onClose={onClose}
      actions={
        offered && (
          <Button tone="solid" onClick={take}>
            {words.fit.use}
          </Button>
        )
      }
    >
      {!fit.ok && <p>{tell(fit.reason)}</p>}
      {nearest.length > 1 && (
        <Segmented
          label={words.fit.nearest}
          value={String(nearest.indexOf(picked!))}
          choices={nearest.map((trim, index) => ({ value: String(index), label: words.fit.slack({ seconds: nearly(trim.slack) }) }))}
          onChange={(index) => setChoice(Number(index))}
        />
      )}
      {offered ? (
        <>
          <p>
            {fit.ok && `${words.fit.songsEnd} `}
            {words.fit.thenEnds} <b>{clock(offered.total)}</b>, {words.fit.thenEndsSlack({ seconds: nearly(offered.slack) })}.
          </p>
          <TrimList
            trims={offered.trims}
            eightOf={(id) => sections?.find(({ sectionId }) => sectionId === id)?.unit.eight ?? 8}
            onShow={onShow}
          />
        </>
      ) : (
        fit.ok && <p>{words.fit.nothingToDo({ seconds: nearly(fit.slack) })}</p>
      )}
    </Proposal>
  )
}

/** Without what rounding leaves over. */
const nearly = (slack: number): number => (slack < 0 && slack >= -1e-6 ? 0 : slack)
