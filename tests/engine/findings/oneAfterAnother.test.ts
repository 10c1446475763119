import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { makeVariant } from '#engine/fit/makeVariant.ts'
import type { Finding, RideReport } from '#engine/report.ts'
import type { Block, Ride } from '#plan/model.ts'
import { demoRide } from '#tests/support/demoRides.ts'
import { plausibleRide } from '#tests/support/plausibleRide.ts'
import { aBlock, aSection, aSet, aSong, smallRide } from '#tests/support/smallRide.ts'
import { told } from '#tests/support/told.ts'

/** Takes the first fix there is until none is left, or a ride comes back that was there before. */
function takeAll(ride: Ride): { ride: Ride; report: RideReport; again: string[] | null } {
  const seen = new Map<string, number>()
  const taken: string[] = []
  for (;;) {
    const report = computeRide(ride)
    const next = report.findings.find(({ fixes, later }) => fixes.length > 0 && !later)
    const before = seen.get(JSON.stringify(ride))
    if (next === undefined || before !== undefined) return { ride, report, again: before === undefined ? null : taken.slice(before) }
    seen.set(JSON.stringify(ride), taken.length)
    taken.push(`${next.id}: ${told(next.fixes[0]!.label)}`)
    ride = next.fixes[0]!.command.apply(ride)
  }
}

describe('fixes taken one after another', () => {
  it('come to an end on rides as people write them', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1_000_000 }), (number) => {
        expect(takeAll(plausibleRide(number)).again).toBeNull()
      }),
      { numRuns: 15 },
    )
  })

  it('come to an end on the demo rides in every length, and leave the class what it is', () => {
    for (const name of ['spark', 'ridge'] as const) {
      for (const minutes of [20, 30, 45, 60]) {
        const variant = makeVariant(demoRide(name), minutes, 'variant')
        const before = computeRide(variant.ride!)
        const { report, again } = takeAll(variant.ride!)
        expect(again, `${name} in ${minutes} min`).toBeNull()
        expect(report.findings.length).toBeLessThan(before.findings.length)
        expect(Math.abs(report.overall.meanEffort - before.overall.meanEffort)).toBeLessThan(0.1)
        expect(Math.abs(report.overall.total - before.overall.total)).toBeLessThan(30)
      }
    }
  })
})

const blockIn = (ride: Ride, id: string): Block => ride.sections.flatMap(({ blocks }) => blocks as Block[]).find((one) => one.id === id)!
const rideWith = (blocks: Block[], change: Partial<Ride> = {}): Ride => ({
  ...smallRide(),
  slotMinutes: 5,
  sections: [aSection('s', { song: aSong('m'), blocks })],
  ...change,
})
const of = (ride: Ride, rule: string, block?: string): Finding | undefined =>
  computeRide(ride).findings.find((finding) => finding.rule === rule && (block === undefined || finding.blockId === block))
const at = (steps: number): Block['resistance'] => ({ kind: 'total', from: steps, to: steps })

describe('one rule’s fix is not another’s finding', () => {
  it('standing at an easy effort keeps the resistance it stands on', () => {
    const standing = (steps: number) =>
      rideWith([
        aBlock('a', { posture: 'standing', hands: 'wide', effort: { from: 2, to: 2 }, resistance: at(steps), length: { counts: 24 } }),
        aBlock('b', { length: { counts: 456 } }),
      ])
    expect(of(standing(4), 'easyTotal')).toBeUndefined()
    const heavy = of(standing(6), 'easyTotal')!
    expect(told(heavy.text)).toContain('1 turn over base is the most')
    const lighter = heavy.fixes[0]!.command.apply(standing(6))
    expect(blockIn(lighter, 'a').resistance).toEqual(at(4))
    expect(of(lighter, 'lightStanding')).toBeUndefined()
  })

  it('a last block that goes hard is told how the class ends, and is not made too light for it', () => {
    const ride = rideWith([aBlock('a'), aBlock('b', { terrain: 'push', effort: { from: 8, to: 8 }, resistance: at(4) })])
    expect(of(ride, 'endsHeavy')?.fixes).toEqual([])
  })

  it('no steps are added for the effort past what one call may add, or past how the class may end', () => {
    const hard = (id: string) => aBlock(id, { effort: { from: 9, to: 9 }, cadence: { rpm: 70 }, resistance: at(id === 'b' ? 6 : 2) })
    const ride = rideWith([aBlock('a', { resistance: at(0) }), hard('b'), aBlock('c', { resistance: at(0) }), hard('d')])
    const [call, end] = ['b', 'd'].map((id) => of(ride, 'intentAgainstDemand', id))
    expect(told(call!.text)).toContain('1½ turns is the most to add in one call.')
    expect(told(end!.text)).toContain('a class ends at no more than ½ turn over base.')
    for (const { fixes } of [call!, end!]) expect(fixes.map(({ label }) => told(label))).toEqual([expect.stringMatching(/^Plan /)])
  })

  it('no steps lead away from where riders are told they should be', () => {
    const checkpoint = { from: 2, to: 3 }
    const toldBlock = aBlock('b', {
      effort: { from: 8, to: 8 },
      cadence: { rpm: 60 },
      resistance: { kind: 'change', mode: 'exact', steps: 3, checkpoint },
    })
    const ride = rideWith([aBlock('a', { resistance: at(0) }), toldBlock, aBlock('c', { resistance: at(0) })])
    expect(told(of(ride, 'intentAgainstDemand', 'b')!.text)).toContain('riders are told they should be at ½–¾ there.')
    const tooMuch = { kind: 'change', mode: 'exact', steps: 8, checkpoint: { from: 8, to: 9 } } as const
    const jump = rideWith([aBlock('a', { resistance: at(0) }), aBlock('b', { resistance: tooMuch }), aBlock('c', { resistance: at(0) })])
    expect(of(jump, 'largestAdded')!.fixes).toEqual([])
  })

  it('the last block may be the odd counts that end its song', () => {
    const song = aSong('m')
    const ending = (counts: number) => ({
      ...smallRide(),
      sections: [
        aSection('s', { song, outCount: 100, blocks: [aBlock('a', { length: { counts: 64 } }), aBlock('b', { length: { counts } })] }),
      ],
    })
    expect(of(ending(36), 'crookedBlock')).toBeUndefined()
    expect(of(ending(35), 'crookedBlock')).toBeDefined()
  })

  it('a recovery that ends a full song is not lengthened past it', () => {
    const push = aBlock('a', { effort: { from: 9, to: 9 }, length: { counts: 240 } })
    const ending = (outCount: number) => ({
      ...smallRide(),
      sections: [
        aSection('s', { song: aSong('m'), outCount, blocks: [push, aBlock('b', { length: { counts: 32 } })] }),
        aSection('t', { song: aSong('n'), blocks: [aBlock('c', { effort: { from: 6, to: 6 } })] }),
      ],
    })
    expect(of(ending(272), 'recoveryDebt')!.proposed).toEqual([])
    expect(of(ending(480), 'recoveryDebt')!.proposed).toHaveLength(1)
  })

  it('one text cannot say what differs from round to round: the number is taken out', () => {
    const cue = { id: 'q', moment: 'announce', lead: { counts: 8 }, text: 'Half a turn on, tall.' } as const
    const add: Block['resistance'] = { kind: 'change', mode: 'exact', steps: 1 }
    const blocks = [
      aSet(
        'set',
        [aBlock('p', { resistance: add, cues: [cue], length: { counts: 32 } }), aBlock('r', { resistance: at(0), length: { counts: 32 } })],
        {
          rounds: 2,
          perRound: { steps: 1 },
        },
      ),
    ]
    const ride = {
      ...smallRide(),
      sections: [aSection('s', { song: aSong('m'), blocks: [aBlock('a', { length: { counts: 64 } }), ...blocks] })],
    }
    const found = of(ride, 'cueNumbers')!
    expect(told(found.fixes[0]!.label)).toBe('Take the number out of the words')
    expect(of(found.fixes[0]!.command.apply(ride), 'cueNumbers')).toBeUndefined()
  })

  it('words that open the ride are not asked to end earlier', () => {
    const cue = { id: 'q', moment: 'announce', lead: { counts: 2 }, text: 'Half a turn on, tall and easy, and settle in with me.' } as const
    const ride = (briefingSeconds: number) => ({
      ...rideWith([aBlock('a', { resistance: at(2), cues: [{ ...cue, lead: { counts: 0 } }] })]),
      briefingSeconds,
    })
    expect(of(ride(2), 'cueLate')).toBeUndefined()
    expect(of(ride(30), 'cueLate')).toBeDefined()
  })
})
