import type { Rider } from '#plan/model.ts'

/**
 * Highest heart rate expected at an age, in beats a minute; all such lines are off by about
 * ten either way, and read about five high in a sample of women.
 * Source: Tanaka H, Monahan KD, Seals DR, J Am Coll Cardiol 2001;37(1):153-156.
 */
export const heartMaximum = (age: number): number => 208 - 0.7 * age

/** Another line through longitudinal data: Gellish RL et al., Med Sci Sports Exerc 2007;39(5):822-829. */
export const heartMaximumGellish = (age: number): number => 206.9 - 0.67 * age

/** The old rule of thumb, which no study stands behind: Fox SM et al., Ann Clin Res 1971;3:404-432. */
export const heartMaximumFox = (age: number): number => 220 - age

/** A rider's own measured maximum, else the one expected at their age. */
export const maximumOf = (rider: Pick<Rider, 'age' | 'maxHr'>): number => rider.maxHr ?? heartMaximum(rider.age)
