import { CONSTANTS, type ConstantName } from './constants.ts'

/** What a group is about; its words stand in the catalogue under `rules`. */
type GroupName = 'cadence' | 'work' | 'gap' | 'sides' | 'resistance' | 'ends' | 'speech' | 'fit' | 'shape' | 'more'

interface ConstantGroup {
  group: GroupName
  names: readonly ConstantName[]
}

const GROUPS: readonly ConstantGroup[] = [
  { group: 'cadence', names: ['seatedMinRpm', 'seatedMaxRpm', 'standingMinRpm', 'standingMaxRpm', 'offBeatRpm'] },
  {
    group: 'work',
    names: [
      'workEffort',
      'easyEffort',
      'hardEffort',
      'recoveryEffort',
      'hardestEffort',
      'shortBoutSeconds',
      'recoveryShort',
      'recoveryLong',
      'recoveryHard',
      'recoveryFloorBeginner',
      'recoveryFloorMixed',
      'recoveryFloorAdvanced',
      'workShareBeginner',
      'workShareMixed',
      'workShareAdvanced',
    ],
  },
  { group: 'gap', names: ['intentGap', 'intentGapSeconds'] },
  { group: 'sides', names: ['longestStanding', 'balanceSilentBelow', 'holdsSilentBelow', 'balanceHint', 'balanceWarning'] },
  {
    group: 'resistance',
    names: [
      'largestAdded',
      'easyTotalEffort',
      'easyTotal',
      'endTotal',
      'standingTotal',
      'moveTotal',
      'pushTotal',
      'fastLegsRpm',
      'fastLegsTotal',
      'spreadTotal',
      'spreadSeconds',
    ],
  },
  {
    group: 'ends',
    names: ['warmUpEffort', 'warmUpShare', 'warmUpMinutes', 'coolDownEffort', 'coolDownShare', 'coolDownMinutes', 'fullClassMinutes'],
  },
  {
    group: 'speech',
    names: [
      'previewCounts',
      'announceCounts',
      'announceCountsMost',
      'announceSeconds',
      'countInCounts',
      'wordsEndMove',
      'wordsEndPosture',
      'wordsEndResistance',
      'wordsPerSecond',
      'wordsPerSecondWorking',
      'wordsPerSecondHard',
      'workingStrain',
      'breathlessStrain',
      'syllableSeconds',
      'consonantSeconds',
      'stopPause',
      'commaPause',
      'drawnOut',
      'speechPause',
      'talkSeconds',
      'talkWindow',
    ],
  },
  { group: 'fit', names: ['fitUnder', 'filledShare', 'startDrift', 'walkSeconds', 'waterSeconds'] },
  { group: 'shape', names: ['strainUp', 'strainDown'] },
]

/** The editable constants in the groups an instructor thinks of them in; one that no group names stands under `more`. */
export function constantGroups(): readonly ConstantGroup[] {
  const grouped = new Set(GROUPS.flatMap(({ names }) => names))
  const more = (Object.keys(CONSTANTS) as ConstantName[]).filter((name) => CONSTANTS[name].editable && !grouped.has(name))
  return more.length === 0 ? GROUPS : [...GROUPS, { group: 'more', names: more }]
}
