import { useMemo, useState } from 'react'
import { Fold } from '#features/drafting/panel/rows/Fold.tsx'
import type { Ride, Section } from '#plan/model.ts'
import { findSection } from '#plan/places.ts'
import { findPlans } from '#plan/songPlans/findPlans.ts'
import { isSameSong, type SongPlan, songOf } from '#plan/songPlans/songPlan.ts'
import { useApp } from '#store/useApp.ts'
import { Disclosure } from '#ui/Disclosure.tsx'
import { SearchField } from '#ui/SearchField.tsx'
import { words } from '#words/words.ts'
import { PlanList } from './PlanList.tsx'
import { useSongPlans } from './useSongPlans.ts'

/**
 * Under a song: the plans it was ridden with, fitted to where it stands now, and a way to those of other songs. Nothing of
 * the song’s own where there is none.
 */
export function SongPlans({ sectionId }: { sectionId: string }) {
  const ride = useApp((state) => state.ride)
  const plans = useSongPlans()
  const section = ride && findSection(ride, sectionId)
  const song = section?.song
  const own = useMemo(() => (song && plans ? plans.filter((plan) => isSameSong(songOf(plan), song)) : []), [plans, song])
  if (!ride || !section || !song) return null
  return (
    <div className="panel-edit-only">
      {own.length > 0 && <OwnPlans plans={own} ride={ride} section={section} />}
      <AnotherSongsPlan plans={plans} ride={ride} section={section} />
    </div>
  )
}

interface Place {
  ride: Ride
  section: Section
}

/** Open where the song has nothing yet. */
function OwnPlans({ plans, ride, section }: Place & { plans: readonly SongPlan[] }) {
  const [open, setOpen] = useState(section.blocks.length === 0)
  const summary = (
    <>
      {words.songPlans.riddenBefore} <b className="panel-fold-holds">{words.songPlans.count({ count: plans.length })}</b>
    </>
  )
  return (
    <Disclosure className="panel-fold" summary={summary} open={open} onToggle={setOpen}>
      <PlanList plans={plans} ride={ride} section={section} />
    </Disclosure>
  )
}

function AnotherSongsPlan({ plans, ride, section }: Place & { plans: readonly SongPlan[] | null }) {
  const [search, setSearch] = useState('')
  const { song } = section
  const others = useMemo(() => (plans ?? []).filter((plan) => !song || !isSameSong(songOf(plan), song)), [plans, song])
  const found = useMemo(() => findPlans(others, search), [others, search])
  return (
    <Fold title={words.songPlans.another}>
      {plans === null && <p className="panel-quiet">{words.songPlans.looking}</p>}
      {plans !== null && others.length === 0 && <p className="panel-quiet">{words.songPlans.noneYet}</p>}
      {others.length > 0 && (
        <>
          <SearchField value={search} placeholder={words.songPlans.searchHint} onChange={setSearch} />
          {found.length === 0 && <p className="panel-quiet">{words.songPlans.noneFound}</p>}
          <PlanList plans={found} ride={ride} section={section} named />
        </>
      )}
    </Fold>
  )
}
