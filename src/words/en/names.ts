import { and, duration } from '#words/forms.ts'
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

export const names = {
  terrain: ({ terrain }: { terrain: keyof typeof TERRAINS }) => TERRAINS[terrain],
  posture: ({ posture }: { posture: keyof typeof POSTURES }) => POSTURES[posture],
  hands: ({ hands }: { hands: keyof typeof HANDS }) => HANDS[hands],
  foot: ({ foot }: { foot: keyof typeof FEET }) => FEET[foot],
  level: ({ level }: { level: keyof typeof LEVELS }) => LEVELS[level],
  untitled: 'untitled ride',
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
