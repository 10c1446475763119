import { PEAKS_PER_SECOND, type SongSound } from '#plan/sound/songSound.ts'
import type { Seconds } from '#units/units.ts'

/** Peaks of a sound in bins of one length: the loudest moment of each, and how loud it is throughout. */
export interface PeakLevel {
  top: Uint8Array
  /** The mean of the peaks in the bin. */
  body: Uint8Array
}

/**
 * A sound's peaks at every coarseness: the peaks themselves, then bins of two, four, … of them, down to one bin for all.
 * A bin at the end that is not full is judged by what is in it. Twice the peaks in memory, however often it is drawn.
 */
function peakLevels(peaks: Uint8Array): PeakLevel[] {
  const levels: PeakLevel[] = [{ top: peaks, body: peaks }]
  for (let level = levels[0]!; level.top.length > 1; ) {
    level = halved(level)
    levels.push(level)
  }
  return levels
}

function halved({ top, body }: PeakLevel): PeakLevel {
  const bins = Math.ceil(top.length / 2)
  const next: PeakLevel = { top: new Uint8Array(bins), body: new Uint8Array(bins) }
  for (let bin = 0; bin < bins; bin++) {
    const [first, second] = [2 * bin, Math.min(2 * bin + 1, top.length - 1)]
    next.top[bin] = Math.max(top[first]!, top[second]!)
    next.body[bin] = Math.round((body[first]! + body[second]!) / 2)
  }
  return next
}

const known = new WeakMap<SongSound, PeakLevel[]>()

/** The levels of a sound, made once. */
export function levelsOf(sound: SongSound): PeakLevel[] {
  const levels = known.get(sound) ?? peakLevels(sound.peaks)
  known.set(sound, levels)
  return levels
}

/** A bar of the wave: how far it reaches at its loudest and throughout, 0 to 255. */
interface WaveBar {
  top: number
  body: number
}

/**
 * The sound between two of its seconds, from a level of which the stretch holds two to four bins, so that the answer costs
 * the same for a moment and for a minute. Stretches that adjoin share no bin and leave none out; a bin on a border goes
 * to the side that has more of it. Null where the sound has nothing.
 */
export function peaksBetween(levels: readonly PeakLevel[], from: Seconds, to: Seconds): WaveBar | null {
  const [first, end] = [from * PEAKS_PER_SECOND, to * PEAKS_PER_SECOND]
  const depth = Math.min(levels.length - 1, Math.max(0, Math.floor(Math.log2(end - first)) - 1))
  const level = levels[depth]!
  const size = 2 ** depth
  const firstBin = Math.max(0, Math.round(first / size))
  const endBin = Math.min(level.top.length, Math.round(end / size))
  if (firstBin >= endBin) return null
  let top = 0
  let body = 0
  for (let bin = firstBin; bin < endBin; bin++) {
    top = Math.max(top, level.top[bin]!)
    body += level.body[bin]!
  }
  return { top, body: body / (endBin - firstBin) }
}
