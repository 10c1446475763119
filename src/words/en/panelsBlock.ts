import { clock, duration, effort, grouped, number, plural } from '#words/forms.ts'
import { names } from './names.ts'

/** Details of one block, and the efforts of several. */

const GRADES = { phrase: 'on the phrase', eight: 'on the eight', count: 'on the count', off: 'off the beat' }

const FEET = { left: 'left', right: 'right' }

/** Seconds of speech: "3.4 s", from ten on whole. */
const speech = (seconds: number) => `${number(seconds, seconds < 10 ? 1 : 0)} s`

export const panelsBlock = {
  // The head.
  grade: ({ grade }: { grade: keyof typeof GRADES }) => GRADES[grade],
  /** So many counts after (over 0) or before the eight. */
  fromEight: ({ counts }: { counts: number }) =>
    `${plural(Math.abs(counts), 'count', 'counts')} ${counts > 0 ? 'after' : 'before'} the eight`,
  placeAnd: ({ place, alignment }: { place: string; alignment: string }) => `${place}, ${alignment}`,
  round: ({ part, rounds }: { part: number; rounds: number }) =>
    `part ${part} of a set, round 1 of ${rounds}; a change here changes ${rounds === 2 ? 'both rounds' : 'every round'}`,
  overBase: ({ units }: { units: string }) => `${units} over base`,
  feels: ({ units, feel }: { units: string; feel: string }) => `${units}, ${feel}`,

  // The knob.
  knob: 'knob',
  stay: 'stay',
  setTo: 'set to',
  add: 'add',
  takeOff: 'take off',
  byFeel: 'by feel',
  allOff: 'all off',
  by: 'by',
  how: 'how',
  exactly: 'exactly',
  atLeast: 'at least',
  ifYouHaveIt: 'if you have it',
  to: 'to',
  about: 'about',
  shouldBeAt: 'should be at',
  noCheckpoint: 'no checkpoint',
  aimAt: 'aim at',
  nearestEnd: 'nearest end',
  aimProblem: ({ range }: { range: string }) => `Aim at one setting from ${range}.`,
  settingOutside: ({ floor, ceiling }: { floor: string; ceiling: string }) => `On this bike resistance goes from ${floor} to ${ceiling}.`,
  oneAmount: 'A change is one amount, such as ½. For at least that much, write ½ or more.',
  noChange: 'A change is at least one step. For none, choose “stay”.',
  youRide: 'you ride',
  sameAsClass: 'same as class',
  totalAsClass: ({ total }: { total: string }) => `${total}, same as class`,
  oneForYou: 'You ride one setting. The range is for the class.',

  // The effort.
  effort: 'effort',
  effortStart: 'effort, start',
  effortEnd: 'effort, end',
  effortSays: ({ level }: { level: number }) => `${effort(level)} of 10, ${names.effort({ effort: level })}`,
  rampSays: ({ from, to }: { from: number; to: number }) =>
    `${effort(from)} to ${effort(to)}: ${names.effort({ effort: from })}, then ${names.effort({ effort: to })}`,
  level: 'level',
  ramp: 'ramp',
  makeLevel: 'make it level',
  makeRamp: 'make it a ramp',
  estimated: 'estimated effort',
  aboutFor: ({ rider, level }: { rider: string; level: string }) => `${rider} about ${level}`,

  // Feet, length and cadence.
  keep: 'keep',
  swap: 'swap',
  landsOnOne: ({ foot, spoken }: { foot: keyof typeof FEET; spoken: boolean }) =>
    `${FEET[foot]} lands on beat 1${spoken ? ', said to riders' : ''}`,
  noFootOffBeat: 'no lead foot off the beat',
  noFootOnOne: 'no foot lands on beat 1',
  mostCounts: ({ most }: { most: number }) => `A block is at most ${grouped(most)} counts.`,
  leastSecond: 'A block is at least one second.',
  mostHours: 'A block is at most three hours.',
  cadence: 'cadence',
  notSet: 'not set',
  cadenceSet: 'set',
  wheelStopped: 'wheel stopped',
  offBeatNotSet: 'off the beat, not set',
  offBeatSet: 'off the beat, set',
  withSong: ({ rpm }: { rpm: string }) => `with the song, ${rpm}`,
  halfTime: ({ rpm }: { rpm: string }) => `half time, ${rpm}`,
  onBeat: ({ rpm }: { rpm: string }) => `on the beat, ${rpm}`,
  doubleTime: ({ rpm }: { rpm: string }) => `double time, ${rpm}`,
  beatWithoutTempo: 'strokes per beat, no tempo',
  rpm: 'rpm',
  rampTo: 'ramp to',
  steady: 'steady',

  // The move.
  move: 'move',
  none: 'none',
  myOwn: 'my own…',
  itsName: 'its name',
  on: 'on',
  counts: ({ count }: { count: number }): string => (count === 1 ? 'count' : 'counts'),
  firstSide: 'first side',
  noSide: 'no side',
  afterFirstSide: 'then',
  alternate: 'alternate sides',
  firstShown: 'first shown',
  comesAgain: 'comes again',

  needsPractice: 'needs practice',
  rehearseAgain: 'rehearse it again',

  // The cues.
  cues: 'cues',
  cueMoment: ({ place }: { place: number }) => `cue ${place}, moment`,
  cueLead: ({ place }: { place: number }) => `cue ${place}, finishes before the change`,
  cueCountIn: ({ place }: { place: number }) => `cue ${place}, count-in`,
  cueWords: ({ place }: { place: number }) => `cue ${place}, words`,
  removeCue: ({ place }: { place: number }) => `remove cue ${place}`,
  countIn: ({ counts }: { counts: number }) => `count-in ${counts}`,
  before: 'before',
  beforeEnd: 'before the end',
  asItBegins: 'as it begins',
  leadCounts: ({ counts }: { counts: number }) => plural(counts, 'count', 'counts'),
  leadSeconds: ({ seconds }: { seconds: number }) => `${number(seconds, 1)} s`,
  leadForm: 'Write counts, such as 8, or seconds, such as 3 s.',
  leadFormInside: 'Write counts, such as 8, seconds, such as 3 s, or “start”.',
  leadSecondsMost: ({ most }: { most: number }) => `At most ${most} seconds before the change.`,
  leadCountsMost: ({ most }: { most: number }) => `At most ${most} counts before the change.`,
  leadCountsWhole: 'Counts before the change are whole.',
  countedIn: 'counted in',
  whatYouSay: 'what you say',
  whatYouSayFirst: 'what you say as it begins',
  whatYouSayNext: 'what you say next',
  addCue: 'add a cue',
  speechNeeds: ({ needs, has }: { needs: number; has: number }) => `needs ${speech(needs)}, has ${speech(has)}`,
  speechCounts: ({ counts, seconds }: { counts: number; seconds: number }) => `${counts} counts, ${speech(seconds)}`,
  /** When it is said, on the ride's clock and the song's; before 0 the song has not begun. */
  speechAt: ({ at, inSong }: { at: number; inSong: number }) =>
    `· at ${clock(at)}, ${inSong < 0 ? `${speech(-inSong)} before the song` : `song ${clock(inSong)}`}`,

  // What could be said.
  sayFirst: ({ words }: { words: string }) => `say first “${words}”`,
  announce: ({ words }: { words: string }) => `announce “${words}”`,
  addCountIn: 'add a count-in',
  formCue: ({ words }: { words: string }) => `form cue “${words}”`,
  another: 'another',
  anotherFormCue: 'another form cue',
  addStory: 'add a story',
  storyHint: 'a story, as it begins',
  storyRoom: ({ free, from, words }: { free: number; from: number; words: number }) =>
    `Room for ${duration(free)} from ${clock(from)}, up to ${words} words.`,
  storyNoRoom: ({ free }: { free: number }) =>
    `No room for a story here: ${free > 0 ? `${duration(free)} free at most` : 'nothing is free'}.`,
  storyNotCalm: 'The build-up is too high here for riders to listen.',
  storyCalmFrom: ({ at }: { at: number }) => `The build-up is too high for riders to listen before ${clock(at)}.`,

  // What is rarely set.
  options: 'options and feel',
  easier: 'easier',
  easierExample: 'such as stay seated',
  harder: 'harder',
  harderExample: 'such as a quarter more',
  feelsLike: 'feels like',
  feelExample: 'such as heavy, smooth',
  waterWalkAllOut: 'water, walk, all-out',
  water: 'water',
  waterSays: 'riders drink here',
  walk: 'walk',
  walkSays: 'you’re off the bike, walking the room',
  allOut: 'all-out',
  allOutSays: 'nothing held back; needs a long recovery',
  whoLeads: 'who leads',
  lockAndFitting: 'lock and fitting',
  locked: 'locked',
  lockedSays: 'fitting and cutting leave it alone',
  fitLeast: 'at least',
  fitMost: 'at most',
  heldLeast: ({ eights }: { eights: number }) => `at least ${eights}`,
  heldMost: ({ eights }: { eights: number }) => `at most ${eights}`,
  anyLength: 'any length',
  leastOverMost: 'At least can’t be more than at most.',
  mostUnderLeast: 'At most can’t be less than at least.',
  written: 'written',
}
