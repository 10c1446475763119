import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { drawnStretch, runsWithin } from '#features/drafting/stage/drawnStretch.ts'

const scale = { pixelsPerSecond: 4 }

describe('the drawn stretch', () => {
  it('holds what is seen and half as much on either side', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 200_000 }),
        fc.integer({ min: 1, max: 3000 }),
        fc.double({ min: 0.12, max: 40, noNaN: true }),
        (left, width, pixelsPerSecond) => {
          const { from, to } = drawnStretch({ left, width }, { pixelsPerSecond })
          expect(from * pixelsPerSecond).toBeLessThanOrEqual(left - width / 2 + 1)
          expect(to * pixelsPerSecond).toBeGreaterThanOrEqual(left + 1.5 * width - 1)
          expect((to - from) * pixelsPerSecond).toBeLessThanOrEqual(2.5 * width + 3)
        },
      ),
    )
  })

  it('stands still until half of what is seen has been scrolled', () => {
    const at = (left: number) => drawnStretch({ left, width: 1000 }, scale)
    expect(at(499)).toEqual(at(0))
    expect(at(500)).not.toEqual(at(0))
    expect(at(0)).toEqual({ from: -125, to: 500 })
  })
})

describe('runs of a stretch', () => {
  const run = [0, 10, 20, 20, 30, 40].map((at, value) => ({ at, value }))

  it('keep the points in it and the nearest on either side', () => {
    expect(runsWithin([run], { from: 12, to: 22 })).toEqual([run.slice(1, 5)])
  })

  it('keep the two that a stretch within one piece lies between', () => {
    expect(runsWithin([run], { from: 31, to: 39 })).toEqual([run.slice(4)])
  })

  it('leave out runs that do not reach it, and none that only begins in it', () => {
    expect(runsWithin([run, [{ at: 50, value: 1 }]], { from: 60, to: 70 })).toEqual([])
    expect(runsWithin([run], { from: -10, to: 5 })).toEqual([run.slice(0, 2)])
    expect(runsWithin([[], run], { from: -10, to: 500 })).toEqual([run])
  })
})
