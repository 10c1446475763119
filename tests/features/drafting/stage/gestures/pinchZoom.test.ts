import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { beginPinch, pinched } from '#features/drafting/stage/gestures/pinchZoom.ts'
import { pulledWindow } from '#features/drafting/stage/gestures/windowPull.ts'
import { toSeconds, toX, ZOOM } from '#features/drafting/stage/timeScale.ts'

const zoom = fc.double({ min: ZOOM.min, max: ZOOM.max, noNaN: true })
const fingers = fc.record({ middle: fc.integer({ min: 0, max: 1400 }), apart: fc.double({ min: 1, max: 1200, noNaN: true }) })

describe('two fingers on the stage', () => {
  it('keep the second under them to within a pixel at every zoom, however often they move', () => {
    fc.assert(
      fc.property(
        zoom,
        fc.nat(20_000),
        fingers,
        fc.array(fingers, { minLength: 1, maxLength: 20 }),
        (pixelsPerSecond, scrolled, start, moves) => {
          const pinch = beginPinch({ pixelsPerSecond }, scrolled, start)
          const held = toSeconds({ pixelsPerSecond }, scrolled + start.middle)
          for (const move of moves) {
            const { pixelsPerSecond: next, seconds, x } = pinched(pinch, move)
            // The browser scrolls by whole pixels.
            const left = Math.round(toX({ pixelsPerSecond: next }, seconds) - x)
            expect(Math.abs(toX({ pixelsPerSecond: next }, held) - left - move.middle)).toBeLessThanOrEqual(1)
            expect(next).toBeGreaterThanOrEqual(ZOOM.min)
            expect(next).toBeLessThanOrEqual(ZOOM.max)
          }
        },
      ),
    )
  })

  it('zoom by as much as they spread', () => {
    const pinch = beginPinch({ pixelsPerSecond: 4 }, 100, { middle: 200, apart: 100 })
    expect(pinched(pinch, { middle: 240, apart: 250 })).toEqual({ pixelsPerSecond: 10, seconds: 75, x: 240 })
  })
})

describe('an edge of the window on the small chart', () => {
  it('goes where it is pulled, and the other edge stays', () => {
    fc.assert(
      fc.property(fc.nat(1000), fc.integer({ min: 60, max: 2000 }), fc.double({ min: -500, max: 4000, noNaN: true }), (from, long, at) => {
        const [width, reach] = [1200, 3600]
        const view = { from, to: from + long }
        for (const edge of ['from', 'to'] as const) {
          const { pixelsPerSecond, seconds, x } = pulledWindow(view, edge, at, width, reach)
          const shown = { from: seconds - x / pixelsPerSecond, to: seconds + (width - x) / pixelsPerSecond }
          expect(edge === 'from' ? shown.to : shown.from).toBeCloseTo(edge === 'from' ? view.to : view.from, 6)
          const pulled = Math.min(reach, Math.max(0, at))
          if (pixelsPerSecond > ZOOM.min && pixelsPerSecond < ZOOM.max) expect(shown[edge]).toBeCloseTo(pulled, 6)
          expect(pixelsPerSecond).toBeLessThanOrEqual(ZOOM.max + 1e-9)
        }
      }),
    )
  })
})
