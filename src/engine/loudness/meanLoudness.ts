import type { Seconds } from '#units/units.ts'

/** Loudness of each second of a song from its first, in LUFS. */
export type Loudness = ArrayLike<number>

/**
 * Mean loudness of a stretch of a song: the mean of its seconds' power, as ITU-R BS.1770 averages, each second as far
 * as it lies inside. LUFS; undefined where the stretch holds nothing of the song. Linear in the stretch.
 */
export function meanLoudness(loudness: Loudness, from: Seconds, to: Seconds): number | undefined {
  let power = 0
  let weight = 0
  for (let second = Math.max(0, Math.floor(from)); second < Math.min(loudness.length, to); second++) {
    const share = Math.min(second + 1, to) - Math.max(second, from)
    if (share <= 0) continue
    power += share * 10 ** (loudness[second]! / 10)
    weight += share
  }
  return weight === 0 ? undefined : 10 * Math.log10(power / weight)
}
