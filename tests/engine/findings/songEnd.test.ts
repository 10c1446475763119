import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import type { Ride, Section } from '#plan/model.ts'
import { countsOf, gridOfTempo } from '#plan/songs/beatGrid.ts'
import { aBlock, aSection, aSong, smallRide } from '#tests/support/smallRide.ts'
import { told } from '#tests/support/told.ts'

const RULES = ['beyondOut', 'outPastSong', 'openTail']
const found = (section: Section) =>
  computeRide({ ...smallRide(), sections: [section] } satisfies Ride).findings.filter(({ rule }) => RULES.includes(rule))

/** A song of this tempo and length, ridden for so many counts more than it holds. */
const ridden = (bpm: number, lengthSeconds: number, more = 0, outs = false, fingerprint?: string): Section => {
  const song = aSong('m', { grid: gridOfTempo(bpm), lengthSeconds, fingerprint })
  const counts = countsOf(aSection('s', { song }))! + more
  return aSection('s', { song, ...(outs && { outCount: counts }), blocks: [aBlock('a', { length: { counts } })] })
}

describe('where a song ends', () => {
  it('3:09 at 132 a minute holds 52 eights, and everything that looks at its end agrees', () => {
    expect(found(ridden(132, 189))).toEqual([])
    expect(found(ridden(132, 189, 0, true))).toEqual([])
    expect(found(ridden(132, 189, 8)).map(({ rule }) => rule)).toEqual(['beyondOut'])
    expect(found(ridden(132, 189, 8, true)).map(({ rule }) => rule)).toEqual(['outPastSong'])
    // The length of the file itself is exact: a 52nd eight is not in it.
    expect(found(ridden(132, 189, 8, true, 'file')).map(({ rule }) => rule)).toEqual(['outPastSong'])
  })

  it('the eights a song holds are never found too many, and one more always is, for any tempo and length', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 60, max: 190 }),
        fc.oneof(
          fc.integer({ min: 30, max: 400 }),
          fc.integer({ min: 3000, max: 40_000 }).map((hundredths) => hundredths / 100),
        ),
        fc.option(fc.constant('file'), { nil: undefined }),
        (bpm, length, fingerprint) => {
          expect(found(ridden(bpm, length, 0, false, fingerprint))).toEqual([])
          expect(found(ridden(bpm, length, 0, true, fingerprint))).toEqual([])
          expect(found(ridden(bpm, length, 8, false, fingerprint)).map(({ rule }) => rule)).toEqual(['beyondOut'])
        },
      ),
      { numRuns: 60 },
    )
  })

  it('an out-point on the last eight that the blocks run to can be set by its repair', () => {
    // Blocks of 52 eights, an out-point after 51: the repair moves it to the end of the blocks.
    const section = ridden(132, 189)
    const [finding] = found({ ...section, outCount: 51 * 8 })
    expect(finding!.fixes!.map(({ label }) => told(label))).toContain('End the song with its last block')
  })
})
