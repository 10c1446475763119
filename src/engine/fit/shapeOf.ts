import { constantsOf } from '#engine/constants.ts'
import type { Ride, Section } from '#plan/model.ts'
import type { Effort, Seconds } from '#units/units.ts'
import { partsSeconds } from './sectionSeconds.ts'

/** A section as the shape of a class sees it. */
export interface SectionShape {
  /** Lead-in and song. */
  seconds: Seconds
  /** Time-weighted mean intent. */
  mean: Effort
  peak: Effort
  /** How long it is easy before its first work, and after its last; all of it where nothing in it works. */
  opens: Seconds
  closes: Seconds
}

/** Length, mean and peak effort of every section, and its easy ends by the rules of the ride. */
export function sectionShapes(ride: Ride): SectionShape[] {
  const { warmUpEffort, coolDownEffort } = constantsOf(ride)
  return ride.sections.map((section) => {
    const parts = partsSeconds(section)
    const seconds = parts.reduce((sum, part) => sum + part.seconds, 0)
    const effort = parts.reduce((sum, { block, seconds: length }) => sum + ((block.effort.from + block.effort.to) / 2) * length, 0)
    const peak = parts.reduce((most, { block }) => Math.max(most, block.effort.from, block.effort.to), 0)
    const until = parts.findIndex(({ block }) => Math.max(block.effort.from, block.effort.to) >= warmUpEffort)
    const from = parts.findLastIndex(({ block }) => Math.max(block.effort.from, block.effort.to) > coolDownEffort)
    const opens = section.leadInSeconds + sum(until < 0 ? parts : parts.slice(0, until))
    const closes = from < 0 ? seconds + section.leadInSeconds : sum(parts.slice(from + 1))
    return { seconds: seconds + section.leadInSeconds, mean: seconds > 0 ? effort / seconds : 0, peak, opens, closes }
  })
}

const sum = (parts: readonly { seconds: Seconds }[]): Seconds => parts.reduce((total, { seconds }) => total + seconds, 0)

/** What a section is to its class. */
export type Role = 'warmUp' | 'middle' | 'finish' | 'coolDown'

/**
 * Warm-up: from the start to the first section that works. Cool-down: the easy sections at the
 * end. Finish: the last of the sections with the highest peaks (within half an effort of it).
 */
export function rolesOf(shapes: readonly SectionShape[], work: Effort, easy: Effort): Role[] {
  const firstWork = shapes.findIndex(({ peak }) => peak >= work)
  const warmEnd = firstWork < 0 ? Math.min(1, shapes.length) : Math.max(1, firstWork)
  const lastWork = shapes.findLastIndex(({ peak }) => peak > easy)
  const coolStart = Math.max(warmEnd, lastWork + 1)
  const highest = Math.max(0, ...shapes.slice(warmEnd, coolStart).map(({ peak }) => peak))
  const finish = shapes.findLastIndex(({ peak }, i) => i >= warmEnd && i < coolStart && peak >= highest - 0.5)
  return shapes.map((_, i) => (i < warmEnd ? 'warmUp' : i >= coolStart ? 'coolDown' : i === finish ? 'finish' : 'middle'))
}

/** Points at which two classes are compared, each at the same share of its time. */
const SAMPLES = 40

/**
 * How far two classes lie apart in shape: the mean difference of their sections' mean efforts
 * at equal shares of their time. Built up as a step function; no time is stepped.
 */
export function shapeDistance(a: readonly SectionShape[], b: readonly SectionShape[]): number {
  let sum = 0
  for (let i = 0; i < SAMPLES; i++) sum += Math.abs(effortAt(a, (i + 0.5) / SAMPLES) - effortAt(b, (i + 0.5) / SAMPLES))
  return sum / SAMPLES
}

function effortAt(shapes: readonly SectionShape[], share: number): Effort {
  const total = shapes.reduce((sum, { seconds }) => sum + seconds, 0)
  let rest = share * total
  for (const { seconds, mean } of shapes) {
    if (rest < seconds) return mean
    rest -= seconds
  }
  return shapes.at(-1)?.mean ?? 0
}

/** How long a class is easy at its start and its end, wherever in a song that ends or begins. */
export function endsOf(shapes: readonly SectionShape[]): { warmUp: Seconds; coolDown: Seconds } {
  return { warmUp: easyFrom(shapes, 'opens'), coolDown: easyFrom([...shapes].reverse(), 'closes') }
}

function easyFrom(shapes: readonly SectionShape[], end: 'opens' | 'closes'): Seconds {
  let easy = 0
  for (const shape of shapes) {
    easy += shape[end]
    if (shape[end] < shape.seconds) break
  }
  return easy
}

/** True where a block of the section must not be touched. */
export const isLocked = (section: Section): boolean =>
  section.blocks.some((item) => ('parts' in item ? item.parts : [item]).some(({ locked }) => locked))
