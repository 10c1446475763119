import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { demandLine } from '#engine/demand/demandLine.ts'
import { ledClass } from '#engine/leading/ledClass.ts'
import { eightFrom } from '#engine/readOut/eightFrom.ts'
import { readCurves } from '#engine/readOut/readCurves.ts'
import { arbitraryRide } from '#tests/support/arbitraryRide.ts'
import { demoRide } from '#tests/support/demoRides.ts'

const ride = demoRide('spark')
const report = computeRide(ride)
const rider = report.riders.find(({ reference }) => reference)!
const led = ledClass({ ride, report }, { slotFrom: 0, startedAt: 0, events: [] })

describe('the curves at one moment', () => {
  it('are those of the block that begins there, and of none in a gap', () => {
    for (const { from, to, block, cadence } of report.blocks) {
      if (to <= from) continue
      const reading = readCurves(report, rider, from)
      expect(reading.block!.block.id).toBe(block.id)
      expect(reading.planned).toBeCloseTo(block.effort.from, 9)
      if (cadence.kind === 'turning') expect(reading.cadence).toBeCloseTo(cadence.pieces?.[0]?.rpm ?? cadence.from, 9)
    }
    const gap = report.spans.find(({ kind, from, to }) => kind !== 'block' && to > from)!
    expect(readCurves(report, rider, (gap.from + gap.to) / 2)).toMatchObject({ block: null, planned: null, cadence: null, estimated: null })
  })

  it('lie on the lines that are drawn', () => {
    for (const run of demandLine(rider))
      for (const [i, { at, value }] of run.entries()) {
        // Where two pieces meet the line has both values.
        if (run[i + 1]?.at === at || run[i + 1] === undefined) continue
        expect(readCurves(report, rider, at).estimated?.value).toBeCloseTo(value, 9)
      }
  })

  it('keep the estimate inside its range, in every ride and at every moment', () => {
    fc.assert(
      fc.property(arbitraryRide(), fc.double({ min: 0, max: 1, noNaN: true }), (any, share) => {
        const of = computeRide(any)
        const at = share * of.overall.total
        for (const one of of.riders) {
          const { planned, estimated, heart, reserve } = readCurves(of, one, at)
          if (planned !== null) expect(planned >= 0 && planned <= 10).toBe(true)
          for (const range of [estimated, heart, reserve].filter((each) => each !== null)) {
            expect(range.low).toBeLessThanOrEqual(range.value)
            expect(range.high).toBeGreaterThanOrEqual(range.value)
          }
          if (reserve) expect(reserve.low >= 0 && reserve.high <= 1).toBe(true)
        }
      }),
      { numRuns: 60 },
    )
  })
})

describe('an eight on or back', () => {
  it('stands on the eights of the song, each once, and back again', () => {
    const played = report.blocks.find(({ countFrom, from, to }) => countFrom !== undefined && to - from > 30)!
    const { bpm } = report.sections[played.section]!
    const eight = (8 * 60) / bpm!
    let at = played.from
    for (let i = 1; i <= 3; i++) {
      at = eightFrom(led, at, 1)
      expect(at).toBeCloseTo(played.from + i * eight, 6)
    }
    expect(eightFrom(led, at - eight / 3, 1)).toBeCloseTo(at, 6)
    for (let i = 2; i >= 0; i--) {
      at = eightFrom(led, at, -1)
      expect(at).toBeCloseTo(played.from + i * eight, 6)
    }
  })

  it('goes by the clock where there are no beats, and never leaves the ride', () => {
    expect(eightFrom(led, 0, -1)).toBe(0)
    const { total } = report.overall
    expect(eightFrom(led, total, 1)).toBe(total)
    expect(eightFrom(led, total - 1, 1)).toBe(total)
    const { from } = report.spans.find((span) => span.kind === 'leadIn' && span.to > span.from)!
    expect(eightFrom(led, from, 1)).toBe(from + 5)
  })
})
