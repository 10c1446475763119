/** The recommended limit: level in dB(A), minutes at it, and the step in level that halves the time. */
const NIOSH = { level: 85, minutes: 480, exchange: 3 } as const

/** The weekly listening allowance for adults: 80 dB(A) for 40 hours, same exchange. */
const WEEKLY = { level: 80, minutes: 2400, exchange: 3 } as const

/**
 * Minutes a level may last in a day: 480 ÷ 2^((L − 85)/3).
 * Source: NIOSH Publication 98-126 (1998). National rules differ; do not mix.
 */
export const allowedMinutes = (level: number): number => NIOSH.minutes / 2 ** ((level - NIOSH.level) / NIOSH.exchange)

/** Per cent of the daily dose taken in by a time at a level; doses of several stretches add up. Source: as `allowedMinutes`. */
export const noiseDose = (level: number, minutes: number): number => (100 * minutes) / allowedMinutes(level)

/** Per cent of the weekly allowance used by a time at a level. Source: WHO-ITU H.870 safe-listening allowance (2019). */
export const weeklyShare = (level: number, minutes: number): number =>
  (100 * minutes * 2 ** ((level - WEEKLY.level) / WEEKLY.exchange)) / WEEKLY.minutes

/** Mean level of high-intensity classes as measured, dB(A). Source: Beach EF, Nie V, Arch Environ Occup Health 2014;69(4):223-230. */
export const MEASURED_CLASS_LEVEL = 93.1
