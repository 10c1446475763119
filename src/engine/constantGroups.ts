import { CONSTANTS, type ConstantName } from './constants.ts'

interface ConstantGroup {
  title: string
  names: readonly ConstantName[]
}

const GROUPS: readonly ConstantGroup[] = [
  { title: 'cadence', names: ['seatedMinRpm', 'seatedMaxRpm', 'standingMinRpm', 'standingMaxRpm', 'offBeatRpm'] },
  {
    title: 'work and recovery',
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
  { title: 'intent against demand', names: ['intentGap', 'intentGapSeconds'] },
  { title: 'standing and sides', names: ['longestStanding', 'balanceSilentBelow', 'holdsSilentBelow', 'balanceHint', 'balanceWarning'] },
  {
    title: 'resistance',
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
    title: 'warm-up and cool-down',
    names: ['warmUpEffort', 'warmUpShare', 'warmUpMinutes', 'coolDownEffort', 'coolDownShare', 'coolDownMinutes', 'fullClassMinutes'],
  },
  {
    title: 'cues and speech',
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
  { title: 'fit and the room', names: ['fitUnder', 'filledShare', 'startDrift', 'walkSeconds', 'waterSeconds'] },
  { title: 'shape', names: ['strainUp', 'strainDown'] },
]

/** The editable constants in the groups a leader thinks of them in; one that no group names stands under "more". */
export function constantGroups(): readonly ConstantGroup[] {
  const grouped = new Set(GROUPS.flatMap(({ names }) => names))
  const more = (Object.keys(CONSTANTS) as ConstantName[]).filter((name) => CONSTANTS[name].editable && !grouped.has(name))
  return more.length === 0 ? GROUPS : [...GROUPS, { title: 'more', names: more }]
}
