import type { Bike } from '#plan/model.ts'
import type { Fault, Rule } from './rule.ts'

/** Lowest, base and highest setting are whole steps in that order; calibration points rise. */
export const bikeInOrder: Rule = ({ bike }) => bikeFaults(bike)

/** The same of a bike by itself. */
export const bikeFaults = (bike: Bike): Fault[] => [...wholeSteps(bike), ...settingsInOrder(bike), ...pointsRise(bike)]

function wholeSteps(bike: Bike): Fault[] {
  return (['min', 'base', 'max'] as const).flatMap((key) => {
    const setting = bike[key]
    if (setting === undefined || isWhole(setting * bike.stepsPerUnit)) return []
    return [{ path: ['bike', key], wrong: { problem: 'wholeSteps', setting, stepsPerUnit: bike.stepsPerUnit } }]
  })
}

function settingsInOrder({ min = 0, base, max }: Bike): Fault[] {
  if (max <= min) return [{ path: ['bike', 'max'], wrong: { problem: 'settingsCrossed', low: min, high: max } }]
  if (base < min || base > max) return [{ path: ['bike', 'base'], wrong: { problem: 'baseOutside', low: min, high: max }, found: base }]
  return []
}

function pointsRise({ points }: Bike): Fault[] {
  return points.slice(1).flatMap((point, i) => {
    const before = points[i]!
    const rises = point[0] > before[0] && point[1] >= before[1]
    return rises ? [] : [{ path: ['bike', 'points', i + 1], wrong: { problem: 'pointsNotRising' } }]
  })
}

/** Whole but for the last bits: 0.29 × 100 is not 29 in binary fractions. */
const isWhole = (value: number) => Math.abs(value - Math.round(value)) < 1e-9
