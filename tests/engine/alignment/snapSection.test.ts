import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { snapSection } from '#engine/alignment/snapSection.ts'
import { computeRide } from '#engine/computeRide.ts'
import { patchSection } from '#plan/commands/patchSection.ts'
import type { Ride } from '#plan/model.ts'

const ride: Ride = JSON.parse(readFileSync('public/demo/twenty-minute-spark.ride.json', 'utf8'))

describe('snapping the blocks of a song to its eights', () => {
  const counts = (of: Ride) =>
    of.sections[0]!.blocks.map((block) => ('length' in block && 'counts' in block.length ? block.length.counts : 0))
  const grades = (of: Ride) => computeRide(of).blocks.flatMap(({ section, alignment }) => (section === 0 ? [alignment!.grade] : []))

  it('leaves blocks alone that are on them', () => {
    expect(snapSection(ride, 's1').apply(ride)).toBe(ride)
  })

  it('puts changes on the song’s own eights where the section begins inside one', () => {
    const later = patchSection(ride, { sectionId: 's1', patch: { inCount: 3 } }).apply(ride)
    expect(grades(later).slice(1)).not.toContain('eight')
    const snapped = snapSection(later, 's1').apply(later)
    expect(new Set(grades(snapped).slice(1))).toEqual(new Set(['phrase']))
    expect(counts(snapped)).toEqual(counts(ride).map((length, i) => (i === 0 ? length - 3 : length)))
    // The first block is the rest of an eight, which it closes: nothing about it is crooked.
    expect(computeRide(snapped).findings.filter(({ rule }) => rule === 'crookedBlock')).toEqual([])
  })
})
