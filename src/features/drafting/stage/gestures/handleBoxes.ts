import type { CurvePart } from './effortPull.ts'

/** Where a handle is met, in pixels from the ride's beginning, and where in it the point of the curve is that it stands for. */
export interface HandleBox {
  left: number
  width: number
  mark: number
}

/** How wide a handle is: as wide as a fingertip needs, or a pointer. */
const SIZE = { finger: 44, pointer: 22 } as const

/**
 * The three handles of a block from one place on the curve to another. Beside each other where there is room; on a narrow
 * block those of the ends stand out over its neighbours, as far as the middle one needs it, which is never left out.
 */
export function handleBoxes(from: number, to: number, forFinger: boolean): Record<CurvePart, HandleBox> {
  const size = forFinger ? SIZE.finger : SIZE.pointer
  const width = to - from
  const inside = Math.max(0, Math.min(size / 2, (width - size) / 2))
  const middle = Math.min(size, Math.max(size / 2, width - 2 * inside))
  const left = Math.max(0, from - (size - inside))
  return {
    from: { left, width: size, mark: from - left },
    level: { left: (from + to - middle) / 2, width: middle, mark: middle / 2 },
    to: { left: to - inside, width: size, mark: inside },
  }
}
