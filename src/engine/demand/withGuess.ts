import type { Bike } from '#plan/model.ts'
import { type BrakeGuess, kindOf } from './calibrateBrake.ts'

/** A bike with what readings say of its brake; as it was where they say nothing. */
export function withGuess(bike: Bike, { brake, fit }: Pick<BrakeGuess, 'brake' | 'fit'>): Bike {
  if (fit === null && brake === null) return bike
  const { brakeFit: _before, ...rest } = bike
  if (fit === null) return { ...rest, brake: brake ?? bike.brake }
  return { ...rest, brake: brake ?? kindOf(fit.exponent), brakeFit: fit }
}
