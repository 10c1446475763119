import type { NameKey, Voice } from '#engine/roughIn/words/voice.ts'

const NAMES: Readonly<Record<NameKey, string>> = {
  lowHill: 'low hill',
  seatedClimb: 'seated climb',
  standingClimb: 'standing climb',
  hoverClimb: 'hover climb',
  hover: 'hover',
  standingFlat: 'standing flat',
  standingRun: 'standing run',
  easyFlat: 'easy flat',
  flat: 'flat',
  briskFlat: 'brisk flat',
  strongFlat: 'strong flat',
  steadyFlat: 'steady flat',
  tempo: 'tempo',
  seatedHold: 'seated hold',
  standingHold: 'standing hold',
  recover: 'recover',
  rollOut: 'roll out',
  stretch: 'stretch',
  jumps: 'jumps',
  push: 'push',
  standingPush: 'standing push',
  surge: 'surge',
  standingSurge: 'standing surge',
}

export const plural = (name: string): string => (/(?:s|sh|ch|x)$/.test(name) ? `${name}es` : `${name}s`)

export const names: Voice['names'] = {
  block: (name) => NAMES[name],
  rounds: (name) => plural(NAMES[name]),
  move: (move, counts) => (counts === undefined ? plural(move) : `${plural(move)} on ${counts}`),
}
