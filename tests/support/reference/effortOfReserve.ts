/** The points of our own mapping from shares of the oxygen-uptake reserve to effort, written down a second time on purpose. */
const POINTS = [
  [0, 0],
  [0.3, 2],
  [0.4, 3],
  [0.6, 5],
  [0.9, 9],
  [1, 10],
] as const

/** A yardstick for the engine's demand: the effort of a share, looked up and drawn straight between two points; 10 above. */
export function effortOfReserve(share: number): number {
  const next = POINTS.findIndex(([at]) => share < at)
  if (next < 0) return 10
  const [[x0, y0], [x1, y1]] = [POINTS[next - 1] ?? POINTS[0], POINTS[next]!]
  return share <= 0 ? 0 : y0 + ((share - x0) / (x1 - x0)) * (y1 - y0)
}
