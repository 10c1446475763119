import type { Effort } from '#units/units.ts'

/** What each level of effort is called here: how a rider at it sits, and then talks. Not taken from any rating scale. */
const EFFORT_WORDS = [
  'off the pedals',
  'drifting',
  'loose',
  'chatty',
  'settled',
  'pushing',
  'digging',
  'clipped words',
  'one word at a time',
  'hanging on',
  'nothing left',
] as const

/** The words of an effort from 0 to 10; those of the nearest level where it lies between two, the harder one in the middle. */
export function effortWords(effort: Effort): string {
  return EFFORT_WORDS[Math.min(10, Math.max(0, Math.round(effort)))]!
}
