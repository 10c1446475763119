import type { RideReport } from '#engine/report.ts'
import { nameOfItem } from '#plan/names.ts'
import { formatClock } from '#units/formatClock.ts'
import { formatNumber } from '#units/formatNumber.ts'

/** How far two demands have to lie apart to be told. */
const NOTHING = 0.05

/** What another calibration does to the demand for the rider a ride is judged for, in a sentence: the block it changes most, and by how much. */
export function changeWords(before: RideReport, after: RideReport): string {
  const rider = before.riders.findIndex(({ reference }) => reference)
  const changes = before.blocks.flatMap((played, i) => {
    const [old, now] = [before, after].map((report) => report.riders[rider]?.demand[i]?.mean)
    return old === undefined || now === undefined ? [] : [{ played, old, now }]
  })
  const most = changes.reduce<(typeof changes)[number] | undefined>(
    (best, each) => (best && Math.abs(best.now - best.old) >= Math.abs(each.now - each.old) ? best : each),
    undefined,
  )
  const name = before.riders[rider]!.rider.name
  if (!most || Math.abs(most.now - most.old) < NOTHING) return `This ride demands of the ${name} what it did.`
  const { played, old, now } = most
  const level = (effort: number) => formatNumber(effort, 1)
  return `For the ${name} it changes most in “${nameOfItem(played.block)}” at ${formatClock(played.from)}: a demand of ${level(now)} instead of ${level(old)}.`
}
