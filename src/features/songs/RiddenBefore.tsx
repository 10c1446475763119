import { useEffect, useMemo } from 'react'
import { planCurve } from '#engine/songPlans/planCurve.ts'
import type { Song } from '#plan/model.ts'
import { isSameSong, type SongPlan, sectionOf, songOf } from '#plan/songPlans/songPlan.ts'
import { useApp, useAppStore } from '#store/useApp.ts'
import { SmallCurve } from '#ui/SmallCurve.tsx'
import { words } from '#words/words.ts'

const SHOWN = 8

/** The plans a song was ridden with: how they look, when they were taught, and how it went. */
export function RiddenBefore({ song }: { song: Song }) {
  const store = useAppStore()
  const plans = useApp((state) => state.songPlans)
  useEffect(() => void store.getState().wantSongPlans(), [store])
  const own = useMemo(() => plans?.filter((plan) => isSameSong(songOf(plan), song)) ?? [], [plans, song])
  if (own.length === 0) return null
  return (
    <>
      <h3>{words.songPlans.before({ ridden: own.some(({ taught }) => taught) })}</h3>
      <ul className="shelf-plans">
        {own.slice(0, SHOWN).map((plan) => (
          <PlanLine key={plan.id} plan={plan} />
        ))}
      </ul>
    </>
  )
}

function PlanLine({ plan }: { plan: SongPlan }) {
  const ride = plan.rideTitle || words.names.untitled
  return (
    <li>
      <SmallCurve points={planCurve(sectionOf(plan).blocks)} label={words.songPlans.curve({ ride })} />
      <b>{ride}</b> {words.songPlans.about(plan)}
    </li>
  )
}
