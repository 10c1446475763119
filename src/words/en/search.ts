import { number, plural } from '#words/forms.ts'

/** The box that finds anything. */

const GROUPS = {
  actions: 'actions',
  here: 'in this ride',
  checks: 'checks',
  rides: 'rides',
  elsewhere: 'in other rides',
  everywhere: 'in my rides',
  songs: 'my songs',
  rules: 'studio rules',
  handbook: 'help',
}

const KINDS = { song: 'song', set: 'set', block: 'block', move: 'move', cue: 'cue', note: 'note' }

export const search = {
  find: 'find',
  findDo: 'find anything: actions, rides, songs, blocks, cues, moves, checks, studio rules, help',
  findTell: 'find anything',
  notInClass: 'Search is off on the teaching screen.',
  title: 'find anything',
  field: 'Search actions, rides, songs, cues…',
  results: 'results',
  notFetched: 'Search could not be loaded. Press again when you’re back online.',

  group: ({ group }: { group: keyof typeof GROUPS }) => GROUPS[group],
  recent: 'recent rides',
  useful: 'what you can do here',
  /** Beside a heading under which not all fit. */
  some: ({ shown, total }: { shown: number; total: number }) => `${number(shown)} of ${number(total)}`,
  counted: ({ count }: { count: number }) => plural(count, 'result', 'results'),
  countedSome: ({ shown, count }: { shown: number; count: number }) => `${plural(count, 'result', 'results')}, ${number(shown)} shown`,
  nothing: ({ query }: { query: string }) => `Nothing found for “${query}”.`,
  looking: ({ left }: { left: number }) => `${plural(left, 'more ride', 'more rides')} to look through…`,

  kind: ({ kind }: { kind: keyof typeof KINDS }) => KINDS[kind],
  times: ({ count }: { count: number }) => `${number(count)}×`,
  taughtOn: ({ day }: { day: string }) => `taught ${day}`,
  changedOn: ({ day }: { day: string }) => `changed ${day}`,
  rideTitle: 'title of a ride',
  openRideFirst: 'Open a ride first.',
}
