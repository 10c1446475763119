import { ridersOf } from '#engine/assembly/reportRiders.ts'
import { referenceRiderIndex } from '#engine/demand/riderSetting.ts'
import { Kept } from '#features/setup/parts/Kept.tsx'
import { same } from '#features/setup/parts/same.ts'
import { useRide, useRun } from '#features/setup/parts/useRide.ts'
import { patchRide } from '#plan/commands/patchRide.ts'
import { DEFAULT_RIDERS } from '#plan/defaults.ts'
import { riderInSentence, riderName } from '#plan/names.ts'
import type { Rider } from '#plan/riderModel.ts'
import { useAppStore } from '#store/useApp.ts'
import { Button } from '#ui/Button.tsx'
import { Source } from '#ui/Source.tsx'
import { and } from '#words/forms.ts'
import { tell, words } from '#words/words.ts'
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
    put([...riders, { ...assumed, id: store.getState().newId(), name: words.riders.numbered({ number: riders.length + 1 }) }])
  }
  const doubts = riders.flatMap(riderDoubts)
  return (
    <div className="setup-column">
      <section className="setup-part" aria-label={words.riders.heading}>
        <h2>{words.riders.heading}</h2>
        <p className="setup-quiet">
          {own === undefined && (
            <>
              {words.riders.typical} <Source text={words.riders.typicalSource} />{' '}
            </>
          )}
          {words.riders.about({ rider: tell(riderInSentence(riders[reference]!)), level })}
        </p>
        <RidersLine />
        <RiderGrid riders={riders} reference={reference} onChange={put} />
        {doubts.map((doubt) => (
          <p key={doubt} className="setup-note">
            {doubt}
          </p>
        ))}
        <div className="setup-buttons">
          {riders.length < MOST && <Button onClick={add}>{words.riders.add}</Button>}
          {own !== undefined && <Button onClick={() => put(undefined)}>{words.riders.backToTypical}</Button>}
        </div>
      </section>
      <RiderTest riders={riders} reference={reference} onChange={put} />
      <div className="setup-narrow">
        <Kept
          kind="riders"
          title={words.riders.keptTitle}
          empty={words.riders.keptEmpty}
          say={({ riders: kept }) => and(kept.map((rider) => tell(riderName(rider))))}
          isInUse={({ riders: kept }) => same(kept, riders)}
          onUse={({ riders: kept }) => put(kept)}
          make={(name) => ({ kind: 'riders', id: store.getState().newId(), name, riders: [...riders] })}
          keepLabel={words.riders.keepThem}
        />
      </div>
    </div>
  )
}
