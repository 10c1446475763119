import { useState } from 'react'
import type { Ride, Section } from '#plan/model.ts'
import type { SongPlan } from '#plan/songPlans/songPlan.ts'
import { Button } from '#ui/Button.tsx'
import { words } from '#words/words.ts'
import { PlanRow } from './PlanRow.tsx'
import './songPlans.css'

interface Props {
  plans: readonly SongPlan[]
  ride: Ride
  section: Section
  withSong?: boolean
  named?: boolean
  onDone?: () => void
}

/** Plans shown before the rest is asked for. */
const SHOWN = 3

/** Plans for a section, the first few of them at once. */
export function PlanList({ plans, ...place }: Props) {
  const [all, setAll] = useState(false)
  const shown = all ? plans : plans.slice(0, SHOWN)
  return (
    <>
      <ul className="song-plans">
        {shown.map((plan) => (
          <PlanRow key={plan.id} plan={plan} {...place} />
        ))}
      </ul>
      {shown.length < plans.length && (
        <Button tone="quiet" onClick={() => setAll(true)}>
          {words.songPlans.showAll({ count: plans.length })}
        </Button>
      )}
    </>
  )
}
