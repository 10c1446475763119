import type { Constants } from '#engine/constants.ts'
import { type SectionShape, shapeDistance } from '#engine/fit/shapeOf.ts'
import type { Led, Plan } from '#engine/leading/led.ts'
import type { PlayedBlock } from '#engine/played.ts'
import { isOutOfSaddle } from '#plan/posture.ts'
import type { Rpm } from '#units/units.ts'

interface Costing {
  plan: Plan
  led: Led
  /** Shapes of the class as it comes, by section. */
  shapes: readonly SectionShape[]
  rules: Constants
}

/** What the parts of a song's worth weigh against each other (common practice, uncalibrated). */
const WEIGHTS = { song: 1, shape: 1.5, job: 1, recovery: 2, peak: 1.5 } as const

/**
 * What a class loses with a song: its shape; a job no other song does; the one recovery between
 * two hard songs, which would join; the highest effort. Costs only compare.
 */
export function songCost(costing: Costing, index: number): number {
  const { shapes, rules } = costing
  const own = shapes[index]!
  const shape = shapeDistance(shapes, shapes.toSpliced(index, 1))
  const works = (other: SectionShape | undefined) => other !== undefined && other.peak >= rules.workEffort
  const joins = own.peak <= rules.recoveryEffort && works(shapes[index - 1]) && works(shapes[index + 1])
  const highest = Math.max(...shapes.map(({ peak }) => peak))
  return (
    WEIGHTS.song +
    WEIGHTS.shape * shape +
    WEIGHTS.job * Math.min(1, nearestJob(costing, index)) +
    (joins ? WEIGHTS.recovery : 0) +
    (own.peak >= highest ? WEIGHTS.peak : 0)
  )
}

/** How far the job of a song is from the nearest other one that stays: effort, peak and legs, 0 for the same. */
function nearestJob({ plan, led, shapes }: Costing, index: number): number {
  const job = (i: number) => ({ ...shapes[i]!, rpm: cadenceOf(plan, led, i), standing: standingOf(plan, led, i) })
  const own = job(index)
  const distances = shapes.flatMap((_, i) => {
    if (i === index) return []
    const other = job(i)
    const legs = own.rpm === null || other.rpm === null ? 1 : Math.abs(own.rpm - other.rpm) / 15
    return [Math.abs(own.mean - other.mean) / 3 + Math.abs(own.peak - other.peak) / 3 + legs + Math.abs(own.standing - other.standing)]
  })
  return Math.min(...distances, 1)
}

function blocksOf({ report }: Plan, { sections }: Led, index: number): PlayedBlock[] {
  return sections[index]!.items.map(({ planned }) => report.blocks[planned]!)
}

/** Mean cadence of a song's turning blocks; null where none is known. */
function cadenceOf(plan: Plan, led: Led, index: number): Rpm | null {
  const speeds = blocksOf(plan, led, index).flatMap(({ cadence, from, to }) =>
    cadence.kind === 'turning' ? [{ rpm: cadence.mean, seconds: to - from }] : [],
  )
  const seconds = speeds.reduce((sum, speed) => sum + speed.seconds, 0)
  return seconds > 0 ? speeds.reduce((sum, speed) => sum + speed.rpm * speed.seconds, 0) / seconds : null
}

/** Share of a song out of the saddle, 0 to 1. */
function standingOf(plan: Plan, led: Led, index: number): number {
  const blocks = blocksOf(plan, led, index)
  const seconds = (list: readonly PlayedBlock[]) => list.reduce((sum, { from, to }) => sum + to - from, 0)
  const all = seconds(blocks)
  return all > 0 ? seconds(blocks.filter(({ block }) => isOutOfSaddle(block))) / all : 0
}
