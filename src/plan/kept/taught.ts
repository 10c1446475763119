import * as v from 'valibot'
import { jsonOf } from '#plan/document/jsonOf.ts'
import { LIMITS } from '#plan/document/schema.ts'
import { POSTURES, type Posture, TERRAINS, type Terrain } from '#plan/model.ts'
import { type Day, isDay } from '#units/day.ts'
import type { Effort, Seconds } from '#units/units.ts'

/** The form of log entries this build writes. */
const CURRENT_TAUGHT = 1

/**
 * A class as it was taught: apart from its plan, which may change or go, and complete in itself.
 * Kept on this machine alone; never in a link or a ride's file.
 */
export interface TaughtClass {
  id: string
  /** The ride it was planned as. */
  rideId: string
  title: string
  /** `contentRevision` of that ride as it was. */
  revision: string
  day: Day
  /** "18:30"; when the slot began and when the class really did. */
  bookedAt?: string
  startedAt?: string
  /** Where, as the ride names its bikes. */
  room: string
  slotMinutes: number
  headCount?: number
  /** For nobody else. */
  note?: string
  sections: TaughtSection[]
}

const OUTCOMES = ['taught', 'changed', 'skipped'] as const
export type Outcome = (typeof OUTCOMES)[number]

/** A song, or a stretch without one, and what became of it. */
export interface TaughtSection {
  /** Of the section in the ride. */
  id: string
  title: string
  artist?: string
  /** False for a stretch without music. */
  song: boolean
  outcome: Outcome
  /** How long it was played or ridden; 0 where it was skipped. */
  seconds: Seconds
  stars?: number
  /** What was done otherwise, in one line. */
  change?: string
  blocks: TaughtBlock[]
}

export interface TaughtBlock {
  name: string
  terrain: Terrain
  posture: Posture
  move?: string
  seconds: Seconds
  /** Mean of the intended effort. */
  effort: Effort
  skipped?: boolean
}

const text = (most: number) => v.pipe(v.string(), v.maxLength(most))
const clock = v.pipe(v.string(), v.regex(/^([01][0-9]|2[0-3]):[0-5][0-9]$/))
const seconds = v.pipe(v.number(), v.minValue(0), v.maxValue(LIMITS.seconds))
const whole = (low: number, high: number) => v.pipe(v.number(), v.integer(), v.minValue(low), v.maxValue(high))

const blockSchema = v.object({
  name: text(LIMITS.name),
  terrain: v.picklist(TERRAINS),
  posture: v.picklist(POSTURES),
  move: v.optional(text(LIMITS.name)),
  seconds,
  effort: v.pipe(v.number(), v.minValue(0), v.maxValue(10)),
  skipped: v.optional(v.boolean()),
})

const sectionSchema = v.object({
  id: text(LIMITS.id),
  title: text(LIMITS.line),
  artist: v.optional(text(LIMITS.line)),
  song: v.boolean(),
  outcome: v.picklist(OUTCOMES),
  seconds,
  stars: v.optional(whole(1, 5)),
  change: v.optional(text(LIMITS.line)),
  blocks: v.pipe(v.array(blockSchema), v.maxLength(LIMITS.items * LIMITS.rounds)),
})

const taughtSchema = v.object({
  taught: v.literal(CURRENT_TAUGHT),
  id: v.pipe(text(LIMITS.id), v.minLength(1)),
  rideId: text(LIMITS.id),
  title: text(LIMITS.line),
  revision: text(LIMITS.name),
  day: v.pipe(v.string(), v.check(isDay)),
  bookedAt: v.optional(clock),
  startedAt: v.optional(clock),
  room: text(LIMITS.name),
  slotMinutes: v.pipe(v.number(), v.minValue(1), v.maxValue(360)),
  headCount: v.optional(whole(0, 10_000)),
  note: v.optional(text(LIMITS.notes)),
  sections: v.pipe(v.array(sectionSchema), v.maxLength(LIMITS.sections)),
})

/** A log entry as text to keep. */
export const writeTaught = (taught: TaughtClass): string => JSON.stringify({ taught: CURRENT_TAUGHT, ...taught })

/** Reads such a text; null where it is none or is of a form to come. Never throws. */
export function readTaught(text: string): TaughtClass | null {
  const read = v.safeParse(taughtSchema, jsonOf(text))
  if (!read.success) return null
  const { taught: _form, ...entry } = read.output
  return entry
}
