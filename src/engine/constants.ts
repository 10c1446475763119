import type { Ride } from '#plan/model.ts'

/** One number the engine judges or computes by. What a person reads of it stands in the catalogue under `rules`, by its name and these keys. */
export interface ConstantSpec {
  unit: ConstantUnit
  default: number
  min: number
  max: number
  source: ConstantSource
  /** Physiology and physics are read here but are no studio rule. */
  editable: boolean
}

/** Turns are those of a knob; `times` is how often a hard effort’s own length. */
type ConstantUnit =
  | 'effort'
  | 'seconds'
  | 'minutes'
  | 'times'
  | 'rpm'
  | 'turns'
  | 'percent'
  | 'percentOfClass'
  | 'share'
  | 'accents'
  | 'counts'
  | 'wordsPerSecond'

/**
 * Common practice; an instructor-training body's public position statement; a warm-up of 5 to 10 minutes at least (ACSM's
 * Complete Guide to Fitness & Health); group-exercise teaching; a fit to a general speech synthesizer; Hunt et al. 2019; 140 words per minute.
 */
type ConstantSource = 'practice' | 'statement' | 'session' | 'teaching' | 'voice' | 'hunt' | 'calmSpeech'

const rule = (unit: ConstantUnit, value: number, min: number, max: number, source: ConstantSource = 'practice'): ConstantSpec => ({
  unit,
  default: value,
  min,
  max,
  source,
  editable: true,
})

/** Every constant of the engine by name, with its unit, default, bounds and source. */
export const CONSTANTS = {
  workEffort: rule('effort', 7, 1, 10),
  easyEffort: rule('effort', 4, 0, 9),
  hardEffort: rule('effort', 8, 1, 10),
  recoveryEffort: rule('effort', 5, 0, 9),
  hardestEffort: rule('effort', 9, 1, 10),
  shortBoutSeconds: rule('seconds', 20, 5, 120),
  recoveryShort: rule('times', 2, 0, 20),
  recoveryLong: rule('times', 1.5, 0, 20),
  recoveryHard: rule('times', 1, 0, 20),
  recoveryFloorBeginner: rule('seconds', 45, 0, 300),
  recoveryFloorMixed: rule('seconds', 30, 0, 300),
  recoveryFloorAdvanced: rule('seconds', 15, 0, 300),
  intentGap: rule('effort', 1.5, 0.5, 5),
  intentGapSeconds: rule('seconds', 15, 0, 120),
  seatedMinRpm: rule('rpm', 60, 30, 110, 'statement'),
  seatedMaxRpm: rule('rpm', 110, 60, 160, 'statement'),
  standingMinRpm: rule('rpm', 60, 30, 110, 'statement'),
  standingMaxRpm: rule('rpm', 85, 60, 160, 'statement'),
  largestAdded: rule('turns', 1.5, 0.25, 10),
  easyTotalEffort: rule('effort', 3, 0, 9),
  easyTotal: rule('turns', 0.75, 0, 10),
  endTotal: rule('turns', 0.5, 0, 10),
  standingTotal: rule('turns', 1, 0, 10),
  moveTotal: rule('turns', 1, 0, 10),
  pushTotal: rule('turns', 1, 0, 10),
  fastLegsRpm: rule('rpm', 100, 60, 160),
  fastLegsTotal: rule('turns', 0.25, 0, 10),
  spreadTotal: rule('turns', 3, 0.5, 20),
  spreadSeconds: rule('seconds', 240, 10, 1800),
  longestStanding: rule('seconds', 300, 30, 1800),
  warmUpEffort: rule('effort', 7, 2, 10),
  coolDownEffort: rule('effort', 3, 0, 6),
  warmUpShare: rule('percent', 12, 0, 50, 'session'),
  coolDownShare: rule('percent', 9, 0, 50, 'session'),
  warmUpMinutes: rule('minutes', 5, 0, 30, 'session'),
  coolDownMinutes: rule('minutes', 5, 0, 30, 'session'),
  fullClassMinutes: rule('minutes', 45, 10, 120, 'session'),
  workShareBeginner: rule('percent', 10, 0, 100),
  workShareMixed: rule('percent', 30, 0, 100),
  workShareAdvanced: rule('percent', 45, 0, 100),
  balanceSilentBelow: rule('accents', 8, 1, 200),
  holdsSilentBelow: rule('seconds', 60, 1, 1_800),
  balanceHint: rule('share', 0.25, 0, 1),
  balanceWarning: rule('share', 0.5, 0, 1),
  offBeatRpm: rule('rpm', 3, 0, 60),
  walkSeconds: rule('seconds', 60, 10, 600),
  waterSeconds: rule('seconds', 1200, 120, 3600),
  startDrift: rule('seconds', 90, 0, 600),
  fitUnder: rule('seconds', 20, 0, 600),
  filledShare: rule('percentOfClass', 80, 0, 100),
  strainUp: rule('seconds', 40, 5, 300),
  strainDown: rule('seconds', 70, 5, 300),
  heartRateTau: { ...rule('seconds', 69, 69, 69, 'hunt'), editable: false },
  previewCounts: rule('counts', 32, 4, 128),
  announceCounts: rule('counts', 8, 2, 64),
  announceCountsMost: rule('counts', 16, 2, 64),
  announceSeconds: rule('seconds', 8, 2, 60),
  countInCounts: rule('counts', 4, 4, 8),
  wordsEndMove: rule('counts', 2, 0, 16, 'teaching'),
  wordsEndPosture: rule('counts', 4, 0, 16, 'teaching'),
  wordsEndResistance: rule('counts', 8, 0, 32, 'teaching'),
  wordsPerSecond: rule('wordsPerSecond', 2.3, 1, 5, 'calmSpeech'),
  wordsPerSecondWorking: rule('wordsPerSecond', 1.8, 0.5, 5),
  wordsPerSecondHard: rule('wordsPerSecond', 1.5, 0.5, 5),
  workingStrain: rule('effort', 7, 0, 10),
  breathlessStrain: rule('effort', 8.5, 0, 10),
  syllableSeconds: rule('seconds', 0.08, 0, 1, 'voice'),
  consonantSeconds: rule('seconds', 0.09, 0, 1, 'voice'),
  stopPause: rule('seconds', 0.66, 0, 5, 'voice'),
  commaPause: rule('seconds', 0.44, 0, 5, 'voice'),
  drawnOut: rule('seconds', 0.23, 0, 2, 'voice'),
  speechPause: rule('seconds', 0.4, 0, 5),
  talkSeconds: rule('seconds', 15, 1, 30),
  talkWindow: rule('seconds', 30, 10, 120),
} as const satisfies Record<string, ConstantSpec>

export type ConstantName = keyof typeof CONSTANTS
export type Constants = Record<ConstantName, number>

const NAMES = Object.keys(CONSTANTS) as ConstantName[]
const DEFAULTS = Object.fromEntries(NAMES.map((name) => [name, CONSTANTS[name].default])) as Constants

/** The constants of a ride: the defaults with its house rules put over them. Unknown names, constants that are not editable and values outside their bounds are left aside. */
export function constantsOf(ride: Pick<Ride, 'houseRules'>): Constants {
  const { houseRules } = ride
  if (!houseRules) return DEFAULTS
  const rules = { ...DEFAULTS }
  for (const name of NAMES) {
    const value = Object.hasOwn(houseRules, name) ? houseRules[name] : undefined
    if (value !== undefined && isAllowed(CONSTANTS[name], value)) rules[name] = value
  }
  return rules
}

const isAllowed = (spec: ConstantSpec, value: number): boolean => spec.editable && value >= spec.min && value <= spec.max
