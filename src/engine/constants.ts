import type { Ride } from '#plan/model.ts'

/** One number the engine judges or computes by, as a screen needs it to explain and edit it. */
export interface ConstantSpec {
  label: string
  unit: string
  default: number
  min: number
  max: number
  source: string
  /** Physiology and physics are read here but are no house rule. */
  editable: boolean
}

const PRACTICE = 'common practice'
const STATEMENT = "an instructor-training body's public position statement; rooms differ"
const SESSION = 'common practice; ACSM’s Complete Guide to Fitness & Health: a warm-up of 5–10 min at least'
const WORDS_END = 'group-exercise teaching; common practice'
const VOICE = 'fitted to a general speech synthesiser at 140 words a minute'
const HUNT = 'Hunt et al. 2019: 68.7 ± 21.5 s, cycling near 13 on the 6–20 scale'

const rule = (label: string, unit: string, value: number, min: number, max: number, source = PRACTICE): ConstantSpec => ({
  label,
  unit,
  default: value,
  min,
  max,
  source,
  editable: true,
})

/** Every constant of the engine by name, with its unit, default, bounds and source. */
export const CONSTANTS = {
  workEffort: rule('work starts at effort', 'effort', 7, 1, 10),
  easyEffort: rule('easy is effort up to', 'effort', 4, 0, 9),
  hardEffort: rule('a hard bout starts at effort', 'effort', 8, 1, 10),
  recoveryEffort: rule('a recovery is effort up to', 'effort', 5, 0, 9),
  hardestEffort: rule('the longer recoveries start at effort', 'effort', 9, 1, 10),
  shortBoutSeconds: rule('a short hardest bout lasts up to', 's', 20, 5, 120),
  recoveryShort: rule('recovery after a short hardest bout', '× the bout', 2, 0, 20),
  recoveryLong: rule('recovery after a longer hardest bout', '× the bout', 1.5, 0, 20),
  recoveryHard: rule('recovery after a hard bout', '× the bout', 1, 0, 20),
  recoveryFloorBeginner: rule('least recovery, beginner', 's', 45, 0, 300),
  recoveryFloorMixed: rule('least recovery, mixed', 's', 30, 0, 300),
  recoveryFloorAdvanced: rule('least recovery, advanced', 's', 15, 0, 300),
  intentGap: rule('demand may differ from intent by', 'effort', 1.5, 0.5, 5),
  intentGapSeconds: rule('for at most', 's', 15, 0, 120),
  seatedMinRpm: rule('slowest seated cadence', 'rev/min', 60, 30, 110, STATEMENT),
  seatedMaxRpm: rule('fastest seated cadence', 'rev/min', 110, 60, 160, STATEMENT),
  standingMinRpm: rule('slowest standing cadence', 'rev/min', 60, 30, 110, STATEMENT),
  standingMaxRpm: rule('fastest standing cadence', 'rev/min', 85, 60, 160, STATEMENT),
  largestAdded: rule('largest added change in one call', 'turns', 1.5, 0.25, 10),
  easyTotalEffort: rule('a total is kept light up to effort', 'effort', 3, 0, 9),
  easyTotal: rule('total over base for easy effort, at most', 'turns', 0.75, 0, 10),
  endTotal: rule('total over base at the end, at most', 'turns', 0.5, 0, 10),
  standingTotal: rule('total over base to stand on, at least', 'turns', 1, 0, 10),
  moveTotal: rule('total over base for jumps and moves out of the saddle, at least', 'turns', 1, 0, 10),
  pushTotal: rule('total over base for pushes and surges, at least', 'turns', 1, 0, 10),
  fastLegsRpm: rule('fast legs start at', 'rev/min', 100, 60, 160),
  fastLegsTotal: rule('total over base for fast legs, at least', 'turns', 0.25, 0, 10),
  spreadTotal: rule('riders are far apart from', 'turns', 3, 0.5, 20),
  spreadSeconds: rule('and stay so for', 's', 240, 10, 1800),
  longestStanding: rule('longest standing', 's', 300, 30, 1800),
  warmUpEffort: rule('the warm-up ends at effort', 'effort', 7, 2, 10),
  coolDownEffort: rule('the cool-down is effort up to', 'effort', 3, 0, 6),
  warmUpShare: rule('warm-up, share of the class', '%', 12, 0, 50, SESSION),
  coolDownShare: rule('cool-down, share of the class', '%', 9, 0, 50, SESSION),
  warmUpMinutes: rule('warm-up of a full class', 'min', 5, 0, 30, SESSION),
  coolDownMinutes: rule('cool-down of a full class', 'min', 5, 0, 30, SESSION),
  fullClassMinutes: rule('a full class starts at', 'min', 45, 10, 120, SESSION),
  workShareBeginner: rule('share of work, beginner, at most', '%', 10, 0, 100),
  workShareMixed: rule('share of work, mixed, at most', '%', 30, 0, 100),
  workShareAdvanced: rule('share of work, advanced, at most', '%', 45, 0, 100),
  balanceSilentBelow: rule('accents before balance is judged', 'accents', 8, 1, 200),
  holdsSilentBelow: rule('one-sided holds before they are judged', 's', 60, 1, 1_800),
  balanceHint: rule('imbalance that earns a hint', 'share', 0.25, 0, 1),
  balanceWarning: rule('imbalance that earns a warning', 'share', 0.5, 0, 1),
  offBeatRpm: rule('off the beat by more than', 'rev/min', 3, 0, 60),
  walkSeconds: rule('walking the room takes at least', 's', 60, 10, 600),
  waterSeconds: rule('longest ride without a drink', 's', 1200, 120, 3600),
  startDrift: rule('time lost at the start', 's', 90, 0, 600),
  fitUnder: rule('under the slot, at most', 's', 20, 0, 600),
  filledShare: rule('the class is judged as a whole from', '% of its slot', 80, 0, 100),
  strainUp: rule('strain rises with time constant', 's', 40, 5, 300),
  strainDown: rule('strain falls with time constant', 's', 70, 5, 300),
  heartRateTau: { ...rule('heart-rate time constant', 's', 69, 69, 69, HUNT), editable: false },
  previewCounts: rule('preview before a new song, set or hard bout', 'counts', 32, 4, 128),
  announceCounts: rule('announce at least', 'counts', 8, 2, 64),
  announceCountsMost: rule('announce at most', 'counts', 16, 2, 64),
  announceSeconds: rule('announce off the beat', 's', 8, 2, 60),
  countInCounts: rule('count-in', 'counts', 4, 4, 8),
  wordsEndMove: rule('words end before a move', 'counts', 2, 0, 16, WORDS_END),
  wordsEndPosture: rule('words end before a posture', 'counts', 4, 0, 16, WORDS_END),
  wordsEndResistance: rule('words end before resistance and posture', 'counts', 8, 0, 32, WORDS_END),
  wordsPerSecond: rule('speech, calm', 'words/s', 2.3, 1, 5, 'common practice (140 words/min)'),
  wordsPerSecondWorking: rule('speech when working', 'words/s', 1.8, 0.5, 5),
  wordsPerSecondHard: rule('speech when breathless', 'words/s', 1.5, 0.5, 5),
  workingStrain: rule('speech slows at strain', 'effort', 7, 0, 10),
  breathlessStrain: rule('speech slows again at strain', 'effort', 8.5, 0, 10),
  syllableSeconds: rule('a syllable takes, at 140 words/min', 's', 0.08, 0, 1, VOICE),
  consonantSeconds: rule('and each of its consonants', 's', 0.09, 0, 1, VOICE),
  stopPause: rule('pause at a full stop, at 140 words/min', 's', 0.66, 0, 5, VOICE),
  commaPause: rule('pause at a comma, at 140 words/min', 's', 0.44, 0, 5, VOICE),
  drawnOut: rule('the end of words is drawn out by, at 140 words/min', 's', 0.23, 0, 2, VOICE),
  speechPause: rule('pause after words', 's', 0.4, 0, 5),
  talkSeconds: rule('speech, at most', 's', 15, 1, 30),
  talkWindow: rule('in any', 's', 30, 10, 120),
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
