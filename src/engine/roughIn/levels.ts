import type { Level } from '#plan/model.ts'
import type { Effort, Seconds } from '#units/units.ts'
import type { Form } from './segments.ts'

/** How far a rough draft goes at a level. Common practice; the lengths are the trade's habits for pushes and for riding out of the saddle. */
interface LevelPlan {
  /** Effort of a song's louder stretches, in the easiest song of work and in the hardest. */
  up: { easiest: Effort; hardest: Effort }
  /** Effort of pushes, and of the last of the finish. */
  push: Effort
  down: Effort
  /** How long verses and choruses are taken to be where a song has no marks. */
  form: Form
  /** A push lasts from … to …, a stretch at hard effort at most, one out of the saddle at most. */
  pushSeconds: { from: Seconds; to: Seconds }
  hardSeconds: Seconds
  standingSeconds: Seconds
}

export const LEVEL_PLANS: Record<Level, LevelPlan> = {
  beginner: {
    up: { easiest: 5.5, hardest: 7 },
    push: 7,
    down: 4.5,
    form: { down: [45, 60], up: [30, 40] },
    pushSeconds: { from: 12, to: 20 },
    hardSeconds: 20,
    standingSeconds: 30,
  },
  mixed: {
    up: { easiest: 7, hardest: 8 },
    push: 8.5,
    down: 5,
    form: { down: [32, 40, 48], up: [30, 40] },
    pushSeconds: { from: 14, to: 40 },
    hardSeconds: 45,
    standingSeconds: 60,
  },
  advanced: {
    up: { easiest: 7, hardest: 8.5 },
    push: 9,
    down: 5,
    form: { down: [30, 40], up: [40, 50, 60] },
    pushSeconds: { from: 14, to: 45 },
    hardSeconds: 60,
    standingSeconds: 90,
  },
}
