import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { markFlags, rulerTicks } from '#features/drafting/stage/rulerTicks.ts'
import type { Ride } from '#plan/model.ts'

const ride: Ride = JSON.parse(readFileSync('public/demo/twenty-minute-spark.ride.json', 'utf8'))
const section = computeRide(ride).sections[0]!
const grid = ride.sections[0]!.song!.grid!
const ticks = (pixelsPerSecond: number) => rulerTicks(section, grid, { pixelsPerSecond })

describe('the ruler of a song', () => {
  it('shows eights at a middling zoom, each in its place and phrases numbered by their first eight', () => {
    const marks = ticks(4)
    expect(marks).toHaveLength(53)
    expect(marks[4]).toEqual({ x: expect.closeTo(4 * 8 * (60 / 172) * 4, 6), strength: 'phrase', label: '5' })
    expect(marks[1]).toEqual({ x: expect.closeTo(8 * (60 / 172) * 4, 6), strength: 'eight' })
    expect(marks.at(-1)!.label).toBeUndefined()
  })

  it('shows single counts close up, only phrases far off, and nothing where marks would run together', () => {
    expect(ticks(24)).toHaveLength(417)
    expect(ticks(0.8).every(({ strength }) => strength === 'phrase')).toBe(true)
    expect(ticks(0.3)).toEqual([])
  })

  it('flags section marks in their places, with names where there is room', () => {
    const marks = [
      { count: 64, label: 'chorus' },
      { count: 0, label: 'in' },
      { count: 72, label: 'drop' },
      { count: 9999, label: 'beyond' },
    ]
    const flags = markFlags(section, grid, marks, { pixelsPerSecond: 4 })
    expect(flags.map(({ label, room }) => [label, room])).toEqual([
      ['in', true],
      ['chorus', false],
      ['drop', true],
    ])
    expect(flags[1]!.x).toBeCloseTo(64 * (60 / 172) * 4, 6)
  })
})
