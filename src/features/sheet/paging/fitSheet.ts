import { type BandHeights, type Page, packBands } from './packBands.ts'
import type { Layout, Millimetres } from './paper.ts'

/** How much is said of each change: all of it, without the feel, or without the block's name where it has words. */
export const DETAILS = ['full', 'names', 'words'] as const
export type Detail = (typeof DETAILS)[number]

/** Real heights of everything at one layout, detail and type size. */
export interface Measured {
  /** Height a column of the page has for bands. */
  column: Millimetres
  gap: Millimetres
  bands: BandHeights[]
}

export interface FitJob {
  layouts: readonly Layout[]
  details: readonly Detail[]
  /** Capital heights in millimetres, between which the type is chosen. */
  least: Millimetres
  largest: Millimetres
  measure: (layout: Layout, detail: Detail, cap: Millimetres) => Measured
}

export interface SheetPlan {
  layout: Layout
  detail: Detail
  cap: Millimetres
  pages: Page[]
}

/** Steps in which the type grows: what a reader could not tell apart is not tried. */
const STEP: Millimetres = 0.02

/**
 * The sheet that is easiest to read: on the fewest pages that the least type allows, with as much
 * detail as these pages hold, in the largest type that still keeps to them. Of layouts with the
 * same type the earlier one is taken.
 *
 * @param job.details the fullest first; a later one is taken only where it saves a page
 */
export function fitSheet(job: FitJob): SheetPlan {
  const { details, layouts, least } = job
  const tries = details.flatMap((detail) => layouts.map((layout) => packedAt(job, layout, detail, least)))
  const fewest = Math.min(...tries.map((plan) => plan.pages.length))
  const reaching = tries.filter((plan) => plan.pages.length === fewest)
  const { detail } = reaching[0]!
  return reaching.filter((plan) => plan.detail === detail).reduce<SheetPlan | null>((best, plan) => larger(job, plan, best), null)!
}

/** The plan with its type as large as its pages allow, or the best so far where that is not smaller. */
function larger(job: FitJob, plan: SheetPlan, best: SheetPlan | null): SheetPlan {
  const at = (step: number) => packedAt(job, plan.layout, plan.detail, job.least + step * STEP)
  const keeps = (other: SheetPlan) => other.pages.length <= plan.pages.length
  let held = best ? Math.round((best.cap - job.least) / STEP) + 1 : 0
  const start = held === 0 ? plan : at(held)
  if (!keeps(start)) return best!
  let found = start
  let tooLarge = Math.floor((job.largest - job.least) / STEP) + 1
  while (tooLarge - held > 1) {
    const middle = (held + tooLarge) >> 1
    const tried = at(middle)
    if (keeps(tried)) {
      held = middle
      found = tried
    } else tooLarge = middle
  }
  return found
}

function packedAt(job: FitJob, layout: Layout, detail: Detail, cap: Millimetres): SheetPlan {
  const { column, gap, bands } = job.measure(layout, detail, cap)
  return { layout, detail, cap, pages: packBands(bands, { height: column, columns: layout.columns, gap }) }
}
