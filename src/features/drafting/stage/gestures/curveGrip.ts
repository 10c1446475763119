import type { PlayedBlock } from '#engine/played.ts'
import { levelToY } from '#features/drafting/stage/chartFrame.ts'
import { type TimeScale, toSeconds, toX } from '#features/drafting/stage/timeScale.ts'
import type { CurvePart } from './effortPull.ts'

/** How near the curve a pointer has to be to hold it, and how much of a block's side is its end, in pixels. */
const GRIP = { reach: 9, end: 18 } as const

interface CurveGrip {
  played: PlayedBlock
  part: CurvePart
}

/**
 * Which block's part of the curve lies under a point of the chart, and whether its end does; null away from the curve. A
 * block too narrow for both has its ends in its outer quarters.
 *
 * @param point pixels from the ride's beginning, and from the top of the chart's place
 */
export function curveGrip(blocks: readonly PlayedBlock[], scale: TimeScale, { x, y }: { x: number; y: number }): CurveGrip | null {
  const at = toSeconds(scale, x)
  const played = blocks.find(({ from, to }) => at >= from && at < to)
  if (!played) return null
  const { from, to } = played.block.effort
  const share = (at - played.from) / (played.to - played.from)
  if (Math.abs(levelToY(from + (to - from) * share) - y) > GRIP.reach) return null
  const width = toX(scale, played.to - played.from)
  const end = Math.min(GRIP.end, width / 4)
  return { played, part: share * width < end ? 'from' : (1 - share) * width < end ? 'to' : 'level' }
}
