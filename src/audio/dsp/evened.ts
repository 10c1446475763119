/**
 * A curve of onsets with loud and quiet stretches brought to one level: what stands above the mean of a second,
 * divided by the deviation over some seconds. A break then counts as much as a chorus.
 *
 * @param rate frames a second
 */
export function evened(curve: Float32Array, rate: number): Float32Array {
  const mean = movingMean(curve, Math.round(0.5 * rate))
  const above = curve.map((value, i) => Math.max(0, value - mean[i]!))
  const power = movingMean(
    above.map((value) => value * value),
    Math.round(4 * rate),
  )
  let whole = 0
  for (const value of power) whole += value / power.length
  // Silence is not to be blown up to the level of music.
  return above.map((value, i) => value / Math.sqrt(power[i]! + 0.05 * whole + 1e-12))
}

function movingMean(curve: Float32Array, reach: number): Float32Array {
  const sums = new Float64Array(curve.length + 1)
  for (let i = 0; i < curve.length; i++) sums[i + 1] = sums[i]! + curve[i]!
  return curve.map((_, i) => {
    const from = Math.max(0, i - reach)
    const to = Math.min(curve.length, i + reach + 1)
    return (sums[to]! - sums[from]!) / (to - from)
  })
}
