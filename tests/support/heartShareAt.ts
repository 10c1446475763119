import { type HeartCurve, indexAt } from '#engine/response/heartCurve.ts'
import { relaxedAt } from '#engine/response/relaxation.ts'

/** What the predicted heart rate of a report is at a moment; outside the curve its nearest end. */
export function heartShareAt({ pieces }: HeartCurve, at: number): number {
  const piece = pieces[indexAt(pieces, at)]
  return piece === undefined ? 0 : relaxedAt(piece, Math.min(piece.to, Math.max(piece.from, at)))
}
