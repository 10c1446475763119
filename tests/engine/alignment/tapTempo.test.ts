import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { firstBeat } from '#engine/alignment/firstBeat.ts'
import { sayTapped } from '#engine/alignment/sayTapped.ts'
import { tapTempo } from '#engine/alignment/tapTempo.ts'
import { seededRandom } from '#engine/roughIn/seededRandom.ts'
import { told } from '#tests/support/told.ts'

/** Taps on known beats: scattered as a person's are (normal, by Box and Muller), some beats left out, some tapped twice. */
function taps({ bpm, beats, jitter, missed = 0, doubled = 0, seed, from = 0 }: Tapping): number[] {
  const random = seededRandom(seed)
  const normal = () => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random())
  const times = Array.from({ length: beats }, (_, beat) => from + (60 * beat) / bpm + jitter * normal()).flatMap((time) => {
    if (random() < missed) return []
    return random() < doubled ? [time, time + 0.08 + 0.04 * random()] : [time]
  })
  return times.sort((a, b) => a - b)
}

interface Tapping {
  bpm: number
  beats: number
  jitter: number
  missed?: number
  doubled?: number
  seed: number
  from?: number
}

const seeds = fc.integer({ min: 0, max: 2 ** 31 })
const tempos = fc.double({ min: 55, max: 190, noNaN: true })

describe('the tempo of taps', () => {
  it('is exact for exact taps, whatever the clock shows', () => {
    fc.assert(
      fc.property(tempos, fc.integer({ min: 5, max: 80 }), fc.double({ min: 0, max: 1e5, noNaN: true }), (bpm, beats, from) => {
        const tempo = tapTempo(taps({ bpm, beats, jitter: 0, seed: 1, from }))!
        expect(tempo.bpm).toBeCloseTo(bpm, 4)
        expect([tempo.used, tempo.leftOut, tempo.missed]).toEqual([beats, 0, 0])
      }),
    )
  })

  it('is found through scatter, missed beats and double taps, to a part in a hundred after thirty-two beats', () => {
    fc.assert(
      fc.property(tempos, seeds, (bpm, seed) => {
        const jitter = Math.min(0.025, 3 / bpm)
        const tempo = tapTempo(taps({ bpm, beats: 32, jitter, missed: 0.15, doubled: 0.1, seed }))!
        expect(Math.abs(tempo.bpm / bpm - 1)).toBeLessThan(0.01)
      }),
    )
  })

  it.each([
    [111.52600771049038, 414058964],
    [187.74501292267814, 1837739480],
    [99.5947833967682, 891581326],
  ])('counts the beats of long gaps rightly: %d bpm, row %d', (bpm, seed) => {
    const tempo = tapTempo(taps({ bpm, beats: 32, jitter: Math.min(0.025, 3 / bpm), missed: 0.15, doubled: 0.1, seed }))!
    expect(Math.abs(tempo.bpm / bpm - 1)).toBeLessThan(0.01)
  })

  it('lies inside its own interval about nineteen times in twenty', () => {
    let inside = 0
    const rows = 400
    for (let seed = 0; seed < rows; seed++) {
      const bpm = 80 + (seed % 90)
      const tempo = tapTempo(taps({ bpm, beats: 24, jitter: 0.02, seed }))!
      if (Math.abs(tempo.bpm - bpm) <= tempo.uncertainty) inside++
    }
    expect(inside / rows).toBeGreaterThan(0.9)
    expect(inside / rows).toBeLessThan(0.99)
  })

  it('counts what it left out and what nobody tapped', () => {
    const even = Array.from({ length: 20 }, (_, i) => i * 0.5)
    const marred = [...even.filter((_, i) => i !== 7 && i !== 8), 4.62].sort((a, b) => a - b)
    expect(tapTempo(marred)).toMatchObject({ used: 18, leftOut: 1, missed: 2 })
    expect(tapTempo(marred)!.bpm).toBeCloseTo(120, 6)
  })

  it('is not turned by a first tap that was none', () => {
    expect(tapTempo([0.1, 0.21, ...Array.from({ length: 16 }, (_, i) => 0.9 + i * 0.46)])!.bpm).toBeCloseTo(60 / 0.46, 1)
  })

  it('is none for few taps, or taps without a beat', () => {
    expect(tapTempo([])).toBeNull()
    expect(tapTempo([0, 0.5, 1, 1.5])).toBeNull()
    expect(tapTempo([3, 3, 3, 3, 3, 3])).toBeNull()
    expect(tapTempo([0, 20, 51, 75, 110, 170])).toBeNull()
  })

  it('gets surer with every phrase', () => {
    const width = (beats: number) => tapTempo(taps({ bpm: 128, beats, jitter: 0.02, seed: 5 }))!.uncertainty
    expect(width(64)).toBeLessThan(width(32))
    expect(width(32)).toBeLessThan(width(12))
  })
})

describe('what taps are worth', () => {
  const worth = (beats: number, jitter: number) => sayTapped(tapTempo(taps({ bpm: 128, beats, jitter, seed: 2 }))!, 210)
  it('is said by how far the beat may be off at the end of the song', () => {
    expect(worth(96, 0.01)).toMatchObject({ grade: 'steady' })
    expect(worth(8, 0.03)).toMatchObject({ grade: 'shaky' })
    expect(told(worth(96, 0.01).text)).toMatch(/^Steady enough: could drift 0\.\d+ s at most by 3:30\.$/)
  })
})

describe('the first beat', () => {
  it('is where the bars that were tapped begin, at or after the start of the song', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 70, max: 180, noNaN: true }),
        fc.double({ min: 0.05, max: 0.9, noNaN: true }),
        fc.integer({ min: 4, max: 40 }),
        fc.constantFrom(3, 4, 6),
        (bpm, share, bar, beatsPerBar) => {
          const period = 60 / bpm
          const first = share * beatsPerBar * period
          const start = 1000
          const row = Array.from({ length: 24 }, (_, beat) => start + first + (bar * beatsPerBar + 1 + beat) * period)
          const ones = [0, 1, 2].map((later) => start + first + (bar + 1 + later) * beatsPerBar * period)
          expect(firstBeat(tapTempo(row)!, ones, start, beatsPerBar)).toBeCloseTo(first, 5)
        },
      ),
    )
  })

  it('is what most taps on the one say, and nothing without one', () => {
    const tempo = tapTempo(Array.from({ length: 16 }, (_, i) => 10 + i * 0.5))!
    expect(firstBeat(tempo, [10, 12, 13.5], 0, 4)).toBeCloseTo(0, 6)
    expect(firstBeat(tempo, [], 0, 4)).toBeUndefined()
  })
})
