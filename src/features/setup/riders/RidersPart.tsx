import { ridersOf } from '#engine/assembly/reportRiders.ts'
import { referenceRiderIndex } from '#engine/demand/riderSetting.ts'
import { Kept } from '#features/setup/parts/Kept.tsx'
import { same } from '#features/setup/parts/same.ts'
import { useRide, useRun } from '#features/setup/parts/useRide.ts'
import { patchRide } from '#plan/commands/patchRide.ts'
import { DEFAULT_RIDERS } from '#plan/defaults.ts'
import { joinWords } from '#plan/names.ts'
import type { Rider } from '#plan/riderModel.ts'
import { useAppStore } from '#store/useApp.ts'
import { Button } from '#ui/Button.tsx'
import { RiderGrid } from './RiderGrid.tsx'
import { RidersLine } from './RidersLine.tsx'
import { riderDoubts } from './riderNotes.ts'
import { RiderTest } from './test/RiderTest.tsx'

/** Most riders a ride is modelled for. */
const MOST = 6

/** The modelled riders of the ride, and the sets of riders kept for others. */
export function RidersPart() {
  const store = useAppStore()
  const riders = useRide(ridersOf)
  const own = useRide((ride) => ride.riders)
  const level = useRide((ride) => ride.level)
  const reference = referenceRiderIndex(riders, level)
  const run = useRun()
  const put = (next: readonly Rider[] | undefined) => {
    const isDefault = next === undefined || same(next, DEFAULT_RIDERS)
    run(() => patchRide({ riders: isDefault ? undefined : [...next] }))
  }
  const add = () => {
    const like = riders[reference]!
    const { trials: _trials, threeMinuteTest: _test, basis: _basis, ...assumed } = like
    put([...riders, { ...assumed, id: store.getState().newId(), name: `rider ${riders.length + 1}` }])
  }
  const doubts = riders.flatMap(riderDoubts)
  return (
    <div className="setup-column">
      <section className="setup-part" aria-label="the riders of this ride">
        <h2>the riders of this ride</h2>
        <p className="setup-quiet">
          {own === undefined ? 'Three typical people: common practice, no source. ' : ''}
          Findings are judged for the {riders[reference]!.name}, because the class is {level}. Riders never go into a link: whoever opens
          one sees the three typical riders.
        </p>
        <RidersLine />
        <RiderGrid riders={riders} reference={reference} onChange={put} />
        {doubts.map((doubt) => (
          <p key={doubt} className="setup-note">
            {doubt}
          </p>
        ))}
        <div className="setup-buttons">
          {riders.length < MOST && <Button onClick={add}>add a rider</Button>}
          {own !== undefined && <Button onClick={() => put(undefined)}>back to the three typical riders</Button>}
        </div>
      </section>
      <RiderTest riders={riders} reference={reference} onChange={put} />
      <div className="setup-narrow">
        <Kept
          kind="riders"
          title="riders"
          empty="None yet. Keep a set of riders, such as those of a class you teach every week."
          say={({ riders: kept }) => joinWords(kept.map(({ name }) => name))}
          isInUse={({ riders: kept }) => same(kept, riders)}
          onUse={({ riders: kept }) => put(kept)}
          make={(name) => ({ kind: 'riders', id: store.getState().newId(), name, riders: [...riders] })}
          keepLabel="keep these riders"
        />
      </div>
    </div>
  )
}
