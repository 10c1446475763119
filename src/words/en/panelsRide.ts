import { clock, duration, effort, number, percent, plural } from '#words/forms.ts'

/** Details of the ride as a whole. */

const CLASSES = { beginner: 'a beginner class', mixed: 'a mixed class', advanced: 'an advanced class' }

const BRAKES = { friction: 'friction', magnetic: 'magnetic' }

const INTENSITIES = {
  'very light': 'very light',
  light: 'light',
  moderate: 'moderate',
  vigorous: 'vigorous',
  'near-maximal': 'near-maximal',
}

/** " (12%)", or nothing where there is no whole to be a share of. */
const ofRiding = (share: number | null) => (share === null ? '' : ` (${percent(share)})`)

export const panelsRide = {
  choose: 'Choose a song or a block to see its details here.',
  madeFrom: ({ title, minutes }: { title: string; minutes: number }) => `made from ${title}, ${number(minutes)} minutes`,
  titleNeeded: 'A ride needs a title.',
  goal: 'goal',
  goalHint: 'what this class is about, in one line',
  classLength: 'class length',
  minutes: 'minutes',
  startsAt: 'starts at',
  welcome: 'welcome',
  wipeDown: 'wipe-down',
  atMostAnHour: 'At most an hour.',
  room: 'room',
  studio: 'studio',
  online: 'online',
  location: 'location',
  locationExample: 'Studio B, Quay Street',
  beatsInMySongs: ({ count }: { count: number }) =>
    `${count === 1 ? '1 song of this ride has its beat' : `${number(count)} songs of this ride have their beats`} in my songs, found in files.`,
  applyBeats: ({ count }: { count: number }): string => (count === 1 ? 'use it' : 'use them'),
  mySongs: 'my songs',
  privateNotes: 'private notes',
  privateHint: 'only you can see this',
  privateKept: 'Kept on this device; never in a link.',

  // The shape of the class.
  shape: 'shape',
  difficulty: 'difficulty',
  difficultyIn: ({ points, place, from, to, level }: DifficultyValues) =>
    `${points} of 100, ${{ below: 'below', inside: 'within', above: 'above' }[place]} the ${from} to ${to} typical of ${CLASSES[level]}`,
  bringsTo: ({ points }: { points: number }) => `brings it to ${points}`,
  bringsUnder: ({ points }: { points: number }) => `brings it a little under ${points}`,
  warmUp: 'warm-up',
  warmUpIs: ({ seconds, share, level }: { seconds: number; share: number | null; level: number }) =>
    `${clock(seconds)}${ofRiding(share)} before the first effort of ${effort(level)}`,
  coolDown: 'cool-down',
  coolDownIs: ({ seconds, share }: { seconds: number; share: number | null }) => `${clock(seconds)}${ofRiding(share)}`,
  work: 'work',
  workIs: ({ share, level, ratio }: { share: number; level: number; ratio: number | null }) =>
    `${percent(share)} of the riding at ${effort(level)} or more${ratio === null ? '' : `; work : easy ${number(ratio)} : 1`}`,
  firstHard: 'first hard effort',
  firstHardIs: ({ at, longest }: { at: number; longest: number }) => `at ${clock(at)}; the longest lasts ${duration(longest)}`,
  peak: 'peak',
  peakIs: ({ level, at, last }: { level: number; at: number; last: number | null }) =>
    `${effort(level)} at ${clock(at)}${last === null ? '' : `, the last time at ${clock(last)}`}`,
  standing: 'standing',
  standingIs: ({ seconds }: { seconds: number }) => `longest ${duration(seconds)}`,

  // The bike.
  bike: 'bike',
  scale: 'scale',
  scaleIs: ({ steps, base, max, brake }: { steps: string; base: string; max: string; brake: keyof typeof BRAKES }) =>
    `${steps}, base ${base} of ${max}, ${BRAKES[brake]}`,
  wholeUnits: ({ units }: { units: string }) => `whole ${units}`,
  countFrom: 'count from',
  eachBase: 'each rider’s base',
  looseWheel: 'the loose wheel',
  changeBike: 'change or calibrate the bike',

  // The riders.
  ridersEstimated: 'riders, estimated',
  riders: 'riders',
  modeled: 'estimates for modeled people',
  highestHeart: 'highest heart rate',
  meanHeart: 'average heart rate',
  leastLeft: 'least left in the legs',
  runsOut: 'runs out',
  runsOutInSome: ({ models, of }: { models: number; of: number }) => `runs out in ${models} of ${of} models`,
  /** Of the button that goes there. */
  showLowest: ({ rider, block, at }: { rider: string; block: string; at: number }) =>
    `lowest for ${rider} in ${block} at ${clock(at)}: show`,
  showRunsOut: ({ rider, block, at, models, of }: { rider: string; block: string; at: number; models: number; of: number }) =>
    `runs out${models < of ? ` in ${models} of ${of} models` : ''} for ${rider} in ${block} at ${clock(at)}: show`,
  intensity: ({ name }: { name: keyof typeof INTENSITIES }) => INTENSITIES[name],
  overSecond: 'over second threshold',
  between: 'between thresholds',
  underFirst: 'under first threshold',
  energy: 'energy, kcal',
  rougherFor: 'rougher for',
  load: 'load',
  unplanned: ({ seconds }: { seconds: number }) =>
    `${clock(seconds)} of this class isn’t planned yet. Its lines stop there, and these figures leave it out.`,
  changeRiders: 'change the riders',
  heartNote:
    'Heart rate is a share of the rider’s heart-rate reserve, with beats per minute under it; intensity is time by that share. Load is estimated effort times minutes.',
  outsideNote: ({ outside, of, rider }: { outside: number; of: number; rider: string }) =>
    `${clock(outside)} of ${clock(of)} minutes of ${rider} are outside the 50 to 200 watts the oxygen equation was stated for; energy, heart rate, and estimated effort are rougher there.`,
  measuredNote: ({ uptake, heart }: { uptake: readonly [number, number]; heart: readonly [number, number] }) =>
    `Plans read lower than measured classes, whose riders go over the target most of the time: whole classes averaged ${uptake[0]}–${percent(uptake[1] / 100)} of maximal oxygen uptake and ${heart[0]}–${percent(heart[1] / 100)} of maximal heart rate.`,

  // Who teaches.
  instructors: 'instructors',
  instructor: 'instructor',
  first: 'first',
  second: 'second',
  nameNeeded: 'An instructor needs a name.',
  speaks: 'speaks',
  wordsPerMinute: 'words per minute',
  teachWithout: ({ name }: { name: string }) => `teach without ${name}`,
  addSecond: 'add a second instructor',
  /** The name a second one has until somebody writes it. */
  secondInstructor: 'second instructor',
  whoLeaves: 'Blocks of an instructor who leaves go to the other one.',

  // Form cues of one's own.
  formCues: 'form cues',
  formCuesHeld: ({ count }: { count: number }) => `${count}, in turn`,
  formCuesField: 'form cues, one per line',
  formCuesHint: 'One per line. Yours for every ride, kept on this device; a ride holds the ones you add to it.',
  formCueTooLong: ({ start, most }: { start: string; most: number }) =>
    `“${start}…” is too long to say in passing: at most ${most} characters.`,
  tooManyFormCues: ({ most, count }: { most: number; count: number }) => `At most ${most} form cues; these are ${number(count)}.`,
  addToHolds: ({ count }: { count: number }) => `Add one to ${plural(count, 'longer hold', 'longer holds')}`,
  addedFormCues: ({ count }: { count: number }) => `Added ${plural(count, 'form cue', 'form cues')}`,
}

interface DifficultyValues {
  points: number
  place: 'below' | 'inside' | 'above'
  from: number
  to: number
  level: keyof typeof CLASSES
}
