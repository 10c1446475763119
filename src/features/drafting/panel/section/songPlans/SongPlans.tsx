import { useMemo, useState } from 'react'
import type { Ride, Section } from '#plan/model.ts'
import { findSection } from '#plan/places.ts'
import { isSameSong, type SongPlan, songOf } from '#plan/songPlans/songPlan.ts'
import { useApp } from '#store/useApp.ts'
import { Disclosure } from '#ui/Disclosure.tsx'
import { words } from '#words/words.ts'
import { PlanList } from './PlanList.tsx'
import { useSongPlans } from './useSongPlans.ts'

/**
 * Under a song: the plans it was ridden with, fitted to where it stands now; open where it has nothing yet. Nothing
 * where there are none.
 */
export function SongPlans({ sectionId }: { sectionId: string }) {
  const ride = useApp((state) => state.ride)
  const plans = useSongPlans()
  const section = ride && findSection(ride, sectionId)
  const song = section?.song
  const own = useMemo(() => (song && plans ? plans.filter((plan) => isSameSong(songOf(plan), song)) : []), [plans, song])
  if (!ride || !section || own.length === 0) return null
  return <OwnPlans plans={own} ride={ride} section={section} />
}

interface Place {
  ride: Ride
  section: Section
}

function OwnPlans({ plans, ride, section }: Place & { plans: readonly SongPlan[] }) {
  const [open, setOpen] = useState(section.blocks.length === 0)
  const summary = (
    <>
      {words.songPlans.before({ ridden: plans.some(({ taught }) => taught) })}{' '}
      <b className="panel-fold-holds">{words.songPlans.count({ count: plans.length })}</b>
    </>
  )
  return (
    <Disclosure className="panel-fold panel-edit-only" summary={summary} open={open} onToggle={setOpen}>
      {open && <PlanList plans={plans} ride={ride} section={section} />}
    </Disclosure>
  )
}
