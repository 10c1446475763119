import { describe, expect, test } from 'vitest'
import { DETAILS, type Detail, type FitJob, fitSheet, type Measured } from '#features/sheet/paging/fitSheet.ts'
import { LAYOUTS, type Layout } from '#features/sheet/paging/paper.ts'

const [single, , double, triple] = LAYOUTS as [Layout, Layout, Layout, Layout]

/** A sheet of equal rows whose height and number of lines grow with the type, as text does. */
function textSheet(bands: number, rows: number, lines: Partial<Record<Detail, number>> = {}) {
  const calls: number[] = []
  const measure = (layout: Layout, detail: Detail, cap: number): Measured => {
    calls.push(cap)
    const width = 200 / layout.columns
    const row = cap * Math.ceil(((lines[detail] ?? 1) * 30 * cap) / width)
    return {
      column: 250,
      gap: cap / 2,
      bands: Array.from({ length: bands }, () => ({ head: cap, rows: Array.from({ length: rows }, () => row) })),
    }
  }
  return { measure, calls }
}

const job = (more: Partial<FitJob> & Pick<FitJob, 'measure'>): FitJob => ({
  layouts: [single],
  details: ['full'],
  least: 2.33,
  largest: 5.8,
  ...more,
})

describe('fitting a sheet', () => {
  test('takes the largest type that keeps to the page', () => {
    const { measure } = textSheet(5, 10)
    const { cap, pages } = fitSheet(job({ measure }))
    const fits = (size: number) => {
      const { bands, column, gap } = measure(single, 'full', size)
      return bands.length * (bands[0]!.head + bands[0]!.rows.reduce((a, b) => a + b, 0)) + gap * (bands.length - 1) <= column
    }
    expect(pages).toHaveLength(1)
    expect(fits(cap)).toBe(true)
    expect(fits(cap + 0.02)).toBe(false)
  })

  test('never leaves the least or passes the largest type', () => {
    expect(fitSheet(job({ measure: textSheet(1, 1).measure })).cap).toBeCloseTo(5.79, 6)
    const packed = fitSheet(job({ measure: textSheet(30, 12).measure }))
    expect(packed.cap).toBeGreaterThanOrEqual(2.33)
    expect(packed.pages.length).toBeGreaterThan(1)
  })

  test('fewer pages come before larger type', () => {
    const { measure } = textSheet(12, 8, { full: 2, short: 2, words: 1 })
    const plan = fitSheet(job({ measure, layouts: [single, double], details: DETAILS }))
    const alone = fitSheet(job({ measure, details: ['full'] }))
    expect(alone.pages.length).toBeGreaterThan(plan.pages.length)
    expect(plan.detail).toBe('words')
  })

  test('says all where leaving out would gain no tenth in type', () => {
    const { measure } = textSheet(4, 5, { full: 1, short: 1, words: 1 })
    expect(fitSheet(job({ measure, details: DETAILS })).detail).toBe('full')
  })

  test('one column stays the choice while two give no more than a tenth', () => {
    const measure: FitJob['measure'] = (layout, _, cap) => ({
      column: 250 / layout.columns,
      gap: 0,
      bands: Array.from({ length: 8 }, () => ({ head: 0, rows: [cap * 9] })),
    })
    expect(fitSheet(job({ measure, layouts: [single, double] })).layout).toBe(single)
  })

  test('lays out tens of times, not hundreds', () => {
    const { measure, calls } = textSheet(13, 6, { full: 1.5, short: 1.2, words: 1 })
    fitSheet(job({ measure, layouts: LAYOUTS, details: DETAILS }))
    expect(calls.length).toBeLessThan(60)
  })

  test('a song that stays whole comes before a page that is saved, where the job says so', () => {
    // A song fits into one column, and not into one of three, which save a page.
    const measure: FitJob['measure'] = ({ columns }) => ({
      column: columns === 1 ? 100 : 90,
      gap: 0,
      bands: Array.from({ length: 3 }, () => ({ head: 0, rows: [50, 45] })),
    })
    const layouts = [single, triple]
    expect(fitSheet(job({ measure, layouts })).layout).toBe(triple)
    const plan = fitSheet(job({ measure, layouts, whole: true }))
    expect(plan.layout).toBe(single)
    expect(plan.pages.flat(2)).toHaveLength(3)
  })

  test('bands that stand alone have a column each', () => {
    const { measure } = textSheet(4, 1)
    const { pages } = fitSheet(job({ measure, alone: true }))
    expect(pages).toHaveLength(4)
    expect(pages.every((columns) => columns.flat().length === 1)).toBe(true)
  })
})
