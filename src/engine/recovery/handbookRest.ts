import type { Seconds } from '#units/units.ts'

/** A row of the handbook's work-to-rest table. */
interface HandbookRow {
  work: { from: Seconds; to: Seconds }
  restPerWork: { low: number; high: number }
}

/** NSCA Essentials of Strength Training and Conditioning, 4th ed. (2016), bioenergetics chapter. They presume all-out work. */
const ROWS: readonly HandbookRow[] = [
  { work: { from: 5, to: 10 }, restPerWork: { low: 12, high: 20 } },
  { work: { from: 15, to: 30 }, restPerWork: { low: 3, high: 5 } },
  { work: { from: 60, to: 180 }, restPerWork: { low: 3, high: 4 } },
  { work: { from: 180, to: Number.POSITIVE_INFINITY }, restPerWork: { low: 1, high: 3 } },
]

/**
 * Rest after an all-out bout: the row's range where one holds the bout, and between two rows
 * the ratios on a straight line from the end of the one to the start of the next. Undefined
 * below the first row. A bout of just three minutes belongs to the shorter row.
 *
 * @param work seconds of all-out effort
 */
export function handbookRest(work: Seconds): { low: Seconds; high: Seconds } | undefined {
  const next = ROWS.findIndex(({ work: { to } }) => work <= to)
  const after = ROWS[next]
  if (!after) return undefined
  if (work >= after.work.from) return { low: work * after.restPerWork.low, high: work * after.restPerWork.high }
  const before = ROWS[next - 1]
  if (!before) return undefined
  const share = (work - before.work.to) / (after.work.from - before.work.to)
  const between = (a: number, b: number): Seconds => work * (a + (b - a) * share)
  return {
    low: between(before.restPerWork.low, after.restPerWork.low),
    high: between(before.restPerWork.high, after.restPerWork.high),
  }
}
