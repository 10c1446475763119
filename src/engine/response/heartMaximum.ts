import type { Rider } from '#plan/riderModel.ts'

/**
 * Highest heart rate expected at an age, in beats a minute; all such lines are off by about
 * ten either way, and read about five high in a sample of women.
 * Source: Tanaka H, Monahan KD, Seals DR, J Am Coll Cardiol 2001;37(1):153-156.
 */
const heartMaximum = (age: number): number => 208 - 0.7 * age

/** A rider's own measured maximum, else the one expected at their age. */
export const maximumOf = (rider: Pick<Rider, 'age' | 'maxHr'>): number => rider.maxHr ?? heartMaximum(rider.age)
