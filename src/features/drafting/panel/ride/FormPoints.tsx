import { useMemo } from 'react'
import { offerFormPoints } from '#engine/cues/formPoints.ts'
import { placeInside } from '#engine/cues/placeInside.ts'
import type { RideReport } from '#engine/report.ts'
import { PreviewButton } from '#features/drafting/PreviewButton.tsx'
import { Fold } from '#features/drafting/panel/rows/Fold.tsx'
import { addCues, type CueOfBlock } from '#plan/commands/addCues.ts'
import type { Command } from '#plan/commands/command.ts'
import type { Ride } from '#plan/model.ts'
import { formPointsOffered } from '#store/habitsSlice.ts'
import { useApp, useAppStore } from '#store/useApp.ts'
import { Field } from '#ui/Field.tsx'
import { say } from '#words/said.ts'
import { words } from '#words/words.ts'

/** Form cues of the instructor's own, kept on this device for every ride and offered in turn on the longer holds. */
export function FormPoints() {
  const store = useAppStore()
  const bank = useApp(formPointsOffered)
  const ride = useApp((state) => state.ride)
  const report = useApp((state) => state.report)
  const offered = useMemo(() => (ride && report ? pointsFor(ride, report, bank) : []), [ride, report, bank])
  const command = useMemo(() => offered.length > 0 && addAll(offered, () => store.getState().newId()), [offered, store])
  const keep = (typed: string) => {
    const points = typed
      .split('\n')
      .map((line) => line.trim())
      .filter((line) => line !== '')
    const long = points.find((point) => point.length > LONGEST)
    if (long) return words.panelsRide.formCueTooLong({ start: long.slice(0, 30), most: LONGEST })
    if (points.length > MOST) return words.panelsRide.tooManyFormCues({ most: MOST, count: points.length })
    store.getState().setFormPoints(points)
    return null
  }
  return (
    <Fold title={words.panelsRide.formCues} holds={words.panelsRide.formCuesHeld({ count: bank.length })} closed>
      <Field
        label={words.panelsRide.formCuesField}
        hideLabel
        className="panel-points"
        value={bank.join('\n')}
        rows={Math.min(10, bank.length + 1)}
        hint={words.panelsRide.formCuesHint}
        onCommit={keep}
      />
      {command && <PreviewButton command={command}>{words.panelsRide.addToHolds({ count: offered.length })}</PreviewButton>}
    </Fold>
  )
}

const LONGEST = 120
const MOST = 60

type Offered = { blockId: string; cue: Omit<CueOfBlock['cue'], 'id'> }

/** One for every longer hold without one, where there is room for it. */
function pointsFor(ride: Ride, report: RideReport, bank: readonly string[]): Offered[] {
  const told = new Set<string>()
  return offerFormPoints(report.blocks, report.cues, bank).flatMap(({ block, text }) => {
    const blockId = report.blocks[block]!.block.id
    const lead = told.has(blockId) ? null : placeInside(ride, report, block, text)
    if (!lead) return []
    told.add(blockId)
    return [{ blockId, cue: { moment: 'form' as const, lead, text } }]
  })
}

/** All of them as one change; their ids are drawn when it is first seen or made. */
function addAll(offered: readonly Offered[], newId: () => string): Command {
  let made: Command | undefined
  const label = say('panelsRide.addedFormCues', { count: offered.length })
  return {
    label,
    apply: (ride) => {
      made ??= addCues(offered.map(({ blockId, cue }) => ({ blockId, cue: { id: newId(), ...cue } })))
      return made.apply(ride)
    },
  }
}
