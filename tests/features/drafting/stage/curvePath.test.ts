import { describe, expect, it } from 'vitest'
import { areaPath, linePath, strainAt, strainPath } from '#features/drafting/stage/curvePath.ts'

const projection = { x: (seconds: number) => seconds * 2, y: (value: number) => 100 - value * 10 }

describe('paths of the curve', () => {
  it('draws each run of breakpoints on its own, a step as two points at one time', () => {
    const runs = [
      [
        { at: 0, value: 2 },
        { at: 10, value: 2 },
        { at: 10, value: 5 },
      ],
      [
        { at: 12, value: 3 },
        { at: 20, value: 4 },
      ],
    ]
    expect(linePath(runs, projection)).toBe('M0 80L20 80L20 50M24 70L40 60')
    expect(areaPath(runs, projection)).toBe('M0 100L0 80L20 80L20 50L20 100ZM24 100L24 70L40 60L40 100Z')
  })

  it('follows first-order relaxation towards a level and towards a ramp, as small steps would', () => {
    for (const piece of [
      { from: 5, to: 65, start: 3, targetFrom: 8, targetTo: 8, tau: 40 },
      { from: 5, to: 65, start: 9, targetFrom: 2, targetTo: 6, tau: 70 },
    ]) {
      let value = piece.start
      const steps = 60_000
      const dt = (piece.to - piece.from) / steps
      for (let i = 0; i < steps; i++) {
        const target = piece.targetFrom + ((piece.targetTo - piece.targetFrom) * (i + 0.5)) / steps
        value += ((target - value) / piece.tau) * dt
      }
      expect(strainAt(piece, piece.from)).toBeCloseTo(piece.start, 9)
      expect(strainAt(piece, piece.to)).toBeCloseTo(value, 3)
    }
  })

  it('spends no more chords on a wide picture than its pixels earn', () => {
    const curve = { pieces: [{ from: 0, to: 3600, start: 0, targetFrom: 5, targetTo: 5, tau: 40 }], maximum: { at: 3600, value: 5 } }
    expect(strainPath(curve, { x: (s) => s * 40, y: projection.y }).match(/L/g)).toHaveLength(48)
    expect(strainPath(curve, { x: (s) => s / 360, y: projection.y }).match(/L/g)).toHaveLength(2)
  })
})
