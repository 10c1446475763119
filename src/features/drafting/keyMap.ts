/** The keys of the stage, for the key map. Each row is also what its handler in stageKeys.ts does. */
export const DRAFT_KEYS = [
  {
    title: 'getting about',
    rows: [
      { keys: ['←', '→'], does: 'the block or song before, after' },
      { keys: ['↑', '↓'], does: 'from blocks to their song, and back' },
      { keys: ['Home', 'End'], does: 'the first, the last' },
      { keys: ['Shift+←', 'Shift+→'], does: 'select more' },
      { keys: ['Space'], does: 'add to the selection, or take out' },
      { keys: ['Enter'], does: 'details of the selection' },
      { keys: ['Escape'], does: 'select nothing; let go of a drag' },
    ],
  },
  {
    title: 'changing',
    rows: [
      { keys: ['Alt+←', 'Alt+→'], does: 'move by one place, also into a set and out of it' },
      { keys: ['Alt+Shift+←', 'Alt+Shift+→'], does: 'move to the song before, after' },
      { keys: ['+', '−'], does: 'longer, shorter by an eight (5 s without music)' },
      { keys: ['Alt++', 'Alt+−'], does: 'longer, shorter by a count (1 s without music)' },
      { keys: ['Alt+↑', 'Alt+↓'], does: 'more, less effort' },
      { keys: ['D'], does: 'duplicate' },
      { keys: ['S'], does: 'split in the middle' },
      { keys: ['J'], does: 'join with the next block' },
      { keys: ['G'], does: 'group into a set of rounds' },
      { keys: ['U'], does: 'ungroup a set' },
      { keys: ['C'], does: 'cut the section in two, before this' },
      { keys: ['Delete'], does: 'delete' },
    ],
  },
  {
    title: 'rehearsing',
    rows: [
      { keys: ['P'], does: 'play from the selection, pause, and on again' },
      { keys: ['Space'], does: 'the same, where nothing else has a use for it' },
      { keys: ['N'], does: 'the next block; of the shaky ones the next' },
      { keys: ['B'], does: 'this block again; in its first eight the one before' },
      { keys: ['R'], does: 'repeat this block, and on again' },
      { keys: ['X'], does: 'mark this block as shaky, or take the mark away' },
      { keys: ['M'], does: 'mark the song here, as the mark before' },
    ],
  },
  {
    title: 'the view',
    rows: [
      { keys: ['F'], does: 'fit the song to the stage' },
      { keys: ['0'], does: 'fit the whole ride' },
      { keys: ['Ctrl+wheel'], does: 'zoom at the pointer' },
    ],
  },
] as const
