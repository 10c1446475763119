import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { makeVariant } from '#engine/fit/makeVariant.ts'
import { nearestFits } from '#engine/fit/nearestFits.ts'
import { fitSection } from '#engine/fit/sectionFit.ts'
import { variantTitle } from '#engine/fit/variantTitle.ts'
import { whatStays } from '#engine/fit/whatStays.ts'
import type { Block } from '#plan/model.ts'
import { demoRide } from '#tests/support/demoRides.ts'
import { aBlock, aSection, aSet, aSong, smallRide } from '#tests/support/smallRide.ts'
import { told } from '#tests/support/told.ts'

/** A song of 60 eights, ridden to the eight told. */
const rideOf = (blocks: Parameters<typeof aSection>[1], out?: number) => ({
  ...smallRide(),
  sections: [aSection('s', { song: aSong('tune'), ...blocks, ...(out !== undefined && { outCount: out * 8 }) })],
})
const eights = (count: number, change: Partial<Block> = {}) => ({ length: { counts: 8 * count }, ...change })

describe('the nearest stretches blocks can fill', () => {
  const pair = aSet('set', [aBlock('on', eights(4)), aBlock('off', eights(4))], { rounds: 2 })

  it('are those on either side of one out of reach, the song ending there', () => {
    const ride = rideOf({ blocks: [pair] }, 17)
    expect(fitSection(ride, 's')).toMatchObject({ ok: false, nearest: [128, 144] })
    const fits = nearestFits(ride, 's')
    expect(fits.map(({ label }) => told(label))).toEqual(['End the song after 16 eights', 'End the song after 18 eights'])
    for (const { command, counts } of fits) {
      const section = computeRide(command.apply(ride)).sections[0]!
      expect(section).toMatchObject({ open: 0, beyond: 0, counts: { total: counts } })
    }
    expect(fits[0]!.changes).toEqual([])
    expect(fits[1]!.changes).toHaveLength(1)
  })

  it('end where the song does, and keep what keeps its length', () => {
    const bounded = rideOf({ blocks: [aBlock('a', eights(62, { minEights: 62 })), aBlock('b', eights(4, { locked: true }))] })
    expect(nearestFits(bounded, 's')).toEqual([])
    const short = rideOf({ blocks: [aBlock('a', eights(6, { maxEights: 10 })), aBlock('b', { length: { counts: 20 }, locked: true })] }, 30)
    const [fit, ...none] = nearestFits(short, 's')
    expect(none).toEqual([])
    expect(fit!.counts).toBe(100)
    expect(fit!.command.apply(short).sections[0]!.blocks.map((block) => 'length' in block && block.length)).toEqual([
      { counts: 80 },
      { counts: 20 },
    ])
  })

  it('are none where the blocks fill the song, or there are no beats', () => {
    expect(nearestFits(rideOf({ blocks: [aBlock('a')] }), 's')).toEqual([])
    expect(nearestFits(rideOf({ blocks: [aBlock('a', { length: { seconds: 20 } })], song: null }), 's')).toEqual([])
    expect(nearestFits(smallRide(), 'nobody')).toEqual([])
  })
})

describe('a class in another length', () => {
  it('is called by its length, once', () => {
    expect(variantTitle('Ridge', 30)).toBe('Ridge (30 min)')
    expect(variantTitle('Ridge (30 min)', 45)).toBe('Ridge (45 min)')
    expect(variantTitle('🚲'.repeat(150), 45).length).toBeLessThanOrEqual(300)
  })

  it('says what it keeps, with how it was', () => {
    const parent = demoRide('ridge')
    const variant = makeVariant(parent, 30, 'variant')
    if (!variant.ok) throw new Error(told(variant.reason))
    expect(variant.ride.title).toBe(`${parent.title} (30 min)`)
    const said = whatStays(parent, variant.ride).map(told)
    expect(said).toHaveLength(4)
    // As the panel of each of the two rides has it.
    const [was, is] = [parent, variant.ride].map((ride) => {
      const { warmUp, coolDown, riding } = computeRide(ride).measures
      return { warmUp: Math.round((100 * warmUp!) / riding), coolDown: Math.round((100 * coolDown) / riding) }
    })
    expect(said[0]).toBe(`Warm-up ${is!.warmUp}% of the class, was ${was!.warmUp}%.`)
    expect(said[1]).toBe(`Cool-down ${is!.coolDown}%, was ${was!.coolDown}%.`)
    expect(said[2]).toMatch(/^Finish: “.+”, as before\.$/)
    expect(told(whatStays(parent, parent)[3]!)).toBe('Shape: two peaks, as before; 24% of it is work, was 24%.')
  })
})
