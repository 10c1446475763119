import type { NameKey, Voice } from '#engine/roughIn/words/voice.ts'

const NAMES: Readonly<Record<NameKey, string>> = {
  lowHill: 'kleiner Berg',
  seatedClimb: 'Berg im Sitzen',
  standingClimb: 'Berg im Stehen',
  hoverClimb: 'Berg im Hover',
  hover: 'Hover',
  standingFlat: 'Flachstück im Stehen',
  standingRun: 'Laufen im Stehen',
  easyFlat: 'lockeres Flachstück',
  flat: 'Flachstück',
  briskFlat: 'zügiges Flachstück',
  strongFlat: 'kräftiges Flachstück',
  steadyFlat: 'gleichmäßiges Flachstück',
  tempo: 'Tempo',
  seatedHold: 'Halten im Sitzen',
  standingHold: 'Halten im Stehen',
  recover: 'Erholung',
  rollOut: 'Ausrollen',
  stretch: 'Dehnen',
  jumps: 'Jumps',
  push: 'Push',
  standingPush: 'Push im Stehen',
  surge: 'Antritt',
  standingSurge: 'Antritt im Stehen',
}

/** What rounds of a block are called; another is called as it is. */
const ROUNDS: Partial<Readonly<Record<NameKey, string>>> = {
  push: 'Pushes',
  standingPush: 'Pushes im Stehen',
  surge: 'Antritte',
  standingSurge: 'Antritte im Stehen',
  seatedClimb: 'Berge im Sitzen',
  standingClimb: 'Berge im Stehen',
}

/** A move by what it is looked up by: one of it, and several. */
const MOVES: Readonly<Record<string, readonly [one: string, many: string]>> = {
  jump: ['Jump', 'Jumps'],
  'side lean': ['Seitneigung', 'Seitneigungen'],
  press: ['Liegestütz', 'Liegestütze'],
  corner: ['Ecke', 'Ecken'],
  'travel-back': ['Travel-Back', 'Travel-Backs'],
}

/** Several of a move. */
export const moves = (move: string): string => MOVES[move]?.[1] ?? move

export const names: Voice['names'] = {
  block: (name) => NAMES[name],
  rounds: (name) => ROUNDS[name] ?? NAMES[name],
  move: (move, counts) => (counts === undefined ? moves(move) : `${moves(move)} auf ${counts}`),
}
