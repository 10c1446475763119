import { describe, expect, it } from 'vitest'
import { areaPath, bandPath, linePath, smoothRuns } from '#features/drafting/stage/curvePath.ts'

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

  it('spends no more chords on a wide picture than its pixels earn, and begins anew where pieces do not meet', () => {
    const pieces = [
      { from: 0, to: 3600 },
      { from: 3610, to: 3700 },
    ]
    const chords = (scale: number) =>
      smoothRuns(pieces, (_, at) => at, { x: (s) => s * scale, y: projection.y }).map((run) => run.length - 1)
    expect(chords(40)).toEqual([48, 48])
    expect(chords(1 / 360)).toEqual([2, 2])
    const [first] = smoothRuns(pieces, (_, at) => at, projection)
    expect(first!.at(-1)).toEqual({ at: 3600, value: 3600 })
  })
})

describe('a band', () => {
  it('goes along its upper end and back along its lower one, run by run', () => {
    const plain = { x: (seconds: number) => seconds, y: (value: number) => value }
    const run = (from: number, value: number) => [
      { at: from, value },
      { at: from + 1, value },
    ]
    expect(bandPath([run(0, 1), run(5, 2)], [run(0, 3), run(5, 4)], plain)).toBe('M0 3L1 3L1 1L0 1ZM5 4L6 4L6 2L5 2Z')
  })
})
