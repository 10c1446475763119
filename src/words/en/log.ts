import { and, clock, day, number, percent, plural, wallClock, weekday } from '#words/forms.ts'

/** The log of classes taught: entries, what repeats, the teaching week, and songs used. */

const WHAT_BECAME = { taught: 'as planned', changed: 'changed', skipped: 'skipped' }

const fullDay = (iso: string) => day(iso, { dateStyle: 'full' })
const shortDay = (iso: string) => day(iso, { dateStyle: 'medium' })
const classes = (count: number) => plural(count, 'class', 'classes')

export const log = {
  heading: 'log',
  cannotKeep: 'Nothing can be saved in this window, so there’s no log either.',
  day: fullDay,

  // What repeats
  repeats: 'repeats',
  classOn: 'for a class on',
  against: 'compare with recent classes at',
  nothingBefore: 'No class at this time is in the log before that day.',
  newness: ({ share, compared }: { share: number; compared: number }) =>
    `${percent(share)} new for anyone who took the last ${compared === 1 ? 'class' : classes(compared)}.`,
  basedOn: 'Based on songs 50%, move sequences 30%, effort curve 20%; older classes count less.',
  practice: 'Common practice, no source.',
  rest: 'rest this song',
  playedIn: ({ times, compared, weeksAgo }: { times: number; compared: number; weeksAgo: number }) =>
    `in ${number(times)} of the last ${number(compared)}, ${weeksAgo === 0 ? 'less than a week ago' : weeksAgo === 1 ? 'a week ago' : `${number(weeksAgo)} weeks ago`}`,

  // Classes taught
  taught: 'classes taught',
  deleted: ({ title, day: on }: { title: string; day: string }) => `Deleted “${title}” of ${fullDay(on)}.`,
  restore: 'restore',
  empty: 'Nothing yet. Open a ride you’ve taught and log it here. Everything stays on this device.',
  search: 'ride, song, day, room, or note',
  notFound: ({ search }: { search: string }) => `No class in the log has “${search}” in it.`,
  edit: 'edit',
  editEntry: ({ title, day: on }: { title: string; day: string }) => `edit ${title} of ${shortDay(on)}`,
  remove: 'delete',
  removeEntry: ({ title, day: on }: { title: string; day: string }) => `delete ${title} of ${shortDay(on)}`,
  onlyLast: ({ count }: { count: number }) => `only the last ${number(count)}`,
  showAll: ({ count }: { count: number }) => `show all ${number(count)}`,
  started: ({ at, booked }: { at: string; booked: string | null }) =>
    booked === null ? `started ${wallClock(at)}` : `started ${wallClock(at)}, scheduled ${wallClock(booked)}`,
  rode: ({ count }: { count: number }) => plural(count, 'rider', 'riders'),
  skipped: ({ count }: { count: number }) => `${number(count)} skipped`,
  changed: ({ count }: { count: number }) => `${number(count)} changed`,
  load: ({ load }: { load: number }) => `load ${number(load, 0)}`,
  fiveStars: ({ title }: { title: string }) => `five stars for “${title}”`,

  // The teaching week
  week: 'your teaching week',
  weekBefore: 'previous week',
  weekAfter: 'next week',
  weekOf: ({ day: first }: { day: string }) => `week of ${shortDay(first)}`,
  weekday,
  classes: ({ count }: { count: number }) => classes(count),
  noClass: 'No class in this week.',
  weekLoad: ({ count, load }: { count: number; load: number }) =>
    `${classes(count)}, load ${number(load, 0)} (effort × minutes of the blocks ridden).`,
  mixDays: 'Mix hard and easy days: similar days every day wear you down more than the same load on hard and easy days.',
  monotony: ({ monotony, strain }: { monotony: number; strain: number }) =>
    `Monotony ${number(monotony, 1)} and strain ${number(strain, 0)}: average of the days ÷ their standard deviation, and that times the load (Foster 1998).`,
  crowded: ({ count, day: on }: { count: number; day: string }) =>
    `${classes(count)} on ${on}: save your voice and legs, and coach some of it off the bike.`,
  offTheBike: ({ names }: { names: readonly string[] }) => `In the open ride, ${and(names)} would work: seated and a minute or longer.`,
  quoted: ({ name }: { name: string }) => `“${name}”`,

  // An entry
  entryTitle: ({ title, day: on }: { title: string; day: string }) => `${title}, ${fullDay(on)}`,
  entryAbout: 'Editing this changes the log only, not the ride.',
  entryDay: 'day',
  scheduled: 'scheduled start',
  actual: 'actual start',
  timeExample: ({ time }: { time: string }) => wallClock(time),
  room: 'room',
  headCount: 'head count',
  notCount: 'Write how many rode as a whole number.',
  tooLong: ({ most }: { most: number }) => `Keep it under ${number(most)} characters.`,
  note: 'private note',
  noteHint: 'What worked, any injuries, notes for next time. Saved on this device; in no link and no ride file.',
  save: 'save to log',
  saveChanges: 'save changes',
  cancel: 'cancel',
  outcome: ({ outcome }: { outcome: keyof typeof WHAT_BECAME }) => WHAT_BECAME[outcome],
  outcomeOf: ({ name }: { name: string }) => `${name}: how it went`,
  stars: ({ count }: { count: number }) => (count === 0 ? 'no stars' : plural(count, 'star', 'stars')),
  starsOf: ({ name }: { name: string }) => `${name}: stars`,
  changeOf: ({ name }: { name: string }) => `${name}: what changed`,
  changePlaceholder: 'what changed, how it landed',
  blocks: ({ skipped }: { skipped: number }) => (skipped === 0 ? 'blocks' : `blocks, ${number(skipped)} skipped`),
  block: ({ name, seconds }: { name: string; seconds: number }) => `${name}, ${clock(seconds)}`,

  // Songs used
  songs: 'songs used',
  from: 'from',
  to: 'to',
  saveCsv: 'save as CSV',
  print: 'print',
  licenses:
    'Who has to report music, and to whom, differs by country: in some countries the studio reports music played there and you report the rest. Ask whoever licenses music where you teach.',
  noSongs: 'No song was logged in these days.',
  songsTable: 'table of songs used',
  songsPlayed: ({ count, from, to }: { count: number; from: string; to: string }) =>
    `${plural(count, 'song', 'songs')} played from ${shortDay(from)} to ${shortDay(to)}`,
  head: { day: 'day', start: 'start', room: 'room', title: 'title', artist: 'artist', played: 'played', riders: 'riders' },
  shortDay,
  saved: ({ file }: { file: string }) => `Saved ${file}`,

  // What is told of the log
  unreadable: 'The log couldn’t be read.',
  kept: ({ title, day: on }: { title: string; day: string }) => `Saved “${title}” of ${shortDay(on)} to the log`,
  notKept: 'The class couldn’t be saved to the log.',
  removed: ({ title, day: on }: { title: string; day: string }) => `Deleted “${title}” of ${shortDay(on)} from the log`,
  notRemoved: 'The entry couldn’t be deleted.',
}
