import { useState } from 'react'
import { Calibrate, type Way } from '#features/setup/calibrate/Calibrate.tsx'
import { Kept } from '#features/setup/parts/Kept.tsx'
import { same } from '#features/setup/parts/same.ts'
import { useRide, useRun } from '#features/setup/parts/useRide.ts'
import { setBike } from '#plan/commands/setBike.ts'
import { DEFAULT_BIKE, TYPICAL_BIKES } from '#plan/defaults.ts'
import { profileOfBike } from '#plan/kept/profile.ts'
import type { Bike } from '#plan/model.ts'
import { bikeName } from '#plan/names.ts'
import { useApp, useAppStore } from '#store/useApp.ts'
import { Button } from '#ui/Button.tsx'
import { Source } from '#ui/Source.tsx'
import { tell, words } from '#words/words.ts'
import { BikeCurve } from './BikeCurve.tsx'
import { BikeForm } from './BikeForm.tsx'
import { FeelAnchors } from './FeelAnchors.tsx'
import { PointsTable } from './PointsTable.tsx'
import { kindOf } from './sayBrake.ts'

/** The bike of the ride, how to calibrate it, and the bikes kept for other rides. */
export function BikePart() {
  const store = useAppStore()
  const bike = useRide((ride) => ride.bike)
  const readOnly = useApp((state) => state.received !== null)
  const run = useRun()
  const [way, setWay] = useState<Way | null>(null)
  const change = (next: Bike) => run((ride) => setBike(ride, next))
  // Nobody has measured the copy: its watts are only a place to begin.
  const another = () => {
    const { calibration: _by, brakeFit: _fit, ...copied } = bike
    change({ ...copied, id: store.getState().newId(), name: words.setup.copyName({ name: tell(bikeName(bike)) }).slice(0, 120) })
  }

  if (way !== null && !readOnly) return <Calibrate key={way} way={way} onClose={() => setWay(null)} />
  return (
    <div className="setup-columns">
      <div className="setup-column">
        <BikeForm bike={bike} onChange={change} />
        <section className="setup-part" aria-label={words.setup.wattsHeading}>
          <h2>{words.setup.wattsHeading}</h2>
          <p className="setup-quiet">
            {isTypical(bike) ? (
              <>
                {words.setup.typicalWatts} <Source text={words.setup.typicalSource} />
              </>
            ) : (
              words.setup.wattsAre({ rpm: bike.referenceRpm, calibration: bike.calibration ?? null })
            )}
          </p>
          <div className="setup-points">
            <PointsTable bike={bike} onChange={change} />
            <BikeCurve bike={bike} />
          </div>
        </section>
        <FeelAnchors bike={bike} onChange={change} />
      </div>
      <div className="setup-column">
        <section className="setup-part" aria-label={words.calibrating.heading}>
          <h2>{words.calibrating.heading}</h2>
          <p className="setup-quiet">{words.calibrating.about}</p>
          <div className="setup-buttons">
            <Button tone="action" onClick={() => setWay('watts')}>
              {words.calibrating.byWatts}
            </Button>
            <Button onClick={() => setWay('feel')}>{words.calibrating.byFeel}</Button>
          </div>
        </section>
        <Kept
          kind="bike"
          title={words.setup.keptBikes}
          empty={words.setup.keptBikesEmpty}
          say={({ bike: kept }) => scaleWords(kept)}
          isInUse={({ bike: kept }) => same(kept, bike)}
          onUse={({ bike: kept }) => change(kept)}
          make={() => profileOfBike(bike)}
          name={bike.name}
          keepLabel={words.setup.keepBike({ name: tell(bikeName(bike)) })}
        />
        <section className="setup-part" aria-label={words.setup.another}>
          <h2>{words.setup.another}</h2>
          <p className="setup-quiet">{words.setup.anotherAbout}</p>
          <div className="setup-buttons">
            <Button onClick={another}>{words.setup.copy}</Button>
            {bike.id !== DEFAULT_BIKE.id && <Button onClick={() => change(DEFAULT_BIKE)}>{words.setup.typicalKnob}</Button>}
          </div>
        </section>
      </div>
    </div>
  )
}

/** "¼ turn, 0 to 20, friction" */
const scaleWords = (bike: Bike): string =>
  words.setup.scale({ unit: bike.unit, stepsPerUnit: bike.stepsPerUnit, min: bike.min ?? 0, max: bike.max, brake: kindOf(bike) })

/** Whether a bike's watts are typical ones, which nobody measured. */
const isTypical = ({ points, calibration }: Pick<Bike, 'points' | 'calibration'>): boolean =>
  calibration === undefined && TYPICAL_BIKES.some((typical) => JSON.stringify(points) === JSON.stringify(typical.points))
