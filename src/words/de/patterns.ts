import type { en } from '#words/en/index.ts'

const NAMES = {
  flat: 'Flachstück',
  'standing-flat': 'Flachstück im Stehen',
  'seated-hill': 'Berg im Sitzen',
  'standing-hill': 'Berg im Stehen',
  hover: 'Hover',
  hold: 'Halten',
  'jumps-16': 'Jumps auf 16',
  'jumps-8': 'Jumps auf 8',
  'jumps-4': 'Jumps auf 4',
  push: 'Push',
  run: 'Laufen im Stehen',
  leans: 'Seitneigungen',
  presses: 'Liegestütze',
  corners: 'Ecken',
  'travel-backs': 'Travel-Backs',
  tempo: 'Tempo',
  surge: 'Antritt',
  'standing-surge': 'Antritt im Stehen',
  recover: 'Erholung',
  flush: 'Ausrollen',
  stretch: 'Dehnen',
}

export const patterns: typeof en.patterns = {
  name: ({ pattern }) => NAMES[pattern],
}
