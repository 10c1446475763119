import { layTimeline } from '#engine/timeline/layTimeline.ts'
import type { Ride } from '#plan/model.ts'
import { say, type Text } from '#words/said.ts'

/**
 * What a change inside one section does to the clock, in whole sentences: when what follows
 * starts, and when the ride then ends against its slot. Empty where no time moves.
 */
export function sayMoved(before: Ride, after: Ride, sectionId: string): Text[] {
  const [was, is] = [layTimeline(before), layTimeline(after)]
  const moved = is.total - was.total
  if (Math.abs(moved) < 0.5) return []
  const follows = before.sections.length - 1 - before.sections.findIndex(({ id }) => id === sectionId)
  const slack = after.slotMinutes * 60 - is.total
  return [...(follows > 0 ? [say('fit.followsStarts', { seconds: moved })] : []), say('fit.rideEnds', { at: is.total, slack })]
}
