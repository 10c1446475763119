import { namesWithRoom } from './namesWithRoom.ts'
import { type BandHeights, type Page, packBands } from './packBands.ts'
import type { Layout, Millimetres } from './paper.ts'

/**
 * How much is said of each change: all of it; without the feel and what the call says already;
 * or also without the block's name where it would take a line more than the page has.
 */
export const DETAILS = ['full', 'short', 'words'] as const
export type Detail = (typeof DETAILS)[number]

/** What a detail is worth against larger type: for a tenth more type a leader gives up feel and repetition, and for another the names (our judgement). */
const WORTH: Record<Detail, number> = { full: 1, short: 0.95, words: 0.9 }

/** Real heights of everything at one layout, detail and type size. */
export interface Measured {
  /** Height a column of the page has for bands. */
  column: Millimetres
  gap: Millimetres
  bands: BandHeights[]
  /** Words have no room beside the numbers. */
  squeezed?: boolean
}

export interface FitJob {
  layouts: readonly Layout[]
  details: readonly Detail[]
  /** Capital heights in millimetres, between which the type is chosen. */
  least: Millimetres
  largest: Millimetres
  /** A song that is not split comes before a page that is saved. */
  whole?: boolean
  /** Every band begins a column of its own. */
  alone?: boolean
  /** Expensive: every call lays the sheet out. */
  measure: (layout: Layout, detail: Detail, cap: Millimetres) => Measured
}

export interface SheetPlan {
  layout: Layout
  detail: Detail
  cap: Millimetres
  pages: Page[]
  /** Rows that have room for the block's name, by band; absent where all have it. */
  names?: ReadonlySet<number>[]
}

/** More than any number of pages, and more than any number of split songs. */
const SPLIT = 1e6
const SQUEEZED = 1e12

/** Steps in which the type grows: a difference no reader could see is not searched for. */
const STEP: Millimetres = 0.02

/**
 * The sheet that is easiest to read: one whose words have room beside the numbers, then where the
 * job says so with the fewest songs split, then on the fewest pages that the least type allows, then
 * the one with the greatest product of type size, ease of its layout and worth of its detail, its
 * type as large as these pages allow.
 */
export function fitSheet(job: FitJob): SheetPlan {
  const tries = job.details.flatMap((detail) => job.layouts.map((layout) => tryAt(job, layout, detail, job.least)))
  const least = Math.min(...tries.map(({ cost }) => cost))
  // The most promising first: the others then mostly need a single look to be left.
  const keeping = tries.filter(({ cost }) => cost === least).sort((a, b) => promise(job, b) - promise(job, a))
  return named(job, keeping.reduce<SheetPlan | null>((best, tried) => better(job, tried, best), null)!)
}

/** The plan with the names its pages have room for. */
function named(job: FitJob, plan: SheetPlan): SheetPlan {
  const { column, gap, bands } = job.measure(plan.layout, plan.detail, plan.cap)
  return bands.some((band) => band.named) ? { ...plan, names: namesWithRoom(plan.pages, bands, { height: column, gap }) } : plan
}

interface Try {
  plan: SheetPlan
  /** What is to be small before all else. */
  cost: number
  /** Height there is for bands on these pages against the height they need. */
  room: number
}

function tryAt(job: FitJob, layout: Layout, detail: Detail, cap: Millimetres): Try {
  const { column, gap, bands, squeezed } = job.measure(layout, detail, cap)
  const pages = packBands(bands, { height: column, columns: layout.columns, gap: job.alone ? Number.POSITIVE_INFINITY : gap })
  const needed = bands.reduce((sum, { head, rows }) => sum + gap + head + rows.reduce((all, row) => all + row, 0), 0)
  const splits = pages.flat(2).length - bands.length
  const cost = pages.length + (job.whole ? SPLIT * splits : 0) + (squeezed ? SQUEEZED : 0)
  return { plan: { layout, detail, cap, pages }, cost, room: (column * layout.columns * pages.length) / needed }
}

const weight = ({ layout, detail }: SheetPlan): number => layout.ease * WORTH[detail]
const score = (plan: SheetPlan): number => plan.cap * weight(plan)

/** Type grows in both directions, so the size that fills a space goes with the root of the room in it. */
const guess = (job: FitJob, { plan, room }: Try): Millimetres => Math.min(job.largest, plan.cap * Math.sqrt(Math.max(1, room)))
const promise = (job: FitJob, tried: Try): number => guess(job, tried) * weight(tried.plan)

/** The try in its largest type, where that beats the best so far; else the best. */
function better(job: FitJob, tried: Try, best: SheetPlan | null): SheetPlan {
  const { layout, detail } = tried.plan
  const last = Math.floor((job.largest - job.least) / STEP)
  const stepOf = (cap: Millimetres) => Math.ceil((cap - job.least) / STEP - 1e-9)
  const planAt = (step: number): SheetPlan | null => {
    const { plan, cost } = tryAt(job, layout, detail, job.least + step * STEP)
    return cost <= tried.cost ? plan : null
  }

  let low = best ? Math.max(0, stepOf(score(best) / weight(tried.plan) + STEP / 2)) : 0
  if (low > last) return best!
  let found = low === 0 ? tried.plan : planAt(low)
  if (!found) return best!

  // Doubling steps around the guess bracket the largest size that fits; halving then finds it.
  let high = last + 1
  let probe = Math.min(last, Math.max(low + 1, stepOf(guess(job, tried))))
  for (let reach = 4; high - low > 1; ) {
    const plan = planAt(probe)
    if (plan) {
      found = plan
      low = probe
    } else high = probe
    const near = plan ? low + reach : high - reach
    probe = near > low && near < high ? near : (low + high) >> 1
    reach = near === probe ? reach * 2 : 1
  }
  return found
}
