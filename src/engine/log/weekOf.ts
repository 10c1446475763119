import type { TaughtClass } from '#plan/kept/taught.ts'
import { type Day, daysAfter, mondayOf } from '#units/day.ts'
import { type WeeklyLoad, weeklyLoad } from './weeklyLoad.ts'

/** A leader's week from Monday to Sunday: their own rides count as anyone's do. */
interface LeaderWeek extends WeeklyLoad {
  monday: Day
  /** Load and classes of each day, Monday first. */
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

/** The week a day is in. Monotony and strain as `weeklyLoad`. */
export function weekOf(log: readonly TaughtClass[], day: Day): LeaderWeek {
  const monday = mondayOf(day)
  const days = Array.from({ length: 7 }, (_, index) => {
    const date = daysAfter(monday, index)
    const classes = log.filter((taught) => taught.day === date)
    return { day: date, load: classes.reduce((sum, taught) => sum + loadOf(taught), 0), classes: classes.length }
  })
  return { monday, days, classes: days.reduce((sum, { classes }) => sum + classes, 0), ...weeklyLoad(days.map(({ load }) => load)) }
}
