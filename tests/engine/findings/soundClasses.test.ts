import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { parseRide } from '#plan/document/parseRide.ts'
import type { Ride } from '#plan/model.ts'
import { cameraClass, studioClass } from '#tests/support/soundClasses.ts'

const CLASSES: [name: string, ride: Ride, blocks: [number, number], cues: [number, number]][] = [
  ['to a camera', cameraClass(), [45, 50], [70, 76]],
  ['in a studio', studioClass(), [36, 46], [60, 76]],
]

describe.each(CLASSES)('a class as a careful instructor writes it, %s', (_, ride, [fewest, most], [fewestCues, mostCues]) => {
  it('is a whole ride', () => {
    expect(parseRide(JSON.parse(JSON.stringify(ride)))).toMatchObject({ ok: true })
    const { blocks, overall } = computeRide(ride)
    const cues = blocks.reduce((sum, { block }) => sum + block.cues.length, 0)
    expect(blocks.length).toBeGreaterThanOrEqual(fewest)
    expect(blocks.length).toBeLessThanOrEqual(most)
    expect(cues).toBeGreaterThanOrEqual(fewestCues)
    expect(cues).toBeLessThanOrEqual(mostCues)
    expect(overall.slack).toBeGreaterThanOrEqual(0)
    expect(overall.slack).toBeLessThanOrEqual(20)
  })

  it('is told nothing an instructor would call wrong, and little at all', () => {
    const { findings } = computeRide(ride)
    expect(new Set(findings.map(({ rule, severity }) => `${severity} ${rule}`)).size).toBeLessThanOrEqual(15)
    expect(findings.map(({ text }) => text)).toEqual([])
  })

  it('is told what is left out of it', () => {
    const silent = {
      ...ride,
      sections: ride.sections.map((section) => ({
        ...section,
        blocks: section.blocks.map((item) => ({ ...item, cues: [] })),
      })),
    }
    const rules = new Set(computeRide(silent).findings.map(({ rule }) => rule))
    expect([...rules]).toEqual(expect.arrayContaining(['unannounced', 'hardBoutWords', 'moveWithoutForm']))
    if (ride.room === 'online') expect([...rules]).toEqual(expect.arrayContaining(['feelWithChange', 'seatedOption']))
  })
})
