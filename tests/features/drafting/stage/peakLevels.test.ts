import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { levelsOf, peaksBetween } from '#features/drafting/stage/peakLevels.ts'
import { wavePath } from '#features/drafting/stage/wavePath.ts'

const peakLevels = (peaks: Uint8Array) => levelsOf({ id: 'f', lengthSeconds: peaks.length / 50, peaks, loudness: new Float32Array() })
const anyPeaks = fc.uint8Array({ minLength: 1, maxLength: 3000 })

describe('levels of peaks', () => {
  it('halve to a single bin, whose top is the loudest of all and whose body is about the mean', () => {
    fc.assert(
      fc.property(anyPeaks, (peaks) => {
        const levels = peakLevels(peaks)
        expect(levels.map(({ top }) => top.length)).toEqual(
          levels.map((_, depth) => levels.slice(0, depth).reduce((length) => Math.ceil(length / 2), peaks.length)),
        )
        expect(levels.at(-1)!.top).toEqual(Uint8Array.of(Math.max(...peaks)))
        for (const { top, body } of levels) expect(body.every((mean, bin) => mean <= top[bin]!)).toBe(true)
      }),
    )
  })

  it('mean what they say', () => {
    const [, second, third] = peakLevels(Uint8Array.of(10, 20, 90, 0, 7))
    expect(second).toEqual({ top: Uint8Array.of(20, 90, 7), body: Uint8Array.of(15, 45, 7) })
    expect(third).toEqual({ top: Uint8Array.of(90, 7), body: Uint8Array.of(30, 7) })
  })
})

describe('a stretch of a sound', () => {
  it('beside another leaves no peak out, and is never louder than what is around it', () => {
    fc.assert(
      fc.property(anyPeaks, fc.double({ min: 0.02, max: 30, noNaN: true }), (peaks, length) => {
        const levels = peakLevels(peaks)
        const tops: number[] = []
        for (let from = 0; from * 50 < peaks.length; from += length) {
          const found = peaksBetween(levels, from, from + length)
          const [first, end] = [Math.floor(from * 50), Math.ceil((from + length) * 50)]
          const around = peaks.slice(Math.max(0, first - (end - first)), end + (end - first))
          expect(found?.top ?? 0).toBeLessThanOrEqual(Math.max(...around))
          tops.push(found?.top ?? 0)
        }
        expect(Math.max(...tops)).toBe(Math.max(...peaks))
      }),
    )
  })

  it('is nothing before the sound and after it', () => {
    const levels = peakLevels(new Uint8Array(100).fill(5))
    expect(peaksBetween(levels, -1, -0.5)).toBeNull()
    expect(peaksBetween(levels, 2.2, 3)).toBeNull()
    expect(peaksBetween(levels, -0.5, 0.1)).toEqual({ top: 5, body: 5 })
  })
})

describe('the wave of a song', () => {
  // Eight peaks a bar; quiet for 32 bars, loud for as many.
  const levels = peakLevels(Uint8Array.from({ length: 512 }, (_, i) => (i < 256 ? 50 : 200)))
  const draw = (origin: number, cut: { from: number; to: number }) => wavePath(levels, 200, origin, { pixelsPerSecond: 12.5 }, cut, 30)
  const bars = (path: string) => path.split('M').slice(1)

  it('stands where the song is: half as many bars as pixels, each in its place', () => {
    const { top, body } = draw(0, { from: 0, to: 100 })
    expect(bars(top)).toHaveLength(50)
    expect(top.startsWith('M1 11V19M3 11V19')).toBe(true)
    expect(bars(top).slice(31, 33)).toEqual(['63 11V19', '65 0V30'])
    expect(body).toBe(top)
  })

  it('starts at the second the section starts at, and ends with the song', () => {
    const { top } = draw(3.2, { from: 0, to: 100 })
    expect(bars(top).slice(11, 13)).toEqual(['23 11V19', '25 0V30'])
    expect(bars(top)).toHaveLength(44)
  })

  it('draws a cut as the same bars', () => {
    const all = bars(draw(1, { from: 0, to: 90 }).top)
    expect(bars(draw(1, { from: 40, to: 60 }).top)).toEqual(all.slice(20, 30))
  })

  it('is a line where there is silence, and nothing without a stretch', () => {
    expect(wavePath(peakLevels(new Uint8Array(50)), 1, 0, { pixelsPerSecond: 10 }, { from: 0, to: 2 }, 30).top).toBe('M1 14.5V15.5')
    expect(draw(0, { from: 10, to: 10 }).top).toBe('')
  })
})
