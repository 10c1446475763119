import { and, duration, nearestLevel, wallClock, weekday } from '#words/forms.ts'
import { measures } from './measures.ts'

/** What the parts of a ride are called, where nobody named them. */

const TERRAINS = {
  flat: 'flat',
  tempo: 'tempo',
  hill: 'climb',
  run: 'run',
  jumps: 'jumps',
  surge: 'surge',
  push: 'push',
  recover: 'recovery',
  flush: 'flush',
  stretch: 'stretch',
  hold: 'hold',
}

const POSTURES = { seated: 'seated', standing: 'standing', hovering: 'hovering', offBike: 'off the bike' }

const HANDS = { centre: 'center', wide: 'wide', ends: 'ends' }

const FEET = { left: 'left', right: 'right' }

const TYPICAL_RIDERS = { new: 'new rider', regular: 'regular rider', strong: 'strong rider' }

const TYPICAL_BIKES = { knob: 'knob, quarter turns', levels: 'levels 1 to 24' }

/** What settings feel like, light to heavy. */
const FEELS = {
  base: 'base',
  'easy flat': 'easy flat',
  'brisk flat': 'brisk flat',
  'light hill': 'light climb',
  'solid hill': 'solid climb',
  'heavy hill': 'heavy climb',
}

const LEVELS = { beginner: 'beginner', mixed: 'mixed', advanced: 'advanced' }

/** Each level of effort by how a rider at it looks, and then talks. Not taken from any rating scale. */
const EFFORTS: readonly string[] = [
  'off the pedals',
  'barely pedaling',
  'rolling easy',
  'chatty',
  'steady, full sentences',
  'pushing',
  'working hard',
  'short phrases',
  'one word at a time',
  'hanging on',
  'nothing left',
]

export const names = {
  terrain: ({ terrain }: { terrain: keyof typeof TERRAINS }) => TERRAINS[terrain],
  posture: ({ posture }: { posture: keyof typeof POSTURES }) => POSTURES[posture],
  hands: ({ hands }: { hands: keyof typeof HANDS }) => HANDS[hands],
  foot: ({ foot }: { foot: keyof typeof FEET }) => FEET[foot],
  level: ({ level }: { level: keyof typeof LEVELS }) => LEVELS[level],
  /** A move by the name it is stored under: the trade's in the language of the page, somebody's own as it stands. */
  move: ({ name }: { name: string }) => name,
  /** From 0 to 10; between two levels the nearest, the harder one in the middle. */
  effort: ({ effort }: { effort: number }) => EFFORTS[nearestLevel(effort)]!,
  feel: ({ feel }: { feel: keyof typeof FEELS }) => FEELS[feel],
  typicalBike: ({ id }: { id: keyof typeof TYPICAL_BIKES }) => TYPICAL_BIKES[id],
  typicalRider: ({ id }: { id: keyof typeof TYPICAL_RIDERS }) => TYPICAL_RIDERS[id],
  /** As it stands in a sentence, in any case. */
  theTypicalRider: ({ id }: { id: keyof typeof TYPICAL_RIDERS }) => `the ${TYPICAL_RIDERS[id]}`,
  untitled: 'untitled ride',
  /** Where in the week a class is: "Wednesday 6:30 PM, Studio B". Weekdays count from 0, Monday. */
  timeSlot: ({ day, time, room }: { day: number; time: string; room: string }) =>
    `${[weekday(day), ...(time === '' ? [] : [wallClock(time)])].join(' ')}${room === '' ? '' : `, ${room}`}`,
  /** A section by its place, counted from 1. */
  songPlace: ({ place }: { place: number }) => `song ${place}`,
  setOf: ({ parts }: { parts: readonly string[] }) => `set of ${and(parts)}`,
  setOfMany: ({ count }: { count: number }) => `set of ${count} parts`,
  /** Names in a row: "push and recovery". */
  list: ({ items }: { items: readonly string[] }) => and(items),
  nothing: 'nothing',
  blocks: ({ count }: { count: number }) => `${count} blocks`,
  items: ({ count }: { count: number }) => `${count} items`,
  quoted: ({ name }: { name: string }) => `“${name}”`,
  eights: ({ counts, unit }: { counts: number; unit: number }) => measures.eights(counts, unit),
  seconds: ({ seconds }: { seconds: number }) => duration(seconds),
}
