import { and, clock, duration, effort, number, wallClock } from '#words/forms.ts'
import { measures } from './measures.ts'

/** What stands on printed sheets, and in the listings made of them; but what riders hear, which is in the ride's own language. */

/** How pedal strokes and beats go together, by strokes per beat. */
const STROKES = { half: 'half time', on: 'on the beat', double: 'double time', off: 'off the beat' }

const ON_ONE = { left: 'left on beat 1', right: 'right on beat 1' }

const FEET = { left: 'left foot', right: 'right foot' }

const FOOT_ON_ONE = { left: 'left foot on beat 1', right: 'right foot on beat 1' }

const HANDS = { centre: 'hands center', wide: 'hands wide', ends: 'hands ends' }

const SIDES = { left: 'left', right: 'right' }

const SIDES_FIRST = { left: 'left first', right: 'right first' }

/** A stretch of road as a sub thinks of it. */
const ROADS = {
  flat: 'flat',
  tempo: 'steady flat',
  hill: 'climb',
  run: 'run out of the saddle',
  jumps: 'up and down',
  surge: 'surge',
  push: 'push',
  recover: 'recovery',
  flush: 'easy roll',
  stretch: 'stretch',
  hold: 'hold',
}

export const printed = {
  // Heads and feet of pages.
  classFrom: ({ minutes, startsAt }: { minutes: number; startsAt: string | undefined }) =>
    startsAt === undefined ? `${number(minutes)} min` : `${number(minutes)} min from ${wallClock(startsAt)}`,
  long: ({ seconds, left }: { seconds: number; left: number }) =>
    `${clock(seconds)} long, ${left < 0 ? `${clock(-left)} over class time` : `${clock(left)} left`}`,
  onBike: ({ shown, own }: { shown: string; own: string }) => `resistance about, on ${shown}; cues written for ${own}`,
  forReader: ({ name }: { name: string }) => `for ${name}`,
  version: ({ date, version }: { date: string; version: string }) => `${date}, version ${version}`,
  safety:
    'Stop for dizziness, chest pain, or unusual shortness of breath. Water, air. Set up bikes and show the brake. No fast legs without resistance. Bike manual and studio rules come first.',
  continued: '(continued)',
  easier: 'Easier:',

  // Time of the class that belongs to no song.
  welcomeName: 'welcome and bike setup',
  welcome: ({ length }: { length: string }) => `welcome and bike setup, ${length}`,
  wipeDownName: 'wipe-down',
  wipeDown: ({ length }: { length: string }) => `wipe-down, ${length}`,

  // Heads of columns, and what the legend says of them: read together they are a phrase.
  rideHead: 'ride',
  leftHead: 'left',
  leftMeans: 'in the song',
  elapsedHead: 'song',
  elapsedMeans: 'time elapsed since beat 1',
  eightsHead: '8s',
  eightsMean: 'eights',
  timeHead: 'for',
  timeMeans: 'length',
  /** Resistance: "turns on" where the knob counts turns. */
  totalHead: ({ turns }: { turns: boolean }): string => (turns ? 'turns on' : 'resistance'),
  totalMeans: ({ unit, fromBase }: { unit: string; fromBase: boolean }) =>
    `${measures.unitOf(unit, true)} ${fromBase ? 'over base' : 'from loose'}, then the change`,
  effortMeans: 'effort 0–10',
  onOne: ({ foot }: { foot: keyof typeof ON_ONE }) => ON_ONE[foot],
  water: 'water',
  foot: ({ foot }: { foot: keyof typeof FEET }) => FEET[foot],
  /** The letter that stands beside the figure of a foot. */
  footLetter: ({ foot }: { foot: keyof typeof FEET }) => (foot === 'left' ? 'L' : 'R'),
  hands: ({ hands }: { hands: keyof typeof HANDS }) => HANDS[hands],

  // A song.
  from: ({ from, seconds }: { from: number; seconds: number }) => `${clock(from)} for ${clock(seconds)}`,
  strokes: ({ cadence, strokes }: { cadence: string; strokes: keyof typeof STROKES }) => `${cadence} ${STROKES[strokes]}`,
  sixes: 'counted in sixes',
  inAndOut: ({ enters, leaves }: { enters: string; leaves: string }) => `in ${enters}, out ${leaves}`,

  // A change.
  cadence: ({ from, to }: { from: number; to: number }) => (from === to ? measures.rpm(from) : `${number(from, 0)} to ${measures.rpm(to)}`),
  wheelStopped: 'wheel stopped',
  round: ({ round, of }: { round: number; of: number }) => `round ${number(round)} of ${number(of)}`,
  move: ({ name, counts }: { name: string; counts: number }) => `${name} on ${number(counts)}`,
  side: ({ side, first }: { side: keyof typeof SIDES; first: boolean }) => (first ? SIDES_FIRST[side] : SIDES[side]),
  allOut: 'all out',
  walk: 'off the bike, walking the room',
  beAt: ({ range }: { range: string }) => `be at ${range}`,
  countIn: ({ counts }: { counts: number }) => `Count in ${number(counts)}.`,

  // Who leads; without a name the reader.
  leadsAndSpeaks: ({ name }: { name: string | undefined }) => (name === undefined ? 'you lead and speak' : `${name} leads and speaks`),
  leads: ({ name }: { name: string | undefined }) => (name === undefined ? 'you lead' : `${name} leads`),
  overTo: ({ name }: { name: string | undefined }) => `over to ${name ?? 'you'}`,
  micTo: ({ name }: { name: string | undefined }) => `microphone to ${name ?? 'you'}`,
  keepsMic: ({ name }: { name: string | undefined }) => (name === undefined ? 'you keep the microphone' : `${name} keeps the microphone`),

  // Listings.
  effortHead: 'effort',
  callHead: 'call',
  whatHead: 'what',
  footOnOne: ({ foot }: { foot: keyof typeof FOOT_ON_ONE }) => FOOT_ON_ONE[foot],
  feelIs: ({ feel }: { feel: string }) => `Feel: ${feel}`,
  easierIs: ({ text }: { text: string }) => `Easier: ${text}`,

  // The checklist.
  beforeClass: 'Before class',
  openingCard: ({ seconds }: { seconds: number }) => `opening, ${duration(seconds)} to say`,
  timeChecks: 'time checks',
  /** The song a time check stands for; with its time in the ride where the check itself is a time of day. */
  songCheck: ({ place, song, at }: { place: number; song: string; at: number | undefined }) =>
    `song ${number(place)}, ${song}${at === undefined ? '' : ` (${clock(at)})`}`,
  rulesFirst: 'The bike’s manual, studio rules, and local codes come first.',

  // The page for when the music fails.
  noMusic: 'no music: teach by the clock and by effort',
  plainFooter: 'Effort 0–10. Say how long, how many, and how hard first; count riders in and out.',
  level: ({ from, to }: { from: number; to: number }) => (from === to ? effort(from) : `${effort(from)} to ${effort(to)}`),
  once: ({ length }: { length: string }) => `once ${length}`,
  times: ({ times, length }: { times: number; length: string }) => `${number(times)} times ${length}`,
  hardAndEasy: (said: { often: readonly string[]; hard: number; hardWords: string; easy: number; easyWords: string }) =>
    `${and(said.often)} at ${effort(said.hard)}, ${said.hardWords}; the rest at ${effort(said.easy)}, ${said.easyWords}`,

  // For a sub.
  forSub: ({ aim }: { aim: string | undefined }) => (aim === undefined ? 'for a sub' : `for a sub: ${aim}`),
  subFooter: ({ unit, fromBase }: { unit: string; fromBase: boolean }) =>
    `Effort 0–10 by how riders breathe and talk; ${measures.unitOf(unit, true)} ${fromBase ? 'over base' : 'from loose'} in parentheses. Use any music near these cadences. Always offer a seated option.`,
  subFrom: ({ time }: { time: string }) => `from ${time}`,
  subLong: ({ time }: { time: string }) => `${time} long`,
  aboutRpm: ({ rpm }: { rpm: number }) => `about ${measures.rpm(rpm)}`,
  road: ({ terrain }: { terrain: keyof typeof ROADS }) => ROADS[terrain],
  feelFromTo: ({ from, to }: { from: string; to: string }) => `${from} to ${to}`,
  inTurn: ({ times }: { times: number }) => `${number(times)} times:`,
  walkAmong: 'get off the bike and walk the room',
  easierOption: ({ text }: { text: string }) => `easier: ${text}`,
  harderOption: ({ text }: { text: string }) => `harder: ${text}`,

  // What a sub is told first.
  scale: ({ bike, unit, steps, fromBase }: { bike: string; unit: string; steps: number; fromBase: boolean }) => {
    const units = measures.unitOf(unit, true)
    const step = steps === 1 ? `whole ${units}` : `${units} in ${number(steps)} steps`
    return `${bike}: resistance is in ${step} ${fromBase ? 'over each rider’s own base' : 'from the loose wheel'}`
  },
  meet: 'meet new riders, show the brake, find base',
  nothingHard: ({ time }: { time: string }) => `nothing hard in the first ${time}`,
  resistanceFirst: 'resistance on before anyone stands; say how long, how many, how hard before every effort',
  endEasy: ({ time }: { time: string }) => `the last ${time} easy`,
  offBy: ({ time }: { time: string }) => `off the bikes by ${wallClock(time)}`,
  offInside: ({ minutes }: { minutes: number }) => `off the bikes inside ${number(minutes)} min`,
  avoid: ({ moves }: { moves: readonly string[] }) => `this room does no ${and(moves)}`,
  never: 'no fast legs without resistance, no feet off moving pedals',
}
