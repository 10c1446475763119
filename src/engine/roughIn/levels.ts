import type { Level } from '#plan/model.ts'
import type { Effort, Seconds } from '#units/units.ts'
import type { Form } from './segments.ts'

/** From how little to how much of something a level takes. */
type Range = readonly [least: number, most: number]

/** How far a rough draft may go at a level. Common practice; the lengths are the trade's habits for pushes and for riding out of the saddle. */
interface LevelRange {
  /** Effort of a song's louder stretches, in the easiest song of work and in the hardest but the finish. */
  easiest: Range
  hardest: Range
  /** Effort of pushes, and of the last of the finish. */
  push: Range
  finish: Effort
  down: Effort
  /** How long verses and choruses are taken to be where a song has no marks. */
  form: Form
  /** A push lasts from … to …, a stretch at hard effort at most, one out of the saddle at most. */
  pushSeconds: { from: Seconds; to: Range }
  hardSeconds: Range
  standingSeconds: Range
  steps: Range
  growth: Range
  rounds: Range
  /** Whether efforts are set up out of the saddle: from 0.5 on. */
  setsUp: Range
  /** Whether quieter stretches longer than riders need have an attack in them: from 0.5 on. */
  attacks: Range
  /** How long a song without marks is quiet at first. */
  opening: Range
  /** The difficulty looked for, of 100: well inside the level's own band. */
  aim: number
}

/** How far one draft goes. */
export interface LevelPlan {
  easiest: Effort
  hardest: Effort
  push: Effort
  finish: Effort
  down: Effort
  pushSeconds: { from: Seconds; to: Seconds }
  hardSeconds: Seconds
  standingSeconds: Seconds
  /** Steps a louder stretch is taken in at most: plain and layered in turn, plain first. */
  steps: number
  /** How much a song's louder stretches grow. */
  growth: Effort
  rounds: number
  /** How long a song without marks is quiet at first, at most. */
  opening: Seconds
  /** Riders come out of the saddle to set efforts up. */
  setsUp: boolean
  /** Riders attack in quieter stretches that are longer than they need. */
  attacks: boolean
}

export const LEVEL_RANGES: Record<Level, LevelRange> = {
  beginner: {
    easiest: [5.5, 6],
    hardest: [7, 7],
    push: [7, 7],
    finish: 7,
    down: 4.5,
    form: { down: [45, 60], up: [30, 40] },
    pushSeconds: { from: 12, to: [20, 20] },
    hardSeconds: [20, 20],
    standingSeconds: [30, 30],
    steps: [1, 1],
    growth: [1, 1],
    rounds: [5, 5],
    setsUp: [0, 0],
    attacks: [0, 0],
    opening: [60, 60],
    aim: 15,
  },
  mixed: {
    easiest: [6.5, 8],
    hardest: [7.5, 8.5],
    push: [8, 8.5],
    finish: 9,
    down: 5,
    form: { down: [32, 40, 48], up: [30, 40] },
    pushSeconds: { from: 14, to: [20, 40] },
    hardSeconds: [30, 60],
    standingSeconds: [45, 120],
    steps: [1, 4],
    growth: [1, 0.5],
    rounds: [5, 6],
    setsUp: [0, 1],
    attacks: [0, 0],
    opening: [48, 30],
    aim: 44,
  },
  advanced: {
    easiest: [7, 8.5],
    hardest: [8, 8.5],
    push: [8.5, 8.5],
    finish: 9.5,
    down: 5,
    form: { down: [30, 40], up: [30, 40, 48] },
    pushSeconds: { from: 14, to: [20, 45] },
    hardSeconds: [60, 105],
    standingSeconds: [60, 240],
    steps: [2, 6],
    growth: [1, 0.5],
    rounds: [5, 9],
    setsUp: [0.5, 1],
    attacks: [0, 1],
    opening: [32, 14],
    aim: 68,
  },
}

/** @param dose how far to go, 0 to 1 of what the level takes */
export function levelPlan(level: Level, dose: number): LevelPlan {
  const {
    easiest,
    hardest,
    push,
    finish,
    down,
    pushSeconds,
    hardSeconds,
    standingSeconds,
    steps,
    growth,
    rounds,
    setsUp,
    attacks,
    opening,
  } = LEVEL_RANGES[level]
  const at = ([least, most]: Range) => least + dose * (most - least)
  return {
    easiest: at(easiest),
    hardest: at(hardest),
    push: at(push),
    finish,
    down,
    pushSeconds: { from: pushSeconds.from, to: at(pushSeconds.to) },
    hardSeconds: at(hardSeconds),
    standingSeconds: at(standingSeconds),
    steps: Math.round(at(steps)),
    growth: at(growth),
    rounds: Math.round(at(rounds)),
    opening: at(opening),
    setsUp: at(setsUp) >= 0.5,
    attacks: at(attacks) >= 0.5,
  }
}
