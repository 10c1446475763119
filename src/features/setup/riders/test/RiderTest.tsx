import { useState } from 'react'
import type { Capacity } from '#engine/riderTest/capacity.ts'
import { capacityFromThreeMinutes } from '#engine/riderTest/capacityFromThreeMinutes.ts'
import { capacityFromTrials } from '#engine/riderTest/capacityFromTrials.ts'
import { withBasis } from '#features/setup/riders/withNumber.ts'
import type { Rider } from '#plan/riderModel.ts'
import { Segmented } from '#ui/Segmented.tsx'
import { type Choice, Select } from '#ui/Select.tsx'
import { sayThreeMinuteDoubt, sayThreeMinuteRefusal, sayTrialDoubt, sayTrialRefusal } from './doubtWords.ts'
import { TestOutcome } from './TestOutcome.tsx'
import { ThreeMinutes } from './ThreeMinutes.tsx'
import { Trials } from './Trials.tsx'
import './test.css'

interface Props {
  riders: readonly Rider[]
  reference: number
  onChange: (riders: readonly Rider[]) => void
}

type Way = 'trials' | 'threeMinutes'

const WAYS: readonly Choice<Way>[] = [
  { value: 'trials', label: 'two or more trials' },
  { value: 'threeMinutes', label: 'three minutes all out' },
]

/** A rider's critical power and reserve from all-out tests, which stay with the rider so that another can be added later. */
export function RiderTest({ riders, reference, onChange }: Props) {
  const [riderId, setRiderId] = useState(riders[reference]!.id)
  const at = riders.findIndex(({ id }) => id === riderId)
  const index = at < 0 ? reference : at
  const rider = riders[index]!
  const [chosen, setWay] = useState<Way | null>(null)
  const way = chosen ?? (rider.threeMinuteTest && !rider.trials ? 'threeMinutes' : 'trials')
  const change = (next: Rider) => onChange(riders.with(index, next))
  const take = ({ criticalPower, wPrime }: Capacity) => change(withBasis({ ...rider, ...whole({ criticalPower, wPrime }) }, 'tested'))
  const isTaken = ({ criticalPower, wPrime }: Capacity) => {
    const tested = whole({ criticalPower, wPrime })
    return rider.basis === 'tested' && rider.criticalPower === tested.criticalPower && rider.wPrime === tested.wPrime
  }
  const outcome = { rider, isTaken, onTake: take }
  return (
    <section className="setup-part" aria-label="critical power from a test">
      <h2>critical power from a test</h2>
      <p className="setup-note">
        All-out tests are for healthy, trained riders with medical clearance, well warmed up and with somebody watching. They are not for
        first-timers, and nobody does one for a class plan alone.
      </p>
      <div className="rider-test-head">
        <Select
          label="whose test"
          value={rider.id}
          choices={riders.map(({ id, name }) => ({ value: id, label: name }))}
          onChange={(id) => {
            setRiderId(id)
            setWay(null)
          }}
        />
        <Segmented label="kind of test" value={way} choices={WAYS} onChange={setWay} />
      </div>
      {way === 'trials' ? (
        <div className="rider-test" key={`trials ${rider.id}`}>
          <Trials rider={rider} onChange={change} />
          <TestOutcome
            {...outcome}
            result={capacityFromTrials(rider.trials ?? [])}
            trials={rider.trials ?? []}
            sayRefusal={sayTrialRefusal}
            sayDoubt={sayTrialDoubt}
          />
        </div>
      ) : (
        <div className="rider-test" key={`three ${rider.id}`}>
          <ThreeMinutes rider={rider} onChange={change} />
          {rider.threeMinuteTest && (
            <TestOutcome
              {...outcome}
              result={capacityFromThreeMinutes(rider.threeMinuteTest)}
              trials={[]}
              sayRefusal={sayThreeMinuteRefusal}
              sayDoubt={sayThreeMinuteDoubt}
            />
          )}
        </div>
      )}
    </section>
  )
}

/** As it is kept: whole watts, hundreds of joules, which no test knows better. */
const whole = ({ criticalPower, wPrime }: Pick<Capacity, 'criticalPower' | 'wPrime'>) => ({
  criticalPower: Math.round(criticalPower),
  wPrime: 100 * Math.round(wPrime / 100),
})
