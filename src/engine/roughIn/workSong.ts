import type { Constants } from '#engine/constants.ts'
import type { Level } from '#plan/model.ts'
import type { Effort, Seconds } from '#units/units.ts'
import type { Lessons } from './lessons.ts'
import type { LevelPlan } from './levels.ts'
import type { Segment } from './phrases.ts'
import type { Recipe } from './recipes.ts'

/** A song of work as it is to be laid. */
export interface WorkSong {
  recipe: Recipe
  segments: readonly Segment[]
  /** 0 to 1: how hard it may become. */
  intensity: number
  level: Level
  plan: LevelPlan
  rules: Constants
  /** What was taught of moves before it. */
  lessons: Lessons
  eightSeconds: Seconds
  /** Seconds after its last whole eight, which rounds cannot hold. */
  rest: Seconds
  /** Easy riding that follows the song for certain. */
  easyAfter: Seconds
  /** Its last hard effort lasts no longer: before a finish, than the rest that begins it. */
  lastMost: Seconds
}

/** How much effort rises through a build; little enough that one total of the knob carries it. */
export const RISE: Effort = 2
