import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import type { Finding } from '#engine/report.ts'
import { applyCall } from '#plan/ledger/applyCall.ts'
import { limitsOf, startOf } from '#plan/ledger/limits.ts'
import { type Block, type Item, isSet, type Resistance, type Ride } from '#plan/model.ts'
import { arbitraryResistance } from '#tests/support/arbitraryRide.ts'
import { aBlock, aSection, aSet, inSeconds, smallRide } from '#tests/support/smallRide.ts'
import { told } from '#tests/support/told.ts'
import type { StepRange } from '#units/units.ts'

const total = (turns: number, to = turns): Resistance => ({ kind: 'total', from: turns * 4, to: to * 4 })
const change = (turns: number, mode: 'exact' | 'atLeast' | 'ifYouHaveIt' = 'exact'): Resistance => ({
  kind: 'change',
  mode,
  steps: turns * 4,
})
const KEEP: Resistance = { kind: 'keep' }
const range = (turns: number, to = turns): StepRange => ({ from: turns * 4, to: to * 4 })
const beAt = (checkpoint: StepRange, call: Resistance = KEEP): Resistance => ({ ...call, checkpoint }) as Resistance

const block = (id: string, resistance: Resistance): Block => aBlock(id, { ...inSeconds(60), resistance, cadence: { rpm: 80 } })
const rideOf = (...calls: Resistance[]): Ride => ofItems(calls.map((call, i) => block(`b${i + 1}`, call)))
const ofItems = (blocks: Item[]): Ride => ({ ...smallRide(), datum: 'loose', sections: [aSection('s', { blocks })] })
const missed = (ride: Ride): Finding | undefined => computeRide(ride).findings.find(({ rule }) => rule === 'checkpointMissed')
const loose = (ride: Ride): Finding | undefined => computeRide(ride).findings.find(({ rule }) => rule === 'checkpointLoose')
const callIn = (ride: Ride, id: string): Resistance =>
  ride.sections.flatMap(({ blocks }) => blocks.flatMap((item) => (isSet(item) ? item.parts : [item]))).find((one) => one.id === id)!
    .resistance

/** What each repair offers, and what the block of that id says once it is taken; none leaves the finding. */
function repairs(ride: Ride, id: string): [label: string, call: Resistance][] {
  return missed(ride)!.proposed.map(({ label, command }) => {
    const repaired = command.apply(ride)
    expect(missed(repaired), told(label)).toBeUndefined()
    return [told(label), callIn(repaired, id)]
  })
}

describe('where riders are told that they should be', () => {
  it('of a change: the change is brought there, or the words to where it leads', () => {
    const ride = rideOf(total(3, 4), beAt(range(5, 6), change(0.5)))
    expect(told(missed(ride)!.text)).toBe('“b2” says riders should be at 5–6, but the calls lead to 3½–4½: the change is off by +1½.')
    expect(repairs(ride, 'b2')).toEqual([
      ['Add 1½ turns', beAt(range(5, 6), change(2))],
      ['Set the checkpoint to 3½–4½', beAt(range(3.5, 4.5), change(0.5))],
    ])
  })

  it('of a stay: the last change before it is brought there, or where another rule holds that back, the stay', () => {
    const ride = rideOf(total(2), change(1), KEEP, beAt(range(3.5, 5)))
    expect(told(missed(ride)!.text)).toBe('“b4” says riders should be at 3½–5, but the calls lead to 3: they are off by +½.')
    expect(missed(ride)!.proposed.map(({ label }) => told(label))).toEqual(['Add ½ turn in “b2”', 'Set the checkpoint to 3'])
    for (const { command } of missed(ride)!.proposed) expect(missed(command.apply(ride))).toBeUndefined()
    expect(callIn(missed(ride)!.proposed[0]!.command.apply(ride), 'b2')).toEqual(change(1.5))
    // Two turns in one call are more than riders find.
    const far = rideOf(total(2), change(1), KEEP, beAt(range(4, 5)))
    expect(repairs(far, 'b4')).toEqual([
      ['Add 1 turn', beAt(range(4, 5), change(1))],
      ['Set the checkpoint to 3', beAt(range(3))],
    ])
  })

  it('of a total: the total is brought there', () => {
    const ride = rideOf(total(2), beAt(range(4), total(3, 3.5)))
    expect(told(missed(ride)!.text)).toContain('should be at 4, but the calls lead to 3–3½: they are off by +1.')
    expect(repairs(ride, 'b2')).toEqual([
      ['Add 1 turn', { ...beAt(range(4), { kind: 'total', from: 16, to: 18 }), aim: 16 }],
      ['Set the checkpoint to 3–3½', beAt(range(3, 3.5), total(3, 3.5))],
    ])
  })

  it('after an open end: below it is missed, above it is what closes it', () => {
    const open = [total(3), change(1.5, 'atLeast')]
    const below = rideOf(...open, beAt(range(2, 4)))
    expect(told(missed(below)!.text)).toBe('“b3” says riders should be at 2–4, but the calls lead to 4½ or more: they are off by −½.')
    expect(missed(below)!.proposed.map(({ label }) => told(label))).toEqual(['Take ½ turn off in “b2”', 'Set the checkpoint to 4½ or more'])
    for (const { command } of missed(below)!.proposed) expect(missed(command.apply(below))).toBeUndefined()
    const above = rideOf(...open, beAt(range(4, 7)))
    expect(missed(above)).toBeUndefined()
    expect(loose(above)).toBeUndefined()
    expect(computeRide(above).blocks[2]!.ledger).toMatchObject({ total: '4½–7', call: 'stay' })
    const lower = rideOf(total(3), change(-1, 'atLeast'), beAt(range(2.5, 4)))
    expect(told(missed(lower)!.text)).toContain('the calls lead to 2 or less: they are off by +½.')
    expect(missed(lower)!.proposed.map(({ label }) => told(label))).toEqual(['Add ½ turn in “b2”', 'Set the checkpoint to 2'])
  })

  it('a total may go anywhere: it is a new instruction, and said as one where riders stand apart', () => {
    const ride = rideOf(total(9), change(0.25, 'atLeast'), total(5, 6), total(3))
    expect(missed(ride)).toBeUndefined()
    expect(computeRide(ride).blocks.map(({ ledger }) => ledger.call)).toEqual([
      'nine turns on',
      'at least a quarter turn on',
      'to five to six',
      'to three',
    ])
  })

  it('partly outside is only worth a note', () => {
    const ride = rideOf(total(3, 5), beAt(range(4, 6)))
    expect(missed(ride)).toBeUndefined()
    expect(told(loose(ride)!.text)).toBe('“b2” says riders should be at 4–6; the calls leave them anywhere from 3 to 5.')
    const open = rideOf(total(3, 5), change(1, 'atLeast'), beAt(range(5, 6)))
    expect(told(loose(open)!.text)).toBe('“b3” says riders should be at 5–6; the calls leave them at 4 or more.')
    expect(loose(rideOf(total(3, 5), beAt({ from: 8, to: 8, orMore: true })))).toBeUndefined()
  })

  it('in rounds that add: the part is told once, and its range is put to where every round leads', () => {
    const parts = [block('push', total(4)), block('hold', beAt(range(5, 6))), block('ease', total(3.75))]
    const ride = ofItems([block('start', total(3.75)), aSet('set', parts, { rounds: 3, perRound: { steps: 1 } })])
    const found = missed(ride)!
    expect(told(found.text)).toContain('“hold” says riders should be at 5–6, but the calls lead to 4')
    const [moved, reworded] = found.proposed.map(({ command }) => command.apply(ride))
    expect(callIn(moved!, 'push')).toEqual(total(5))
    expect(callIn(reworded!, 'hold')).toEqual(beAt(range(4)))
    for (const repaired of [moved!, reworded!]) expect(missed(repaired)).toBeUndefined()
  })

  it('every repair takes the finding away, and the range one always can', () => {
    const calls = fc.array(arbitraryResistance, { minLength: 1, maxLength: 8 })
    fc.assert(
      fc.property(calls, (drawn) => {
        const ride = rideOf(...drawn)
        for (const { proposed, blockId } of computeRide(ride).findings.filter(({ rule }) => rule === 'checkpointMissed')) {
          expect(proposed.length).toBeGreaterThan(0)
          for (const { label, command } of proposed) {
            const left = computeRide(command.apply(ride)).findings.filter(
              (one) => one.rule === 'checkpointMissed' && one.blockId === blockId,
            )
            expect(left, told(label)).toEqual([])
          }
        }
      }),
    )
  })

  it('the repair of a change is the least there is', () => {
    fc.assert(
      fc.property(
        fc.array(arbitraryResistance, { maxLength: 4 }),
        fc.integer({ min: -6, max: 6 }),
        fc.integer({ min: 0, max: 40 }),
        fc.nat(6),
        (before, by, from, width) => {
          const checkpoint = { from, to: from + width }
          const ride = rideOf(...before, { kind: 'change', mode: 'exact', steps: by || 1, checkpoint })
          const fix = missed(ride)?.proposed.find(({ label }) => /^(Add|Take)/.test(told(label)))
          fc.pre(fix !== undefined && missed(ride)!.blockId === `b${before.length + 1}`)
          const limits = limitsOf(ride)
          const state = computeRide(ride).blocks.at(-1)!.ledger.before ?? startOf(limits)
          const lands = (steps: number) => {
            const { reached } = applyCall(state, { kind: 'change', mode: 'exact', steps }, limits)
            return reached.nominal >= checkpoint.from && reached.nominal <= checkpoint.to
          }
          const repaired = callIn(fix!.command.apply(ride), `b${before.length + 1}`)
          const steps = repaired.kind === 'change' ? repaired.steps : 0
          expect(lands(steps)).toBe(true)
          for (let nearer = Math.abs(steps - (by || 1)) - 1; nearer >= 0; nearer--)
            expect([lands((by || 1) + nearer), lands((by || 1) - nearer)]).toEqual([false, false])
        },
      ),
      { numRuns: 100 },
    )
  })
})
