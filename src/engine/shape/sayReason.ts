import { exactSteps } from '#engine/anotherBike/stepsOfTurns.ts'
import { amountOfKnob } from '#engine/ledger/amountOfKnob.ts'
import type { Bike } from '#plan/model.ts'
import { formatDuration } from '#units/formatDuration.ts'
import { formatNumber } from '#units/formatNumber.ts'
import type { DifficultyFigures, DifficultyPart } from './difficulty.ts'

/** Whether the turns of the figures are the bike's own. */
const isTypical = (bike: Bike): boolean => bike.unit === 'turn' && exactSteps(1, bike, bike.referenceRpm) === bike.stepsPerUnit

/** One part of a difficulty in the trade's words: "jumps on 4", "a recovery of 24 s". */
export function sayReason(part: DifficultyPart, figures: DifficultyFigures, bike: Bike): string {
  const percent = (share: number) => `${Math.round(100 * share)} %`
  switch (part) {
    case 'hardShare':
      return `${percent(figures.hardShare)} of the time at hard effort`
    case 'longestHard':
      return `a hard bout of ${formatDuration(figures.longestHard)}`
    case 'shortestRecovery':
      return (figures.shortestRecovery ?? 0) < 0.5
        ? 'a hard bout with no recovery'
        : `a recovery of ${formatDuration(figures.shortestRecovery ?? 0)}`
    case 'changesPerMinute':
      return `${formatNumber(figures.changesPerMinute, 1)} changes of posture or move a minute`
    case 'fastestMove':
      return `a move on ${figures.fastestMove} counts`
    case 'longestStanding':
      return `${formatDuration(figures.longestStanding)} of standing`
    case 'highestTurns':
      return isTypical(bike)
        ? `a total of ${amountOfKnob(Math.round(figures.highestTurns * bike.stepsPerUnit), bike)} over base`
        : 'the heaviest total'
    case 'cadenceOutside':
      return `legs ${formatNumber(figures.cadenceOutside, 0)} rev/min outside their range`
    case 'doubleTimeShare':
      return `${percent(figures.doubleTimeShare)} in double time`
  }
}
