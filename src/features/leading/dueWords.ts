import type { Ride } from '#plan/model.ts'
import type { Seconds } from '#units/units.ts'
import { moment } from '#words/forms.ts'
import { words } from '#words/words.ts'

/**
 * When beat 1 is due: "Class 6:30 PM–7:15 PM · beat 1 in 1:20".
 *
 * @param slotFrom instant of the slot's beginning; null where it counts from beat 1
 * @param one seconds from there to beat 1
 */
export function dueWords(ride: Pick<Ride, 'slotMinutes'>, slotFrom: number | null, one: Seconds, instant: number): string {
  if (slotFrom === null) return words.leading.fromBeatOne({ minutes: ride.slotMinutes })
  const [from, to] = [slotFrom, slotFrom + ride.slotMinutes * 60_000].map((at) => moment(at, { timeStyle: 'short' })) as [string, string]
  const left = one - (instant - slotFrom) / 1000
  if (left >= 1) return words.leading.dueIn({ from, to, seconds: Math.ceil(left) })
  return left > -1 ? words.leading.dueNow({ from, to }) : words.leading.late({ from, to, seconds: Math.floor(-left) })
}
