import { and, number, plural } from '#words/forms.ts'
import { measures } from './measures.ts'

/** What a change did, in the past tense, as it is announced and stands in the list of what can be undone. */

/** What a change without anything to change would have done. */
const VERBS = {
  add: 'add',
  change: 'change',
  delete: 'delete',
  duplicate: 'duplicate',
  expand: 'expand',
  group: 'group',
  merge: 'merge',
  move: 'move',
  split: 'split',
}

const BLOCK_FIELDS = {
  label: 'name',
  terrain: 'terrain',
  length: 'length',
  posture: 'posture',
  hands: 'hands',
  resistance: 'resistance',
  ownTotal: 'your own resistance',
  cadence: 'cadence',
  strikesPerBeat: 'pedal strokes per beat',
  effort: 'effort',
  lead: 'lead foot',
  move: 'move',
  allOut: 'all-out mark',
  water: 'water break',
  walk: 'walk through the room',
  easier: 'easier option',
  harder: 'harder option',
  feel: 'feel',
  cues: 'cues',
  leader: 'instructor',
  mic: 'microphone',
  locked: 'lock',
  minEights: 'shortest length',
  maxEights: 'longest length',
  notes: 'notes',
}

const SET_FIELDS = { label: 'name', rounds: 'rounds', perRound: 'what each round adds' }

const SONG_FIELDS = {
  title: 'title',
  inCount: 'start',
  outCount: 'end',
  leadInSeconds: 'lead-in',
  lead: 'lead foot',
  notes: 'notes',
}

const RIDE_FIELDS = {
  title: 'title',
  language: 'cue language',
  aim: 'goal',
  level: 'level',
  slotMinutes: 'class length',
  startsAt: 'start time',
  briefingSeconds: 'welcome',
  clearUpSeconds: 'wipe-down',
  room: 'room',
  location: 'location',
  leaders: 'instructors',
  houseRules: 'studio rules',
  avoidMoves: 'moves to avoid',
  standIn: 'notes for a sub',
  riders: 'riders',
  privateNotes: 'private notes',
}

/** One step of a knob in its unit: "quarter turns". */
const steps = (stepsPerUnit: number, unit: string): string => {
  const part = { 1: 'whole', 2: 'half', 4: 'quarter' }[stepsPerUnit]
  return part ? `${part} ${unit}s` : `1/${stepsPerUnit} ${unit}`
}

export const commands = {
  nothingTo: ({ verb }: { verb: keyof typeof VERBS }) => `Nothing to ${VERBS[verb]}`,

  // Blocks and sets. Without a `next` they come to the end of where they go.
  added: ({ name, next, where }: { name: string; next: string | undefined; where: string }) =>
    next === undefined ? `Added ${name} to the end of ${where}` : `Added ${name} before ${next} in ${where}`,
  moved: ({ name, next, where }: { name: string; next: string | undefined; where: string }) =>
    next === undefined ? `Moved ${name} to the end of ${where}` : `Moved ${name} before ${next} in ${where}`,
  /** Where a block goes: a set by its own name, or by what it is called without one. */
  intoSet: ({ label }: { label: string }) => `the set ${label}`,
  intoUnnamedSet: ({ name }: { name: string }) => `the ${name}`,
  deleted: ({ name }: { name: string }) => `Deleted ${name}`,
  duplicated: ({ name }: { name: string }) => `Duplicated ${name}`,
  lengthened: ({ name, length }: { name: string; length: string }) => `Lengthened ${name} to ${length}`,
  shortened: ({ name, length }: { name: string; length: string }) => `Shortened ${name} to ${length}`,
  startedEarlier: ({ name, before }: { name: string; before: string }) => `Started ${name} earlier, shortening ${before}`,
  startedLater: ({ name, before }: { name: string; before: string }) => `Started ${name} later, lengthening ${before}`,
  split: ({ name, length }: { name: string; length: string }) => `Split ${name} after ${length}`,
  merged: ({ name, next }: { name: string; next: string }) => `Merged ${name} with ${next}`,
  grouped: ({ name, rounds }: { name: string; rounds: number }) => `Grouped ${name} into a set of ${plural(rounds, 'round', 'rounds')}`,
  expanded: ({ name, count }: { name: string; count: number }) => `Expanded ${name} into ${plural(count, 'block', 'blocks')}`,
  gaveRounds: ({ name, rounds }: { name: string; rounds: number }) => `Changed ${name} to ${plural(rounds, 'round', 'rounds')}`,
  raised: ({ name }: { name: string }) => `Raised the resistance of ${name}`,
  lowered: ({ name }: { name: string }) => `Lowered the resistance of ${name}`,

  // Fields.
  renamed: ({ name, to }: { name: string; to: string }) => `Renamed ${name} to ${to}`,
  renamedRide: ({ to }: { to: string }) => `Renamed the ride to ${to}`,
  replacedWords: ({ from, to, count }: { from: string; to: string; count: number }) =>
    `${to === '' ? `Deleted “${from}”` : `Replaced “${from}” with “${to}”`} in ${plural(count, 'place', 'places')}`,
  renamedMove: ({ from, to, count }: { from: string; to: string; count: number }) =>
    `Renamed ${from} to ${to} in ${plural(count, 'block', 'blocks')}`,
  changed: ({ fields, name }: { fields: readonly string[]; name: string }) => `Changed ${and(fields)} of ${name}`,
  changedRide: ({ fields }: { fields: readonly string[] }) => `Changed the ride’s ${and(fields)}`,
  blockField: ({ field }: { field: keyof typeof BLOCK_FIELDS }) => BLOCK_FIELDS[field],
  setField: ({ field }: { field: keyof typeof SET_FIELDS }) => SET_FIELDS[field],
  songField: ({ field }: { field: keyof typeof SONG_FIELDS }) => SONG_FIELDS[field],
  rideField: ({ field }: { field: keyof typeof RIDE_FIELDS }) => RIDE_FIELDS[field],
  changedBike: ({ bike }: { bike: string }) => `Changed the bike to ${bike}`,
  changedBikeRounded: ({ bike, stepsPerUnit, unit }: { bike: string; stepsPerUnit: number; unit: string }) =>
    `Changed the bike to ${bike}; resistance is rounded to ${steps(stepsPerUnit, unit)}`,
  countedFromBase: 'Counted resistance from base',
  countedFromLoose: 'Counted resistance from the loose wheel',

  // Cues, instructors, practice, and checks.
  addedCue: ({ text }: { text: string }) => `Added “${text}”`,
  addedCues: ({ count }: { count: number }) => `Added ${plural(count, 'cue', 'cues')}`,
  gaveTo: ({ name, leader }: { name: string; leader: string }) => `Gave ${name} to ${leader}`,
  gaveMicrophoneTo: ({ name, leader }: { name: string; leader: string }) => `Gave the microphone for ${name} to ${leader}`,
  nobody: 'nobody',
  needsPractice: ({ name }: { name: string }) => `Marked ${name}: needs practice`,
  gotIt: ({ name }: { name: string }) => `Marked ${name}: got it`,
  hidChecks: ({ count }: { count: number }) => (count === 1 ? 'Hid a check' : `Hid ${number(count)} checks`),
  unhidCheck: 'Unhid a check',

  // Songs.
  addedSongs: ({ name, next }: { name: string; next: string | undefined }) =>
    next === undefined ? `Added ${name} at the end of the ride` : `Added ${name} before ${next}`,
  aSong: 'a song',
  songs: ({ count }: { count: number }) => plural(count, 'song', 'songs'),
  movedSong: ({ name, next }: { name: string; next: string | undefined }) =>
    next === undefined ? `Moved ${name} to the end of the ride` : `Moved ${name} before ${next}`,
  splitSong: ({ name, next }: { name: string; next: string }) => `Split ${name} before ${next}`,
  removedSong: ({ title, where }: { title: string; where: string }) => `Removed ${title} from ${where}`,
  gaveSong: ({ title, where }: { title: string; where: string }) => `Added the song ${title} to ${where}`,
  changedSong: ({ title, where }: { title: string; where: string }) => `Changed the song ${title} in ${where}`,
  replacedSong: ({ old, title, where }: { old: string; title: string; where: string }) => `Replaced ${old} with ${title} in ${where}`,

  // The beats of songs.
  gaveTempo: ({ title, bpm }: { title: string; bpm: number }) => `Set ${title} to ${measures.bpm(bpm, 2)}`,
  removedTempo: ({ title }: { title: string }) => `Removed the tempo of ${title}`,
  doubledTempo: ({ title, bpm }: { title: string; bpm: number }) => `Set ${title} to ${measures.bpm(bpm, 2)}, twice the tempo`,
  halvedTempo: ({ title, bpm }: { title: string; bpm: number }) => `Set ${title} to ${measures.bpm(bpm, 2)}, half the tempo`,
  movedBeats: ({ title, milliseconds }: { title: string; milliseconds: number }) =>
    `Moved the beats of ${title} ${number(Math.abs(milliseconds), 0)} ms ${milliseconds < 0 ? 'earlier' : 'later'}`,
  setBars: ({ title }: { title: string }) => `Set the bars of ${title}`,
  gaveOdd: ({ title, beats, place, unit }: { title: string; beats: number; place: string; unit: number }) =>
    `Noted ${oddBeats(beats, place, unit)} in ${title}`,
  removedOdd: ({ title, beats, place, unit }: { title: string; beats: number; place: string; unit: number }) =>
    `Removed ${oddBeats(beats, place, unit)} from ${title}`,
  changedOdd: ({ title }: { title: string }) => `Changed the odd beats of ${title}`,
  linkedSongs: ({ count }: { count: number }) => `Used the beats in my songs for ${plural(count, 'song', 'songs')}`,
  markedSong: ({ label, title }: { label: string; title: string }) => `Marked ${label} in ${title}`,
  addedNoTalk: ({ title }: { title: string }) => `Added a no-talk zone in ${title}`,
}

/** "2 extra beats before eight 33" */
const oddBeats = (beats: number, place: string, unit: number): string => {
  const count = Math.abs(beats)
  const which = beats < 0 ? plural(count, 'missing beat', 'missing beats') : plural(count, 'extra beat', 'extra beats')
  return `${which} before ${unit === 6 ? 'six' : 'eight'} ${place}`
}
