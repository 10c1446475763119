import { layTimeline } from '#engine/timeline/layTimeline.ts'
import type { Ride } from '#plan/model.ts'
import { formatClock } from '#units/formatClock.ts'
import { formatDuration } from '#units/formatDuration.ts'

/**
 * What a change inside one section does to the clock, in whole sentences: when what follows
 * starts, and when the ride then ends against its slot. Empty where no time moves.
 */
export function sayMoved(before: Ride, after: Ride, sectionId: string): string[] {
  const [was, is] = [layTimeline(before), layTimeline(after)]
  const moved = is.total - was.total
  if (Math.abs(moved) < 0.5) return []
  const follows = before.sections.length - 1 - before.sections.findIndex(({ id }) => id === sectionId)
  const slack = after.slotMinutes * 60 - is.total
  const against = slack < 0 ? `${formatDuration(-slack)} over its slot` : `${formatDuration(slack)} to spare`
  const start = `${formatDuration(Math.abs(moved))} ${moved > 0 ? 'later' : 'earlier'}`
  return [...(follows > 0 ? [`What follows starts ${start}.`] : []), `The ride ends at ${formatClock(is.total)}, ${against}.`]
}
