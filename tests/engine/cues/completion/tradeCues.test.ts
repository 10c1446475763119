import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { tradeCues } from '#engine/cues/completion/tradeCues.ts'
import type { Block, Ride } from '#plan/model.ts'
import { demoRide } from '#tests/support/demoRides.ts'
import { aBlock, aSection, aSong, smallRide } from '#tests/support/smallRide.ts'

const at = (change: Partial<Block>, language?: 'de') => {
  const ride: Ride = {
    ...smallRide(),
    ...(language && { language }),
    sections: [aSection('s', { song: aSong('tune'), blocks: [aBlock('a'), aBlock('b', change)] })],
  }
  return tradeCues(ride, computeRide(ride), 1)
}
const texts = (change: Partial<Block>, language?: 'de') => at(change, language).map(({ text }) => text)

describe('words of the trade at a block', () => {
  it('begin with its own call, and are in the language of the ride', () => {
    const turned = { resistance: { kind: 'change', mode: 'exact', steps: 2 } } as const
    expect(at(turned)[0]).toMatchObject({ text: 'Half a turn on.', moment: 'announce' })
    expect(texts(turned, 'de')).not.toContain('Half a turn on.')
  })

  it('suit what is ridden: no heavy hill where it is easy, the saddle for who stands, a drink where there is water', () => {
    const easy = texts({ effort: { from: 2, to: 2 } })
    expect(easy.join(' ')).not.toMatch(/heavy|hard|burn/i)
    expect(easy).not.toContain('Stand tall.')
    expect(texts({ posture: 'standing' })).toContain('Stand tall.')
    const drinks = (change: Partial<Block>) => texts(change).filter((text) => /sip|drink|water/i.test(text)).length
    expect(drinks({ water: true })).toBeGreaterThan(drinks({}))
  })

  it('are each there once at every block of a whole class', () => {
    for (const name of ['spark', 'ridge'] as const) {
      const ride = demoRide(name)
      const report = computeRide(ride)
      for (const { index } of report.blocks) {
        const said = tradeCues(ride, report, index).map(({ text }) => text)
        expect(new Set(said).size).toBe(said.length)
        expect(said.length).toBeGreaterThan(2)
      }
    }
  })
})
