import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { levelToY } from '#features/drafting/stage/chartFrame.ts'
import { borderPace } from '#features/drafting/stage/gestures/borderPace.ts'
import { curveGrip } from '#features/drafting/stage/gestures/curveGrip.ts'
import { framedItems } from '#features/drafting/stage/gestures/framedItems.ts'
import { handleBoxes } from '#features/drafting/stage/gestures/handleBoxes.ts'
import { whatPress } from '#features/drafting/stage/gestures/whatPress.ts'
import { toX } from '#features/drafting/stage/timeScale.ts'
import { zoomOfWheel } from '#features/drafting/stage/zoomWheel.ts'
import { groupIntoSet } from '#plan/commands/groupIntoSet.ts'
import type { Ride } from '#plan/model.ts'

const ride: Ride = JSON.parse(readFileSync('public/demo/twenty-minute-spark.ride.json', 'utf8'))
const { blocks } = computeRide(ride)
const scale = { pixelsPerSecond: 4.2 }

describe('what a press on the stage becomes', () => {
  const press: Parameters<typeof whatPress>[0] = {
    button: 0,
    shift: false,
    space: false,
    isMouse: true,
    handle: null,
    curve: null,
    onEdge: false,
    inBlocks: false,
    taken: false,
  }

  it('moves the stage where it is empty, by the middle button, and with Space', () => {
    expect(whatPress(press)).toBe('pan')
    expect(whatPress({ ...press, button: 1, inBlocks: true, taken: true })).toBe('pan')
    expect(whatPress({ ...press, space: true, inBlocks: true, taken: true })).toBe('pan')
    expect(whatPress({ ...press, space: true, curve: 'level' })).toBe('pan')
  })

  it('draws a frame on the empty row of blocks, and over cards with Shift', () => {
    expect(whatPress({ ...press, inBlocks: true })).toBe('frame')
    expect(whatPress({ ...press, inBlocks: true, taken: true, shift: true })).toBe('frame')
    expect(whatPress({ ...press, inBlocks: true, taken: true, shift: true, onEdge: true })).toBeNull()
  })

  it('pulls the curve, by a finger only at a handle', () => {
    expect(whatPress({ ...press, curve: 'to' })).toBe('curve')
    expect(whatPress({ ...press, isMouse: false, handle: 'to' })).toBe('curve')
    expect(whatPress({ ...press, isMouse: false, curve: 'to' })).toBeNull()
  })

  it('is left to cards, songs, the second button, and a finger that scrolls', () => {
    expect(whatPress({ ...press, inBlocks: true, taken: true })).toBeNull()
    expect(whatPress({ ...press, taken: true })).toBeNull()
    expect(whatPress({ ...press, button: 2 })).toBeNull()
    expect(whatPress({ ...press, isMouse: false })).toBeNull()
  })
})

describe('the curve under a pointer', () => {
  it('is held near its line: all of it in the middle, an end at either side', () => {
    for (const played of blocks.slice(0, 12)) {
      const { from, to } = played.block.effort
      const [left, right] = [toX(scale, played.from), toX(scale, played.to)]
      const middle = { x: (left + right) / 2, y: levelToY((from + to) / 2) }
      expect(curveGrip(blocks, scale, middle)).toEqual({ played, part: 'level' })
      expect(curveGrip(blocks, scale, { ...middle, y: middle.y + 12 })).toBeNull()
      expect(curveGrip(blocks, scale, { x: left + 1, y: levelToY(from) })?.part).toBe('from')
      expect(curveGrip(blocks, scale, { x: right - 1, y: levelToY(to) })?.part).toBe('to')
    }
    expect(curveGrip(blocks, scale, { x: 1e6, y: 100 })).toBeNull()
  })
})

describe('a frame', () => {
  const around = (first: number, last: number) => ({ from: blocks[first]!.from + 1, to: blocks[last]!.to - 1 })

  it('takes what it touches, in the order of the ride', () => {
    expect(framedItems(blocks, around(1, 3))).toEqual(blocks.slice(1, 4).map(({ block }) => block.id))
    expect(framedItems(blocks, { from: 1e6, to: 2e6 })).toEqual([])
  })

  it('takes parts of one set, and the set as soon as all of it or anything else is touched', () => {
    let n = 0
    const grouped = groupIntoSet(ride, { ids: ['s1b2', 's1b3'], rounds: 2, newId: () => `x${++n}` }).apply(ride)
    const played = computeRide(grouped).blocks
    const set = played.find((each) => each.set)!.set!.set.id
    const over = (first: number, last: number) => framedItems(played, { from: played[first]!.from + 1, to: played[last]!.to - 1 })
    expect(over(1, 1)).toEqual(['s1b2'])
    expect(over(1, 2)).toEqual([set])
    expect(over(0, 1)).toEqual(['s1b1', set])
  })
})

describe('what is held at the border of the stage', () => {
  const sight = { from: 100, to: 1100 }

  it('scrolls the faster the further out, and not where it was picked up', () => {
    expect(borderPace(600, sight, 600)).toBe(0)
    expect(borderPace(1090, sight, 600)).toBeGreaterThan(borderPace(1060, sight, 600))
    expect(borderPace(110, sight, 600)).toBeLessThan(0)
    expect(borderPace(1090, sight, 1090)).toBe(0)
    expect(borderPace(1095, sight, 1090)).toBeGreaterThan(0)
    expect(borderPace(5000, sight, 600)).toBe(borderPace(1100, sight, 600))
  })
})

describe('handles on the curve', () => {
  it('are as wide as a fingertip at both ends, never before the ride, and leave the middle one to be met', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 5000 }), fc.integer({ min: 2, max: 900 }), fc.boolean(), (left, width, forFinger) => {
        const boxes = handleBoxes(left, left + width, forFinger)
        const size = forFinger ? 44 : 22
        expect(boxes.from.width).toBe(size)
        expect(boxes.to.width).toBe(size)
        expect(boxes.from.left).toBeGreaterThanOrEqual(0)
        expect(boxes.from.left + boxes.from.mark).toBe(left)
        expect(boxes.to.left + boxes.to.mark).toBe(left + width)
        expect(boxes.level.width).toBeGreaterThanOrEqual(size / 2)
        if (left >= size) expect(boxes.level.left).toBeGreaterThanOrEqual(boxes.from.left + boxes.from.width - size / 2)
      }),
    )
  })
})

describe('the wheel', () => {
  it('zooms by notches, by a pinch on a pad as far as the fingers spread, and scrolls without the key', () => {
    const wheel = (deltaY: number, ctrlKey = true) => zoomOfWheel({ deltaY, ctrlKey, metaKey: false })
    expect(wheel(100, false)).toBeNull()
    expect(wheel(-100)).toBeCloseTo(Math.exp(1 / 3), 9)
    // Twice as far apart comes as a hundred times the logarithm of two, in small steps.
    const steps = 20
    const each = (-100 * Math.log(2)) / steps
    expect(wheel(each)! ** steps).toBeCloseTo(2, 9)
  })
})
