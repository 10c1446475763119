import type { Ride } from '#plan/model.ts'
import { formatDuration } from '#units/formatDuration.ts'
import type { Seconds } from '#units/units.ts'

/**
 * When the first one is due: "Slot 18:30 to 19:15: the first one is due in 1:20."
 *
 * @param slotFrom instant of the slot's beginning; null where it counts from the first one
 * @param one seconds from there to the first one
 */
export function dueWords(ride: Pick<Ride, 'slotMinutes'>, slotFrom: number | null, one: Seconds, instant: number): string {
  if (slotFrom === null) return `${ride.slotMinutes} minutes, counted from the first one.`
  const left = one - (instant - slotFrom) / 1000
  const due =
    left >= 1 ? `is due in ${formatDuration(Math.ceil(left))}` : left > -1 ? 'is due now' : `is ${formatDuration(Math.floor(-left))} late`
  return `Slot ${wallClock(slotFrom)} to ${wallClock(slotFrom + ride.slotMinutes * 60_000)}: the first one ${due}.`
}

/** "18:30" in the page's zone. */
function wallClock(instant: number): string {
  const date = new Date(instant)
  return [date.getHours(), date.getMinutes()].map((part) => `${part}`.padStart(2, '0')).join(':')
}
