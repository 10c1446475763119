import type { Bike, Leader, Level } from '#plan/model.ts'
import type { Rider } from '#plan/riderModel.ts'

/**
 * The bike of a new ride: a knob of four steps a turn. Watts at 80 rev/min from two turns
 * under its base to four over; common practice, no source, meant to be replaced by the
 * studio's own.
 */
export const DEFAULT_BIKE: Bike = {
  id: 'knob',
  name: 'knob, quarter turns',
  unit: 'turn',
  stepsPerUnit: 4,
  max: 20,
  base: 2,
  brake: 'friction',
  referenceRpm: 80,
  points: [
    [0, 8],
    [1, 22],
    [2, 50],
    [3, 110],
    [4, 170],
    [5, 230],
    [6, 290],
  ],
}

/**
 * A bike whose resistance is read off it in whole levels from 1 to 24. Watts at 80 rev/min;
 * common practice, no source, meant to be replaced by the studio's own.
 */
const LEVELS_BIKE: Bike = {
  id: 'levels',
  name: 'levels 1 to 24',
  unit: 'level',
  stepsPerUnit: 1,
  min: 1,
  max: 24,
  base: 5,
  brake: 'magnetic',
  referenceRpm: 80,
  points: [
    [1, 6],
    [5, 48],
    [8, 95],
    [11, 150],
    [14, 212],
    [18, 300],
    [24, 450],
  ],
}

/** Bikes to begin with: typical ones, with no source. */
export const TYPICAL_BIKES: readonly Bike[] = [DEFAULT_BIKE, LEVELS_BIKE]

/** Three participants of 70 kg the ride is judged for; common practice, no source, editable. */
export const DEFAULT_RIDERS: readonly Rider[] = [
  {
    id: 'new',
    name: 'new rider',
    massKg: 70,
    age: 35,
    vo2max: 32,
    criticalPower: 120,
    wPrime: 10_000,
    restingHr: 70,
    baseOffset: -0.5,
  },
  {
    id: 'regular',
    name: 'regular rider',
    massKg: 70,
    age: 37,
    vo2max: 40,
    criticalPower: 165,
    wPrime: 14_000,
    restingHr: 62,
    baseOffset: 0,
  },
  {
    id: 'strong',
    name: 'strong rider',
    massKg: 70,
    age: 33,
    vo2max: 50,
    criticalPower: 225,
    wPrime: 18_000,
    restingHr: 55,
    baseOffset: 0.5,
  },
]

/** Speaks about 140 words a minute when calm (common practice). */
export const DEFAULT_LEADER: Leader = { id: 'leader', name: 'leader', wordsPerMinute: 140 }

/** Seconds between the end of one song and the next one's first beat (common practice). */
export const DEFAULT_LEAD_IN = 2

export const DEFAULT_LEVEL: Level = 'mixed'
/** Minutes of the most common class. */
export const DEFAULT_SLOT = 45
