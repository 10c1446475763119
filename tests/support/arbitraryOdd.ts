import fc from 'fast-check'
import { faultOfOdd, type OddPlace } from '#plan/songs/oddBeats.ts'

/** Up to four odd places, near one another and far, over and missing. */
export const arbitraryOdd: fc.Arbitrary<OddPlace[]> = fc
  .array(fc.record({ gap: fc.integer({ min: 1, max: 120 }), beats: fc.integer({ min: -9, max: 9 }) }), { minLength: 1, maxLength: 4 })
  .map((places) => {
    const odd: OddPlace[] = []
    let count = 0
    for (const { gap, beats } of places) {
      count += gap + Math.max(0, -beats)
      if (beats !== 0) odd.push([count, beats])
    }
    return odd
  })
  .filter((odd) => odd.length > 0 && faultOfOdd(odd) === undefined)
