/** A curve's value at a fractional frame, straight between frames; 0 outside. */
export function valueAt(curve: ArrayLike<number>, frame: number): number {
  const left = Math.floor(frame)
  if (left < 0 || left + 1 >= curve.length) return 0
  const part = frame - left
  return curve[left]! * (1 - part) + curve[left + 1]! * part
}

/** The largest value within `reach` frames of a fractional frame, and 0 where there is no frame. */
export function peakNear(curve: ArrayLike<number>, frame: number, reach: number): number {
  let peak = 0
  const last = Math.min(curve.length - 1, Math.floor(frame + reach))
  for (let i = Math.max(0, Math.ceil(frame - reach)); i <= last; i++) if (curve[i]! > peak) peak = curve[i]!
  return peak
}

/** The fractional frame of the peak that a parabola through three frames has; the frame itself at an edge or on a plateau. */
export function peakFrame(curve: ArrayLike<number>, frame: number): number {
  const before = curve[frame - 1]
  const here = curve[frame]!
  const after = curve[frame + 1]
  if (before === undefined || after === undefined) return frame
  const bend = before - 2 * here + after
  return bend < 0 ? frame + Math.max(-0.5, Math.min(0.5, (before - after) / (2 * bend))) : frame
}
