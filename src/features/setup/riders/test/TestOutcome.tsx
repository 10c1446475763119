import type { Capacity, TestResult } from '#engine/riderTest/capacity.ts'
import { riderInSentence } from '#plan/names.ts'
import type { Rider, Trial } from '#plan/riderModel.ts'
import { Button } from '#ui/Button.tsx'
import { tell, words } from '#words/words.ts'
import { PowerCurve } from './PowerCurve.tsx'

interface Props<Doubt, Refusal> {
  rider: Rider
  result: TestResult<Doubt, Refusal>
  trials: readonly Trial[]
  sayRefusal: (reason: Refusal) => string
  sayDoubt: (doubt: Doubt) => string
  isTaken: (capacity: Capacity) => boolean
  onTake: (capacity: Capacity) => void
}

/** What a test gives, how sure it is, what speaks against it, and the way to use it. */
export function TestOutcome<Doubt, Refusal>({ rider, result, trials, sayRefusal, sayDoubt, isTaken, onTake }: Props<Doubt, Refusal>) {
  if (!result.ok) {
    return (
      <div className="rider-test-outcome">
        <p role="status">{sayRefusal(result.reason)}</p>
      </div>
    )
  }
  const { capacity, doubts } = result
  const name = tell(riderInSentence(rider))
  return (
    <div className="rider-test-outcome">
      <p role="status">{words.riders.capacity(capacity)}</p>
      {trials.length > 0 && <PowerCurve capacity={capacity} trials={trials} />}
      {doubts.length > 0 && (
        <ul className="setup-notes">
          {doubts.map((doubt) => (
            <li key={sayDoubt(doubt)}>{sayDoubt(doubt)}</li>
          ))}
        </ul>
      )}
      {isTaken(capacity) ? (
        <p className="setup-mark">{words.riders.usedFor({ rider: name })}</p>
      ) : (
        <div className="setup-buttons">
          <Button tone="action" onClick={() => onTake(capacity)}>
            {words.riders.takeFor({ rider: name })}
          </Button>
        </div>
      )}
    </div>
  )
}
