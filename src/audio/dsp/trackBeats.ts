/** How dearly a beat pays for leaving the period: the square of the log of its ratio, times this (Ellis 2007). */
const TIGHTNESS = 120

/**
 * Beats that follow a changing tempo: the chain of frames whose onsets are strongest while its steps stay near the
 * period, found whole by dynamic programming (Ellis DPW, J New Music Res 2007;36(1):51-60).
 *
 * @param curve onsets, evened
 * @param period frames
 * @returns the frames of the beats, rising
 */
export function trackBeats(curve: Float32Array, period: number): number[] {
  const nearest = Math.max(1, Math.round(period / 1.7))
  const farthest = Math.max(nearest + 1, Math.round(period * 1.7))
  const costs = Float64Array.from({ length: farthest + 1 }, (_, lag) => (lag === 0 ? 0 : TIGHTNESS * Math.log(lag / period) ** 2))
  const scores = new Float64Array(curve.length)
  const before = new Int32Array(curve.length).fill(-1)
  let best = 0
  for (let i = 0; i < curve.length; i++) {
    let most = 0
    for (let lag = nearest; lag <= farthest && lag <= i; lag++) {
      const score = scores[i - lag]! - costs[lag]!
      if (score > most) {
        most = score
        before[i] = i - lag
      }
    }
    scores[i] = most + curve[i]!
    if (i >= curve.length - farthest && scores[i]! >= scores[best]!) best = i
  }
  const beats: number[] = []
  for (let i = best; i >= 0; i = before[i]!) beats.push(i)
  return beats.reverse()
}
