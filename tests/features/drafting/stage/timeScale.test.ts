import { describe, expect, it } from 'vitest'
import { clampZoom, stageReach, timeTicks, toSeconds, toX, ZOOM, zoomToFit } from '#features/drafting/stage/timeScale.ts'

describe('the time axis', () => {
  it('turns seconds to pixels and back', () => {
    expect(toSeconds({ pixelsPerSecond: 4.2 }, toX({ pixelsPerSecond: 4.2 }, 379))).toBeCloseTo(379, 12)
  })

  it('keeps its reach while a drag changes the total by seconds', () => {
    expect(stageReach(1176, 1200)).toBe(1500)
    expect(stageReach(1239, 1200)).toBe(1500)
    expect(stageReach(5400, 3600)).toBe(5700)
  })

  it('labels as many moments as fit apart, from zero', () => {
    expect(timeTicks({ pixelsPerSecond: 4 }, 300)).toEqual([0, 30, 60, 90, 120, 150, 180, 210, 240, 270, 300])
    expect(timeTicks({ pixelsPerSecond: 0.12 }, 3600)).toEqual([0, 1200, 2400, 3600])
  })

  it('stays between its ends', () => {
    expect(zoomToFit(1000, 0)).toBe(ZOOM.max)
    expect(clampZoom(0)).toBe(ZOOM.min)
    expect(zoomToFit(1000, 500)).toBe(2)
  })
})
