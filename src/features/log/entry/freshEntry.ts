import { taughtOf } from '#engine/log/taughtOf.ts'
import { clockAt, dayAt } from '#features/log/clock.ts'
import type { TaughtClass } from '#plan/taught.ts'
import type { AppState } from '#store/state.ts'

type Asked = Pick<AppState, 'shown' | 'shownReport' | 'leading' | 'lastLed' | 'newId'>

/**
 * An entry for the ride that is shown: from the class as it was led where it was led from the
 * screen, with the day and the time it really began, else from the plan.
 *
 * @param now milliseconds since 1970
 */
export function freshEntry({ shown, shownReport, leading, lastLed, newId }: Asked, now: number): TaughtClass {
  const planned = { ride: shown!, report: shownReport! }
  const bookedAt = planned.ride.startsAt
  const own = [leading, lastLed].find((one) => one?.led && one.plan.ride.id === planned.ride.id)
  if (!own?.led || !own.log) return taughtOf(planned, { id: newId(), day: dayAt(now), bookedAt, startedAt: bookedAt })
  const { startedAt } = own.log
  return taughtOf(own.plan, { id: newId(), day: dayAt(startedAt), bookedAt, startedAt: clockAt(startedAt) }, own.led)
}
