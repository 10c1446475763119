import { TYPICAL_BIKES } from '#plan/defaults.ts'

/** The typical bike whose resistance is read off it in whole levels. */
export const LEVELS_BIKE = TYPICAL_BIKES.find(({ id }) => id === 'levels')!
