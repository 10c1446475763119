/** Blocks to start from, as the page names them: in the tray, its tips, and while one is dragged. */

const NAMES = {
  flat: 'flat',
  'standing-flat': 'standing flat',
  'seated-hill': 'seated climb',
  'standing-hill': 'standing climb',
  hover: 'hover',
  hold: 'hold',
  'jumps-16': 'jumps on 16',
  'jumps-8': 'jumps on 8',
  'jumps-4': 'jumps on 4',
  push: 'push',
  run: 'standing run',
  leans: 'side leans',
  presses: 'presses',
  corners: 'corners',
  'travel-backs': 'travel-backs',
  tempo: 'tempo',
  surge: 'surge',
  'standing-surge': 'standing surge',
  recover: 'recover',
  flush: 'flush',
  stretch: 'stretch',
}

export const patterns = {
  name: ({ pattern }: { pattern: keyof typeof NAMES }) => NAMES[pattern],
}
