import type { Seconds } from '#units/units.ts'
import { type PeakLevel, peaksBetween } from './peakLevels.ts'
import type { Cut } from './rulerTicks.ts'
import { type TimeScale, toSeconds } from './timeScale.ts'

/** Pixels from bar to bar. */
const BAR = 2

/** A song's sound as bars, mirrored on a middle line, each the text of one path. */
interface WavePaths {
  /** As far as each bar's loudest moment. */
  top: string
  /** As loud as it is throughout. */
  body: string
}

/**
 * The bars of a cut of a section whose left edge stands at a second of its song. Bars stand on the section's own pixels,
 * so they do not swim while it is moved or scrolled; the song's loudest moment reaches the full height.
 *
 * @param loudest the song's own largest peak, above 0
 * @param height in pixels, top to bottom
 */
export function wavePath(
  levels: readonly PeakLevel[],
  loudest: number,
  origin: Seconds,
  scale: TimeScale,
  cut: Cut,
  height: number,
): WavePaths {
  const middle = height / 2
  const paths: WavePaths = { top: '', body: '' }
  const bar = (x: number, peak: number) => {
    const reach = Math.max(0.5, Math.round((peak / loudest) * middle * 2) / 2)
    return `M${x} ${middle - reach}V${middle + reach}`
  }
  for (let x = Math.floor(cut.from / BAR) * BAR; x < cut.to; x += BAR) {
    const peaks = peaksBetween(levels, origin + toSeconds(scale, x), origin + toSeconds(scale, x + BAR))
    if (!peaks) continue
    paths.top += bar(x + BAR / 2, peaks.top)
    paths.body += bar(x + BAR / 2, peaks.body)
  }
  return paths
}
