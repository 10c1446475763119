/**
 * An integrator that knows nothing of closed forms: fourth-order Runge–Kutta over small steps,
 * with a step ending at every break.
 *
 * @param slope dv/dt
 * @param breaks rising times, the first the start, the last the end
 * @param step longest step, seconds
 * @returns the value at every break after the first
 */
export function integrate(slope: (t: number, value: number) => number, start: number, breaks: readonly number[], step: number): number[] {
  let value = start
  return breaks.slice(1).map((to, i) => {
    const from = breaks[i]!
    const steps = Math.max(1, Math.ceil((to - from) / step))
    const h = (to - from) / steps
    // Inside a piece the right-hand side is smooth; its ends are approached from within.
    const within = (t: number) => Math.min(to - 1e-9 * h, Math.max(from + 1e-9 * h, t))
    for (let n = 0; n < steps; n++) {
      const t = from + n * h
      const k1 = slope(within(t), value)
      const k2 = slope(within(t + h / 2), value + (h / 2) * k1)
      const k3 = slope(within(t + h / 2), value + (h / 2) * k2)
      const k4 = slope(within(t + h), value + h * k3)
      value += (h / 6) * (k1 + 2 * k2 + 2 * k3 + k4)
    }
    return value
  })
}
