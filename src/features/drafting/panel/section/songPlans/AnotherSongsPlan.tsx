import { useMemo, useState } from 'react'
import { findSection } from '#plan/places.ts'
import { findPlans } from '#plan/songPlans/findPlans.ts'
import { isSameSong, type SongPlan, songOf } from '#plan/songPlans/songPlan.ts'
import { useApp } from '#store/useApp.ts'
import { Disclosure } from '#ui/Disclosure.tsx'
import { SearchField } from '#ui/SearchField.tsx'
import { words } from '#words/words.ts'
import { PlanList } from './PlanList.tsx'
import { useSongPlans } from './useSongPlans.ts'

const NONE: readonly SongPlan[] = []

/** The plans of all other songs, found by their song, artist or ride, for a song that is to be ridden like one of them. */
export function AnotherSongsPlan({ sectionId }: { sectionId: string }) {
  const [open, setOpen] = useState(false)
  return (
    <Disclosure className="panel-fold" summary={words.songPlans.another} open={open} onToggle={setOpen}>
      {open && <Others sectionId={sectionId} />}
    </Disclosure>
  )
}

function Others({ sectionId }: { sectionId: string }) {
  const ride = useApp((state) => state.ride)
  const plans = useSongPlans()
  const [search, setSearch] = useState('')
  const section = ride && findSection(ride, sectionId)
  const song = section?.song
  const others = useMemo(() => plans?.filter((plan) => !song || !isSameSong(songOf(plan), song)) ?? NONE, [plans, song])
  const found = useMemo(() => findPlans(others, search), [others, search])
  if (!ride || !section) return null
  if (others.length === 0) return <p className="panel-quiet">{plans === null ? words.songPlans.looking : words.songPlans.noneYet}</p>
  return (
    <>
      <SearchField value={search} placeholder={words.songPlans.searchHint} onChange={setSearch} />
      {found.length === 0 && <p className="panel-quiet">{words.songPlans.noneFound}</p>}
      <PlanList plans={found} ride={ride} section={section} named />
    </>
  )
}
