import { inUsualRoom } from '#engine/log/slot.ts'
import { taughtOf } from '#engine/log/taughtOf.ts'
import { clockAt, dayAt } from '#features/log/clock.ts'
import type { TaughtClass } from '#plan/kept/taught.ts'
import type { AppState } from '#store/state.ts'

type Asked = Pick<AppState, 'shown' | 'shownReport' | 'leading' | 'lastLed' | 'taught' | 'newId'>

/**
 * An entry for the ride that is shown: from the class as it was led where it was led from the
 * screen, with the day and the time it really began, else from the plan. A plan that does not say
 * where it is taught is taken to be taught in the usual room.
 *
 * @param now milliseconds since 1970
 */
export function freshEntry({ shown, shownReport, leading, lastLed, taught, newId }: Asked, now: number): TaughtClass {
  const planned = { ride: shown!, report: shownReport! }
  const bookedAt = planned.ride.startsAt
  const own = [leading, lastLed].find((one) => one?.led && one.plan.ride.id === planned.ride.id)
  if (!own?.led || !own.log) {
    return inUsualRoom(taughtOf(planned, { id: newId(), day: dayAt(now), bookedAt, startedAt: bookedAt }), taught)
  }
  const { startedAt } = own.log
  const when = { id: newId(), day: dayAt(startedAt), bookedAt, startedAt: clockAt(startedAt) }
  return inUsualRoom(taughtOf(own.plan, when, own.led), taught)
}
