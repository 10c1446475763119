import type { Bike } from '#plan/model.ts'

/** Whether two bikes are read and weigh alike, whatever they are called: a total of the one is the same total of the other. */
export const sameScale = (a: Bike, b: Bike): boolean => a === b || scaleOf(a) === scaleOf(b)

const scaleOf = ({ unit, stepsPerUnit, min = 0, max, base, brake, referenceRpm, points }: Bike): string =>
  JSON.stringify([unit, stepsPerUnit, min, max, base, brake, referenceRpm, points])
