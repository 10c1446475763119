import type { Range } from '#engine/band/riderBand.ts'
import { quadraticAt } from '#engine/demand/quadratic.ts'
import type { PlayedBlock, PlayedCadence } from '#engine/played.ts'
import type { CurvePoint, RideReport, RiderReport } from '#engine/report.ts'
import { reserveAt } from '#engine/reserve/reserveCurve.ts'
import { indexAt } from '#engine/response/heartCurve.ts'
import { heartRateAt } from '#engine/response/heartReserve.ts'
import { relaxedAt } from '#engine/response/relaxation.ts'
import type { Effort, Rpm, Seconds } from '#units/units.ts'

/** An estimate, and where nine of ten such riders on such bikes would lie. */
interface Estimate extends Range {
  readonly value: number
}

/** What the curves of a ride stand at; null where a curve says nothing. */
interface CurveReading {
  readonly block: PlayedBlock | null
  /** Intended effort, 0–10. */
  readonly planned: Effort | null
  /** `still` for legs that are. */
  readonly cadence: Rpm | 'still' | null
  /** Estimated effort, 0–10. */
  readonly estimated: Estimate | null
  /** Beats a minute. */
  readonly heart: Estimate | null
  /** What is left of the reserve, 0–1; what a model holds below nothing is nothing. */
  readonly reserve: Estimate | null
}

/**
 * Every curve at one second of the ride clock, exactly and not off the picture: where two pieces meet it is what
 * begins there. `rider` is whose estimates are told; none without one.
 */
export function readCurves(report: RideReport, rider: RiderReport | undefined, at: Seconds): CurveReading {
  const block = report.blocks.find(({ from, to }) => from <= at && at < to) ?? null
  return {
    block,
    planned: lineAt(report.curves.intent, at),
    cadence: block && cadenceAt(block.cadence, at - block.from, block.to - block.from),
    estimated: rider && block ? effortAt(rider, block.index, at) : null,
    heart: rider ? heartOf(rider, at) : null,
    reserve: rider && rider.reserve.pieces.length > 0 && at <= rider.reserve.pieces.at(-1)!.to ? reserveOf(rider, at) : null,
  }
}

/** Straight between breakpoints; where two stand at one time the later one counts. Null in the gaps between runs. */
function lineAt(runs: readonly (readonly CurvePoint[])[], at: Seconds): number | null {
  // Where one run ends as the next begins, the one that begins is meant.
  const run = runs.findLast((points) => points.length > 0 && points[0]!.at <= at && at <= points.at(-1)!.at)
  if (!run) return null
  const i = run.findLastIndex((point) => point.at <= at)
  const [before, after] = [run[i]!, run[i + 1]]
  if (!after) return before.value
  return before.value + ((after.value - before.value) * (at - before.at)) / (after.at - before.at)
}

function cadenceAt(cadence: PlayedCadence, passed: Seconds, length: Seconds): Rpm | 'still' | null {
  if (cadence.kind === 'unknown') return null
  if (cadence.kind === 'still') return 'still'
  const { from, to, pieces } = cadence
  if (!pieces) return from + ((to - from) * passed) / length
  return (pieces.find((piece) => passed < piece.to) ?? pieces.at(-1)!).rpm
}

function effortAt({ demand, band }: RiderReport, block: number, at: Seconds): Estimate | null {
  const of = (demands: RiderReport['demand']): Effort | null => {
    const pieces = demands[block]?.pieces
    const piece = pieces?.findLast(({ from }) => from <= at)
    return piece ? quadraticAt(piece.effort, at - piece.from) : null
  }
  const [value, low, high] = [of(demand), of(band.demand.low), of(band.demand.high)]
  return value === null ? null : { value, low: Math.min(value, low ?? value), high: Math.max(value, high ?? value) }
}

function heartOf({ response, band }: RiderReport, at: Seconds): Estimate | null {
  const { pieces, range } = response
  if (pieces.length === 0 || at > pieces.at(-1)!.to) return null
  const piece = pieces[indexAt(pieces, at)]
  if (!piece) return null
  const share = relaxedAt(piece, at)
  const { low, high } = band.heartAt(at)
  return {
    value: heartRateAt(share, range),
    low: heartRateAt(Math.min(low, share), range),
    high: heartRateAt(Math.max(high, share), range),
  }
}

function reserveOf({ reserve, band }: RiderReport, at: Seconds): Estimate {
  const held = (share: number) => Math.min(1, Math.max(0, share))
  const value = reserveAt(reserve, at)
  const { low, high } = band.reserveAt(at)
  return { value: held(value), low: held(Math.min(low, value)), high: held(Math.max(high, value)) }
}
