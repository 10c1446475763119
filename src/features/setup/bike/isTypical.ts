import { DEFAULT_BIKE } from '#plan/defaults.ts'
import type { Bike } from '#plan/model.ts'

/** Whether a bike's watts are the typical ones, which nobody measured. */
export const isTypical = ({ points }: Pick<Bike, 'points'>): boolean => JSON.stringify(points) === JSON.stringify(DEFAULT_BIKE.points)
