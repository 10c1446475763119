import { exactSteps } from '#engine/anotherBike/stepsOfTurns.ts'
import type { Constants } from '#engine/constants.ts'
import type { Change } from '#engine/cues/changeAt.ts'
import type { PlayedBlock } from '#engine/played.ts'
import type { RecoveryReport } from '#engine/recovery/findBouts.ts'
import { limitsOf } from '#plan/ledger/limits.ts'
import type { Level, Ride } from '#plan/model.ts'
import { isOutOfSaddle } from '#plan/posture.ts'
import type { Rpm, Seconds } from '#units/units.ts'
import type { Said } from '#words/said.ts'
import { DIFFICULTY_BANDS, type DifficultyFigures, type DifficultyPart, difficultyPoints } from './difficulty.ts'
import type { Measures } from './measures.ts'
import type { Overall } from './overall.ts'
import { sayReason } from './sayReason.ts'

/** How hard a class is, and what makes it so. */
export interface DifficultyReport {
  /** 0–100. */
  readonly points: number
  readonly figures: DifficultyFigures
  readonly parts: Record<DifficultyPart, number>
  /** The two parts that add most, in words; fewer where nothing adds. */
  readonly reasons: readonly { readonly part: DifficultyPart; readonly points: number; readonly text: Said }[]
  /** Whether it lies in the band looked for at each level. */
  readonly level: Record<Level, 'below' | 'inside' | 'above'>
}

type Rated = {
  ride: Ride
  blocks: readonly PlayedBlock[]
  recovery: RecoveryReport
  measures: Measures
  overall: Overall
  changes: readonly Change[]
  rules: Constants
}

/** Rates the class; linear in its blocks. */
export function rateDifficulty(rated: Rated): DifficultyReport {
  const figures = figuresOf(rated)
  const parts = difficultyPoints(figures)
  const points = Object.values(parts).reduce((sum, part) => sum + part, 0)
  const reasons = (Object.keys(parts) as DifficultyPart[])
    .filter((part) => parts[part] > 0)
    .sort((a, b) => parts[b] - parts[a])
    .slice(0, 2)
    .map((part) => ({ part, points: parts[part], text: sayReason(part, figures, rated.ride.bike) }))
  return { points, figures, parts, reasons, level: levelsOf(points) }
}

/** By whole points, as they are told: “30 of 100” is within 30 to 60. */
function levelsOf(exact: number): DifficultyReport['level'] {
  const points = Math.round(exact)
  const place = (level: Level) => {
    const [from, to] = DIFFICULTY_BANDS[level]
    return points < from ? 'below' : points > to ? 'above' : 'inside'
  }
  return { beginner: place('beginner'), mixed: place('mixed'), advanced: place('advanced') }
}

function figuresOf({ ride, blocks, recovery, measures, overall, changes, rules }: Rated): DifficultyFigures {
  const { bouts } = recovery
  let seconds = 0
  let doubleTime = 0
  let fastestMove: number | null = null
  let cadenceOutside = 0
  for (const played of blocks) {
    const length = played.to - played.from
    if (length <= 0) continue
    seconds += length
    if (played.strikesPerBeat === 2 && played.cadence.kind === 'turning') doubleTime += length
    const counts = played.block.move?.counts
    if (counts !== undefined) fastestMove = Math.min(counts, fastestMove ?? counts)
    cadenceOutside = Math.max(cadenceOutside, outsideWindow(played, rules))
  }
  const hard = bouts.reduce((sum, { workSeconds }) => sum + workSeconds, 0)
  const moved = changes.filter(({ kinds }) => kinds.includes('posture') || kinds.includes('move')).length
  return {
    hardShare: share(hard, seconds),
    longestHard: measures.longestHard,
    shortestRecovery: bouts.length === 0 ? null : bouts.reduce((least, { have }) => Math.min(least, have), Number.POSITIVE_INFINITY),
    changesPerMinute: share(60 * moved, seconds),
    fastestMove,
    longestStanding: overall.longestStanding,
    highestTurns: turnsOver(ride, overall),
    cadenceOutside,
    doubleTimeShare: share(doubleTime, seconds),
  }
}

const share = (part: Seconds, all: Seconds): number => (all > 0 ? part / all : 0)

/** The highest total over base, in turns of the typical knob: of what weighs as much as four of them, at the pace the bike was measured at. */
function turnsOver({ bike, datum }: Ride, { highestTotal }: Overall): number {
  const full = exactSteps(FULL_TURNS, bike, bike.referenceRpm)
  return full > 0 ? (FULL_TURNS * (highestTotal - limitsOf({ bike, datum }).base)) / full : 0
}

/** The full scale of the heaviest total. */
const FULL_TURNS = 4

function outsideWindow({ block, cadence }: PlayedBlock, rules: Constants): Rpm {
  if (cadence.kind !== 'turning' || block.posture === 'offBike') return 0
  const [min, max] = isOutOfSaddle(block) ? [rules.standingMinRpm, rules.standingMaxRpm] : [rules.seatedMinRpm, rules.seatedMaxRpm]
  return Math.max(0, min - cadence.least, cadence.most - max)
}
