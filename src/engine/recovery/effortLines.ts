import type { Placed } from '#engine/timeline/layTimeline.ts'
import type { Effort, Seconds } from '#units/units.ts'

/** Intended effort of one played block: a straight line over its time on the ride clock. Only blocks that last are lines. */
export interface EffortLine {
  block: number
  from: Seconds
  to: Seconds
  start: Effort
  end: Effort
  allOut: boolean
}

/** The effort of the whole ride as lines; lead-ins, open tails, briefing and clear-up have none. */
export function effortLines(blocks: readonly Placed[]): EffortLine[] {
  const lines: EffortLine[] = []
  for (const { block, index, rideFrom, rideTo } of blocks) {
    if (rideTo > rideFrom) {
      lines.push({
        block: index,
        from: rideFrom,
        to: rideTo,
        start: block.effort.from,
        end: block.effort.to,
        allOut: block.allOut === true,
      })
    }
  }
  return lines
}

/** The part of a line at a level or above it, as times; undefined where there is none. A single instant is none. */
export function partFrom(line: EffortLine, level: Effort): { from: Seconds; to: Seconds } | undefined {
  const { start, end, from, to } = line
  if (start >= level && end >= level) return { from, to }
  if (start < level && end < level) return undefined
  const crossing = from + ((to - from) * (level - start)) / (end - start)
  const part = start < end ? { from: crossing, to } : { from, to: crossing }
  return part.to > part.from ? part : undefined
}

/** The part of a line at a level or below it. */
export function partUpTo(line: EffortLine, level: Effort): { from: Seconds; to: Seconds } | undefined {
  return partFrom({ ...line, start: -line.start, end: -line.end }, -level)
}

/** Seconds of a line at a level or above it. */
export const secondsFrom = (line: EffortLine, level: Effort): Seconds => lengthOf(partFrom(line, level))

/** Seconds of a line at a level or below it. */
export const secondsUpTo = (line: EffortLine, level: Effort): Seconds => lengthOf(partUpTo(line, level))

const lengthOf = (part: { from: Seconds; to: Seconds } | undefined): Seconds => (part ? part.to - part.from : 0)
