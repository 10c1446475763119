import { clock, number, plural } from '#words/forms.ts'

/** Blocks somebody keeps to use again, and rides made from a ride. */
export const ownPatterns = {
  // Keeping.
  keep: 'save as pattern',
  keepDo: 'save as a pattern: blocks, sets, or a whole song’s blocks, to use again',
  apart: 'A pattern is made of blocks that stand side by side in one song.',
  tooMany: ({ most }: { most: number }) => `A pattern holds at most ${number(most)} blocks and sets.`,
  full: ({ most }: { most: number }) => `You have ${number(most)} patterns, the most this page keeps. Delete one first.`,
  notHere: 'Nothing can be saved in this window.',
  title: 'save as a pattern',
  about: 'Cues, moves, effort, and lengths are saved as they are. Resistance is saved as a shape: so much over what riders come in with.',
  name: 'name',
  save: 'save',
  cancel: 'cancel',
  nameless: 'Give it a name.',
  tooLong: ({ most }: { most: number }) => `A name has at most ${number(most)} characters.`,
  taken: ({ name }: { name: string }) => `You already have a pattern called “${name}”.`,

  // In the tray.
  mine: 'my patterns',
  edit: 'edit my patterns',
  done: 'done',
  find: 'find a pattern',
  noneFound: 'No pattern has that name.',
  add: ({ name }: { name: string }) => `add “${name}”`,
  addDo: ({ name, items }: { name: string; items: number }) => `add “${name}” after the selection: ${plural(items, 'block', 'blocks')}`,
  rename: ({ name }: { name: string }) => `name of ${name}`,
  delete: 'delete',
  deleteNamed: ({ name }: { name: string }) => `delete ${name}`,
  deleted: ({ name }: { name: string }) => `Deleted the pattern “${name}”.`,
  undo: 'undo',

  // What was changed to make it fit.
  bySeconds: 'There’s no beat here, so its counts became seconds.',
  byCounts: 'Its seconds became whole eights of this song.',
  lowered: 'Lowered as a whole, to stay on the knob.',
  raised: 'Raised as a whole, to stay at base or above.',

  // A ride made from another.
  newFromThis: 'new ride from this',
  newFromThisDo: 'start another ride from this one, with or without its songs',
  startFrom: 'new from this',
  startFromRide: ({ title }: { title: string }) => `new ride from ${title}`,
  newTitle: 'a new ride from this one',
  newAbout: ({ title }: { title: string }) =>
    `From “${title}”. The new ride has its own name, no start time, and no log; the old one stays as it is.`,
  rideTitle: 'title',
  what: 'what comes along',
  withSongs: 'songs and blocks',
  blocksOnly: 'blocks only',
  blocksOnlyHint: 'Songs are left out. Each leaves its blocks by the clock, and a note of its length and tempo.',
  make: 'start the ride',
  copyOf: ({ title }: { title: string }) => `${title} (copy)`,
  started: ({ title }: { title: string }) => `Started “${title}”`,
  wasSong: ({ lengthSeconds, bpm }: { lengthSeconds: number; bpm?: number }) =>
    `Was a song of ${clock(lengthSeconds)}${bpm === undefined ? '' : ` at ${number(Math.round(bpm))} bpm`}.`,
}
