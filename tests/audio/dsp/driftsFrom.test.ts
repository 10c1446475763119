import { describe, expect, it } from 'vitest'
import { driftsFrom } from '#audio/dsp/driftsFrom.ts'

/** Frames a second. */
const RATE = 100
const line = { period: 0.5, start: 0 }

/** Onsets of strength one at these seconds, and of a tenth at those. */
function curveOf(strong: readonly number[], weak: readonly number[] = []) {
  const values = new Float32Array(60 * RATE)
  for (const second of weak) values[Math.round(second * RATE)] = 0.1
  for (const second of strong) values[Math.round(second * RATE)] = 1
  return { values, rate: RATE }
}

const beatsFrom = (start: number, period: number, count: number) => Array.from({ length: count }, (_, i) => start + i * period)

describe('where a constant tempo does not hold', () => {
  const before = beatsFrom(0, 0.5, 40)
  const after = beatsFrom(20, 0.47, 40)

  it('is where strong beats leave the grid for another tempo', () => {
    const drifts = driftsFrom([...before, ...after], line, curveOf([...before, ...after]))
    expect(drifts.length).toBeGreaterThan(0)
    expect(drifts[0]!.from).toBeGreaterThan(18)
    expect(drifts.at(-1)!.to).toBeGreaterThan(30)
    expect(driftsFrom(before, line, curveOf(before))).toEqual([])
  })

  it('is not where the grid’s own beats sound as strongly as those that left it', () => {
    const grid = beatsFrom(0, 0.5, 100)
    expect(driftsFrom([...before, ...after], line, curveOf([...grid, ...after]))).toEqual([])
  })

  it('is where the grid’s beats are nearly silent beside them', () => {
    const grid = beatsFrom(0, 0.5, 100)
    expect(driftsFrom([...before, ...after], line, curveOf([...before, ...after], grid))).not.toEqual([])
  })

  it('is not where another part keeps the tempo off the beat', () => {
    const offBeats = beatsFrom(0.25, 0.5, 40)
    expect(driftsFrom(offBeats, line, curveOf(offBeats))).toEqual([])
  })
})
