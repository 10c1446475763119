import type { Bike, Ride } from '#plan/model.ts'
import type { Rider } from '#plan/riderModel.ts'
import type { KnobSteps, Setting } from '#units/units.ts'

/**
 * Where a rider's knob stands for a total of the ledger: the bike's base, moved by the
 * rider's own, plus the total; on a ride that counts from the loose wheel the total itself.
 * Held inside the bike's range.
 */
export function riderSetting(bike: Bike, datum: Ride['datum'], rider: Pick<Rider, 'baseOffset'>, total: KnobSteps): Setting {
  const from = datum === 'base' ? bike.base + rider.baseOffset : 0
  return Math.min(bike.max, Math.max(bike.min ?? 0, from + total / bike.stepsPerUnit))
}

/** The rider a ride is judged for: the new one in a beginner class, else the regular one; failing the name, the first or the middle one. */
export function referenceRiderIndex(riders: readonly Rider[], level: Ride['level']): number {
  const id = level === 'beginner' ? 'new' : 'regular'
  const named = riders.findIndex((rider) => rider.id === id)
  if (named >= 0) return named
  return level === 'beginner' ? 0 : Math.floor((riders.length - 1) / 2)
}
