import type { Seconds } from '#units/units.ts'

/** A row of the handbook's work-to-rest table; `verified` is false where its power share could only be recalled. */
interface HandbookRow {
  system: string
  work: { from: Seconds; to: Seconds }
  restPerWork: { low: number; high: number }
  percentMaxPower: { low: number; high: number }
  /** The power share was seen in a public copy; times and ratios of all rows were. */
  powerVerified: boolean
}

/** NSCA Essentials of Strength Training and Conditioning, 4th ed. (2016), bioenergetics chapter. They presume all-out work. */
export const HANDBOOK_ROWS: readonly HandbookRow[] = [
  row('phosphagen', 5, 10, 12, 20, 90, 100, true),
  row('fast glycolysis', 15, 30, 3, 5, 75, 90, false),
  row('fast glycolysis and oxidative', 60, 180, 3, 4, 30, 75, false),
  row('oxidative', 180, Number.POSITIVE_INFINITY, 1, 3, 20, 30, false),
]

export const HANDBOOK_SOURCE = 'NSCA Essentials of Strength Training and Conditioning, 4th ed., work-to-rest table'

/**
 * Rest after an all-out bout: the row's range where one holds the bout, and between two rows
 * the ratios on a straight line from the end of the one to the start of the next. Undefined
 * below the first row. A bout of just three minutes belongs to the shorter row.
 *
 * @param work seconds of all-out effort
 */
export function handbookRest(work: Seconds): { low: Seconds; high: Seconds } | undefined {
  const next = HANDBOOK_ROWS.findIndex(({ work: { to } }) => work <= to)
  const after = HANDBOOK_ROWS[next]
  if (!after) return undefined
  if (work >= after.work.from) return { low: work * after.restPerWork.low, high: work * after.restPerWork.high }
  const before = HANDBOOK_ROWS[next - 1]
  if (!before) return undefined
  const share = (work - before.work.to) / (after.work.from - before.work.to)
  const between = (a: number, b: number): Seconds => work * (a + (b - a) * share)
  return {
    low: between(before.restPerWork.low, after.restPerWork.low),
    high: between(before.restPerWork.high, after.restPerWork.high),
  }
}

function row(
  system: string,
  from: Seconds,
  to: Seconds,
  low: number,
  high: number,
  powerLow: number,
  powerHigh: number,
  powerVerified: boolean,
): HandbookRow {
  return {
    system,
    work: { from, to },
    restPerWork: { low, high },
    percentMaxPower: { low: powerLow, high: powerHigh },
    powerVerified,
  }
}
