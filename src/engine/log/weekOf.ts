import type { TaughtClass } from '#plan/kept/taught.ts'
import { type Day, daysAfter, startOfWeek } from '#units/day.ts'
import { type WeeklyLoad, weeklyLoad } from './weeklyLoad.ts'

/** A leader's week: their own rides count as anyone's do. */
interface LeaderWeek extends WeeklyLoad {
  first: Day
  /** Load and classes of each day in order. */
  days: { day: Day; load: number; classes: number }[]
  classes: number
}

/** Classes on one day after which voice and legs ask for some of them off the bike. Common practice. */
export const MANY_A_DAY = 3

/**
 * Load of what was ridden: Σ effort (0–10) × minutes.
 * Source: Foster C et al., J Strength Cond Res 2001;15(1):109-115. There one rating for the
 * whole session; a plan has an effort for every block, and their sums add up.
 */
export function loadOf({ sections }: Pick<TaughtClass, 'sections'>): number {
  const ridden = sections.filter(({ outcome }) => outcome !== 'skipped').flatMap(({ blocks }) => blocks.filter(({ skipped }) => !skipped))
  return ridden.reduce((sum, { effort, seconds }) => sum + effort * (seconds / 60), 0)
}

/**
 * The week a day is in. Monotony and strain as `weeklyLoad`.
 *
 * @param weekday the one weeks begin with, Monday 0
 */
export function weekOf(log: readonly TaughtClass[], day: Day, weekday = 0): LeaderWeek {
  const first = startOfWeek(day, weekday)
  const days = Array.from({ length: 7 }, (_, index) => {
    const date = daysAfter(first, index)
    const classes = log.filter((taught) => taught.day === date)
    return { day: date, load: classes.reduce((sum, taught) => sum + loadOf(taught), 0), classes: classes.length }
  })
  return { first, days, classes: days.reduce((sum, { classes }) => sum + classes, 0), ...weeklyLoad(days.map(({ load }) => load)) }
}
