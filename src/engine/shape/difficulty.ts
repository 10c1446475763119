import type { Level } from '#plan/model.ts'
import type { Seconds } from '#units/units.ts'

/** What a difficulty is made of; each is 0 at nothing and 1 at its full scale. */
export interface DifficultyFigures {
  /** Share of block time at hard effort, 0–1. */
  hardShare: number
  longestHard: Seconds
  /** Shortest recovery after a hard bout; null without hard bouts. */
  shortestRecovery: Seconds | null
  /** Changes of posture or move a minute. */
  changesPerMinute: number
  /** Counts of the fastest move; null without moves. */
  fastestMove: number | null
  longestStanding: Seconds
  /** Highest total over base, in turns. */
  highestTurns: number
  /** How far the legs leave the window of their posture, rev/min. */
  cadenceOutside: number
  /** Share of block time at two strikes a beat, 0–1. */
  doubleTimeShare: number
}

export type DifficultyPart = keyof DifficultyFigures

/** Weights, together 1 (common practice). */
const DIFFICULTY_WEIGHTS: Record<DifficultyPart, number> = {
  hardShare: 0.2,
  longestHard: 0.15,
  shortestRecovery: 0.15,
  changesPerMinute: 0.15,
  fastestMove: 0.1,
  longestStanding: 0.1,
  highestTurns: 0.05,
  cadenceOutside: 0.05,
  doubleTimeShare: 0.05,
}

/** How much of its full scale each figure reaches, before it is cut at 1 (full scales: common practice). */
const REACHED: { [Part in DifficultyPart]: (value: DifficultyFigures[Part]) => number } = {
  hardShare: (share) => share / 0.35,
  longestHard: (seconds) => seconds / 90,
  shortestRecovery: (seconds) => (seconds === null ? 0 : Math.max(0, 60 - seconds) / 60),
  changesPerMinute: (changes) => changes / 4,
  fastestMove: (counts) => (counts === null ? 0 : Math.max(0, 16 - counts) / 14),
  longestStanding: (seconds) => seconds / 300,
  highestTurns: (turns) => Math.max(0, turns) / 4,
  cadenceOutside: (rpm) => rpm / 15,
  doubleTimeShare: (share) => share / 0.5,
}

/** Points of 100 that each figure adds. */
export function difficultyPoints(figures: DifficultyFigures): Record<DifficultyPart, number> {
  const points = {} as Record<DifficultyPart, number>
  for (const part of Object.keys(REACHED) as DifficultyPart[]) {
    const reached = (REACHED[part] as (value: number | null) => number)(figures[part])
    points[part] = 100 * DIFFICULTY_WEIGHTS[part] * Math.min(1, reached)
  }
  return points
}

/** The band a class of a level is looked for in, 0–100 (common practice). */
export const DIFFICULTY_BANDS: Record<Level, readonly [from: number, to: number]> = {
  beginner: [0, 30],
  mixed: [30, 60],
  advanced: [60, 100],
}
