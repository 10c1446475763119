/** What a key does while leading. */
export type LeadKey =
  | 'one'
  | 'next'
  | 'back'
  | 'again'
  | 'hold'
  | 'skipSong'
  | 'breakOff'
  | 'cut'
  | 'other'
  | 'undo'
  | 'screen'
  | 'brief'
  | 'leave'

/** The keys of the leading screen, for the key map. Page-turner pedals send page or arrow keys, space or enter. */
export const LEAD_KEYS = [
  {
    title: 'leading',
    rows: [
      { keys: ['Space', 'Enter'], does: 'the first one; later: on the one now' },
      { keys: ['→', 'Page Down'], does: 'on to the next block; before a song: its one is now' },
      { keys: ['←', 'Page Up'], does: 'this block again; a song’s first block: the song starts now' },
      { keys: ['R'], does: 'the round once more' },
      { keys: ['H'], does: 'hold here, and on again' },
      { keys: ['N'], does: 'skip the rest of the song (press twice)' },
      { keys: ['E'], does: 'end the class here (press twice); the rest counts as skipped' },
      { keys: ['C'], does: 'take the cut that is proposed' },
      { keys: ['X'], does: 'propose another cut' },
      { keys: ['Backspace', 'Ctrl+Z'], does: 'undo the last press; before the first: start over (press twice)' },
      { keys: ['B'], does: 'before class: begin the briefing' },
      { keys: ['F'], does: 'full screen' },
      { keys: ['Escape'], does: 'leave the screen (press twice); the class goes on' },
    ],
  },
] as const

const MEANINGS: Record<string, LeadKey> = {
  ' ': 'one',
  enter: 'one',
  arrowright: 'next',
  arrowdown: 'next',
  pagedown: 'next',
  arrowleft: 'back',
  arrowup: 'back',
  pageup: 'back',
  r: 'again',
  h: 'hold',
  n: 'skipSong',
  e: 'breakOff',
  c: 'cut',
  x: 'other',
  backspace: 'undo',
  f: 'screen',
  b: 'brief',
  escape: 'leave',
}

type Pressed = Pick<KeyboardEvent, 'key' | 'ctrlKey' | 'metaKey' | 'altKey' | 'repeat'>

/** What a press means; nothing for a key held down or one that belongs to the browser. */
export function leadKeyOf({ key, ctrlKey, metaKey, altKey, repeat }: Pressed): LeadKey | null {
  if (repeat || altKey) return null
  if (ctrlKey || metaKey) return key.toLowerCase() === 'z' ? 'undo' : null
  return MEANINGS[key.toLowerCase()] ?? null
}
