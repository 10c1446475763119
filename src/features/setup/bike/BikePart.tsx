import { useState } from 'react'
import { Calibrate, type Way } from '#features/setup/calibrate/Calibrate.tsx'
import { Kept } from '#features/setup/parts/Kept.tsx'
import { same } from '#features/setup/parts/same.ts'
import { useRide, useRun } from '#features/setup/parts/useRide.ts'
import { setBike } from '#plan/commands/setBike.ts'
import { DEFAULT_BIKE, TYPICAL_BIKES } from '#plan/defaults.ts'
import { profileOfBike } from '#plan/kept/profile.ts'
import type { Bike } from '#plan/model.ts'
import { useApp, useAppStore } from '#store/useApp.ts'
import { Button } from '#ui/Button.tsx'
import { BikeCurve } from './BikeCurve.tsx'
import { BikeForm } from './BikeForm.tsx'
import { FeelAnchors } from './FeelAnchors.tsx'
import { sayAt } from './fields.ts'
import { PointsTable } from './PointsTable.tsx'
import { sayKind } from './sayBrake.ts'

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
    change({ ...copied, id: store.getState().newId(), name: `${bike.name} (another)`.slice(0, 120) })
  }

  if (way !== null && !readOnly) return <Calibrate key={way} way={way} onClose={() => setWay(null)} />
  return (
    <div className="setup-columns">
      <div className="setup-column">
        <BikeForm bike={bike} onChange={change} />
        <section className="setup-part" aria-label="calibration">
          <h2>what it weighs</h2>
          <p className="setup-quiet">
            {isTypical(bike)
              ? 'These watts are typical of such a knob: common practice, no source. Calibrate the bike once, and every estimate of this room gets better.'
              : `Watts at ${bike.referenceRpm} rev/min${bike.calibration ? CALIBRATED[bike.calibration] : ''}; between the points a smooth curve that never falls.`}
          </p>
          <div className="setup-points">
            <PointsTable bike={bike} onChange={change} />
            <BikeCurve bike={bike} />
          </div>
        </section>
        <FeelAnchors bike={bike} onChange={change} />
      </div>
      <div className="setup-column">
        <section className="setup-part" aria-label="calibrate">
          <h2>calibrate</h2>
          <p className="setup-quiet">Ten minutes on the bike, at any time. You see what changes in this ride before you take it.</p>
          <div className="setup-buttons">
            <Button tone="action" onClick={() => setWay('watts')}>
              by the console’s watts
            </Button>
            <Button onClick={() => setWay('feel')}>by feel, without a console</Button>
          </div>
        </section>
        <Kept
          kind="bike"
          title="bikes"
          empty="None yet. Keep this bike, and other rides can be planned for it."
          say={({ bike: kept }) => scaleWords(kept)}
          isInUse={({ bike: kept }) => same(kept, bike)}
          onUse={({ bike: kept }) => change(kept)}
          make={() => profileOfBike(bike)}
          name={bike.name}
          keepLabel={`keep ${bike.name}`}
        />
        <section className="setup-part" aria-label="other bikes">
          <h2>another bike</h2>
          <p className="setup-quiet">
            Totals and changes keep what they say in the bike’s unit, to the nearest step. Their load on the legs may differ; the demand
            line shows it.
          </p>
          <div className="setup-buttons">
            <Button onClick={another}>start from a copy of this one</Button>
            {bike.id !== DEFAULT_BIKE.id && <Button onClick={() => change(DEFAULT_BIKE)}>use the typical knob</Button>}
          </div>
        </section>
      </div>
    </div>
  )
}

const CALIBRATED = { watts: ', read off its console', feel: ', found by feel' } as const

/** "¼ turn, 0 to 20, friction" */
const scaleWords = (bike: Bike): string =>
  `${bike.stepsPerUnit === 1 ? `whole ${bike.unit}s` : `${sayAt(1 / bike.stepsPerUnit, bike)} ${bike.unit}`}, ${sayAt(bike.min ?? 0, bike)} to ${sayAt(bike.max, bike)}, ${sayKind(bike)}`

/** Whether a bike's watts are typical ones, which nobody measured. */
const isTypical = ({ points, calibration }: Pick<Bike, 'points' | 'calibration'>): boolean =>
  calibration === undefined && TYPICAL_BIKES.some((typical) => JSON.stringify(points) === JSON.stringify(typical.points))
