import { exactSteps } from '#engine/anotherBike/stepsOfTurns.ts'
import { knobSize } from '#engine/ledger/knobSize.ts'
import type { Bike } from '#plan/model.ts'
import { type Said, say } from '#words/said.ts'
import type { DifficultyFigures, DifficultyPart } from './difficulty.ts'

/** Whether the turns of the figures are the bike's own. */
const isTypical = (bike: Bike): boolean => bike.unit === 'turn' && exactSteps(1, bike, bike.referenceRpm) === bike.stepsPerUnit

/** One part of a difficulty in the trade's words: "jumps on 4", "a recovery of 24 s". */
export function sayReason(part: DifficultyPart, figures: DifficultyFigures, bike: Bike): Said {
  switch (part) {
    case 'hardShare':
      return say('figures.hardShare', { share: figures.hardShare })
    case 'longestHard':
      return say('figures.longestHard', { seconds: figures.longestHard })
    case 'shortestRecovery': {
      const seconds = figures.shortestRecovery ?? 0
      return seconds < 0.5 ? say('figures.noRecovery') : say('figures.shortestRecovery', { seconds })
    }
    case 'changesPerMinute':
      return say('figures.changesPerMinute', { changes: figures.changesPerMinute })
    case 'fastestMove':
      return say('figures.fastestMove', { counts: figures.fastestMove ?? 0 })
    case 'longestStanding':
      return say('figures.longestStanding', { seconds: figures.longestStanding })
    case 'highestTurns':
      return isTypical(bike)
        ? say('figures.highestTurns', { size: knobSize(Math.round(figures.highestTurns * bike.stepsPerUnit), bike) })
        : say('figures.heaviest')
    case 'cadenceOutside':
      return say('figures.cadenceOutside', { rpm: figures.cadenceOutside })
    case 'doubleTimeShare':
      return say('figures.doubleTimeShare', { share: figures.doubleTimeShare })
  }
}
