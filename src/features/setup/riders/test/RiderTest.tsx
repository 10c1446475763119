import { useState } from 'react'
import type { Capacity } from '#engine/riderTest/capacity.ts'
import { capacityFromThreeMinutes } from '#engine/riderTest/capacityFromThreeMinutes.ts'
import { capacityFromTrials } from '#engine/riderTest/capacityFromTrials.ts'
import { withBasis } from '#features/setup/riders/withNumber.ts'
import { riderName } from '#plan/names.ts'
import type { Rider } from '#plan/riderModel.ts'
import { Segmented } from '#ui/Segmented.tsx'
import { Select } from '#ui/Select.tsx'
import { tell, words } from '#words/words.ts'
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

const ways = () => (['trials', 'threeMinutes'] as const).map((value: Way) => ({ value, label: words.riders[value] }))

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
    <section className="setup-part" aria-label={words.riders.testHeading}>
      <h2>{words.riders.testHeading}</h2>
      <p className="setup-note">{words.riders.testCaution}</p>
      <div className="rider-test-head">
        <Select
          label={words.riders.whoseTest}
          value={rider.id}
          choices={riders.map((each) => ({ value: each.id, label: tell(riderName(each)) }))}
          onChange={(id) => {
            setRiderId(id)
            setWay(null)
          }}
        />
        <Segmented label={words.riders.kindOfTest} value={way} choices={ways()} onChange={setWay} />
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
