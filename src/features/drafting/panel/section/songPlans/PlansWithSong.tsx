import { useMemo } from 'react'
import type { Song } from '#plan/model.ts'
import { findSection } from '#plan/places.ts'
import { isSameSong, songOf } from '#plan/songPlans/songPlan.ts'
import { withSong } from '#plan/songs/withSong.ts'
import { useApp } from '#store/useApp.ts'
import { words } from '#words/words.ts'
import { PlanList } from './PlanList.tsx'
import { useSongPlans } from './useSongPlans.ts'

interface Props {
  sectionId: string
  /** The song that would take the place of the section’s own. */
  song: Song
  onDone: () => void
}

/** Under a song that is about to be put in: the plans it was ridden with, each as one step with the song. Nothing where there are none. */
export function PlansWithSong({ sectionId, song, onDone }: Props) {
  const ride = useApp((state) => state.ride)
  const plans = useSongPlans()
  const own = useMemo(() => plans?.filter((plan) => isSameSong(songOf(plan), song)) ?? [], [plans, song])
  const section = ride && findSection(ride, sectionId)
  const target = useMemo(() => section && withSong(section, song), [section, song])
  if (!ride || !target || own.length === 0) return null
  return (
    <div className="panel-beside">
      <p>{words.songPlans.before({ ridden: own.some(({ taught }) => taught) })}</p>
      <PlanList plans={own} ride={ride} section={target} withSong onDone={onDone} />
    </div>
  )
}
