import { useMemo, useRef } from 'react'
import { fitPlan } from '#engine/songPlans/fitPlan.ts'
import { planCurve } from '#engine/songPlans/planCurve.ts'
import { PreviewButton } from '#features/drafting/PreviewButton.tsx'
import { takePlan } from '#plan/commands/takePlan.ts'
import type { Ride, Section } from '#plan/model.ts'
import { type SongPlan, sectionOf, songOf } from '#plan/songPlans/songPlan.ts'
import { useAppStore } from '#store/useApp.ts'
import { SmallCurve } from '#ui/SmallCurve.tsx'
import { tell, words } from '#words/words.ts'

interface Props {
  plan: SongPlan
  /** The committed ride: a preview of the plan must not be fitted again. */
  ride: Ride
  /** Where the plan is to stand, with the song it is to have there. */
  section: Section
  /** The plan brings the song with it. */
  withSong?: boolean
  /** The song is named too: it is another one. */
  named?: boolean
  onDone?: () => void
}

/** One plan: what it looks like, when it was ridden, what would be changed to make it fit here, and the way to use it. */
export function PlanRow({ plan, ride, section, withSong, named, onDone }: Props) {
  const { newId } = useAppStore().getState()
  const fitted = useMemo(() => fitPlan(plan, ride, section), [plan, ride, section])
  const command = useMemo(
    () =>
      fitted &&
      takePlan(ride, {
        sectionId: section.id,
        items: fitted.items,
        song: fitted.song,
        lead: fitted.lead,
        rideTitle: plan.rideTitle,
        newId,
      }),
    [fitted, ride, section.id, plan.rideTitle, newId],
  )
  const row = useRef<HTMLLIElement>(null)
  // The button is gone once its plan is there, and the next thing is a field, where undo means what was typed: on to the fold's own line.
  const leave = () => {
    row.current?.closest('details')?.querySelector('summary')?.focus()
    onDone?.()
  }
  const { songPlans } = words
  const title = plan.rideTitle || words.names.untitled
  const about = songPlans.about(plan)
  const notes = fitted ? fitted.said.map(tell) : [songPlans.outside]
  return (
    <li ref={row} className="song-plan">
      <div className="song-plan-head">
        <SmallCurve points={planCurve(sectionOf(plan).blocks)} label={songPlans.curve({ ride: title })} />
        <p>
          <b>{named ? songPlans.ofSong({ song: songOf(plan).title, ride: title }) : title}</b>
          <span className="panel-quiet">{about}</span>
        </p>
      </div>
      {fitted?.isThere ? (
        <p className="panel-quiet">{songPlans.isThere}</p>
      ) : (
        <>
          <p className="panel-quiet">{notes.length > 0 ? notes.join(' ') : songPlans.asRidden}</p>
          {command && (
            <PreviewButton
              command={command}
              onDone={leave}
              aria-label={(withSong ? songPlans.useWithSongNamed : songPlans.useNamed)({ ride: title, about })}
            >
              {withSong ? songPlans.useWithSong : songPlans.use}
            </PreviewButton>
          )}
        </>
      )}
    </li>
  )
}
