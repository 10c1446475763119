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
  /** From 0 to 10; between two levels the nearest, the harder one in the middle. */
  effort: ({ effort }: { effort: number }) => EFFORTS[nearestLevel(effort)]!,
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
