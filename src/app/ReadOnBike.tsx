import { useMemo } from 'react'
import { ActionButton } from '#actions/ActionButton.tsx'
import { TYPICAL_BIKES } from '#plan/defaults.ts'
import type { Profile } from '#plan/kept/profile.ts'
import type { Bike } from '#plan/model.ts'
import { bikeName } from '#plan/names.ts'
import { sameScale } from '#plan/scale/sameScale.ts'
import { useApp } from '#store/useApp.ts'
import { Bar } from '#ui/Bar.tsx'
import { Select } from '#ui/Select.tsx'
import { tell, words } from '#words/words.ts'
import { OWN_BIKE } from './actions/ownBike.ts'
import { useShellGround } from './actions/shellGround.ts'

/** The ride's own bike among the choices. */
const OWN = 'own'

/** Chooses the bike that totals and calls are read on; the ride itself is not changed by it. */
export function ReadOnBike() {
  const own = useApp((state) => state.shown?.bike)
  const readOn = useApp((state) => state.readOn)
  const showOn = useApp((state) => state.showOn)
  const profiles = useApp((state) => state.profiles)
  const bikes = useMemo(() => bikesOf(profiles, own, readOn), [profiles, own, readOn])
  if (!own) return null
  const choices = [{ value: OWN, label: tell(bikeName(own)) }, ...bikes.map(({ bike, label }) => ({ value: bike.id, label }))]
  return (
    <Select
      className="app-read-on"
      label={words.app.shownOn}
      hideLabel
      value={readOn?.id ?? OWN}
      choices={choices}
      onChange={(id) => showOn(bikes.find(({ bike }) => bike.id === id)?.bike ?? null)}
    />
  )
}

/** Says what is read otherwise while it is, with the way back; draws nothing while rides are on their own bikes. */
export function ReadOnBar() {
  const readOn = useApp((state) => state.shownReport?.shownOn?.bike)
  const own = useApp((state) => state.shown && tell(bikeName(state.shown.bike)))
  const on = useShellGround()
  if (!readOn) return null
  return (
    <Bar label={words.app.anotherBike} quiet actions={<ActionButton action={OWN_BIKE} on={on} />}>
      <strong>{words.app.shownOnBike({ bike: tell(bikeName(readOn)) })}</strong> {words.app.shownOnMeans({ own: own ?? '' })}
    </Bar>
  )
}

interface Offered {
  bike: Bike
  label: string
}

/** Kept bikes, then the typical ones, then one that is kept no longer but still read on; the ride's own stands apart. */
function bikesOf(profiles: readonly Profile[], own: Bike | undefined, readOn: Bike | null): Offered[] {
  const kept = profiles.flatMap((profile) => (profile.kind === 'bike' ? [{ bike: profile.bike, label: profile.name }] : []))
  const typical = TYPICAL_BIKES.map((bike) => ({ bike, label: words.app.typicalBike({ bike: tell(bikeName(bike)) }) }))
  const still = readOn ? [{ bike: readOn, label: tell(bikeName(readOn)) }] : []
  const offered = new Map<string, Offered>()
  for (const one of [...kept, ...typical, ...still]) if (!offered.has(one.bike.id)) offered.set(one.bike.id, one)
  // A bike that reads and weighs as the ride's own shows nothing else, so it is offered only to say that it is the one chosen.
  return [...offered.values()].filter(({ bike }) => bike.id === readOn?.id || !own || !sameScale(bike, own))
}
