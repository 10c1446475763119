import { clock, duration, number, percent, plural } from '#words/forms.ts'

/** Rehearsing a ride: the bar that plays it, what it says, and how it likes to be heard. */

const BETWEEN = {
  briefing: 'welcome',
  leadIn: 'before beat 1',
  openTail: 'nothing planned',
  clearUp: 'wipe-down',
  finished: 'the end',
}

/** What parts of a song are called (common practice). */
const PARTS = { intro: 'intro', verse: 'verse', build: 'build', chorus: 'chorus', drop: 'drop', break: 'break', end: 'end' }

export const rehearsing = {
  bar: 'rehearse',
  caution:
    'Learn the ride off the bike, then ride it. Keep the music low enough to talk over: loud sound harms hearing, in headphones too.',
  understood: 'got it',

  // What is going on.
  opening: 'Opening the music.',
  playing: ({ what }: { what: string }) => `Playing ${what}.`,
  ready: ({ what }: { what: string }) => `Ready to play ${what}.`,
  looped: ({ name }: { name: string }) => `${name} in a loop`,
  marked: 'the marked blocks',
  ride: 'the ride',
  waiting: 'The next song waits for you.',
  endOfMarked: 'That’s all the marked blocks.',
  endOfRide: 'End of ride.',
  notPlayed: ({ name }: { name: string }) => `${name} can’t be played: its file is gone or can’t be read. Beats click instead.`,
  /** A song that nobody knows by name. */
  aSong: 'A song',
  noSound: 'No sound from this browser right now.',

  // What is ridden now.
  clock: ({ at, total }: { at: number; total: number }) => `${clock(at)} of ${clock(total)}`,
  secondsLeft: 'seconds left',
  eight: ({ at, of, unit }: { at: number; of: number; unit: number }) => `${unit === 6 ? 'six' : 'eight'} ${number(at)} of ${number(of)}`,
  between: ({ phase }: { phase: keyof typeof BETWEEN }) => BETWEEN[phase],
  countIn: 'Count in.',
  thenEnd: 'then the end',
  thenInCounts: ({ name, call, counts }: { name: string; call: string; counts: number }) =>
    `then ${name}, ${call}, in ${plural(counts, 'count', 'counts')}`,
  thenIn: ({ name, call, seconds }: { name: string; call: string; seconds: number }) => `then ${name}, ${call}, in ${duration(seconds)}`,

  // The marked blocks.
  markedBlocks: 'blocks that need practice',
  unmark: ({ name }: { name: string }) => `${name}: I’ve got it, clear the mark`,
  part: ({ part }: { part: keyof typeof PARTS }) => PARTS[part],

  // Sound and voice.
  speed: 'speed',
  speedOf: ({ speed }: { speed: number }) => percent(speed),
  songs: 'songs',
  clicks: 'clicks',
  clickOverSongs: 'click on every beat over the songs, too',
  tick: 'tick each second where there is no beat',
  waits: 'wait for me at each song',
  soundNote: ({ full }: { full: number }) =>
    `Where a song’s file isn’t at hand, its beats click alone. At any speed but ${percent(full)}, songs also sound higher or lower.`,
  noVoice: 'This browser has no voice to speak cues with.',
  speakCues: 'speak the cues',
  voice: 'voice',
  browserVoice: 'the browser’s own',
}
