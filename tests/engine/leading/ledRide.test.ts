import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type LedClass, ledClass } from '#engine/leading/ledClass.ts'
import { parseLog } from '#engine/leading/parseLog.ts'
import { type Block, type Item, isSet } from '#plan/model.ts'
import { demoRide } from '#tests/support/demoRides.ts'
import { arbitraryEvents, leadRide, logOf, planOf } from '#tests/support/leading.ts'
import { aBlock, aSet } from '#tests/support/smallRide.ts'

const idsIn = (item: Item): string[] => {
  if (isSet(item)) return [item.id, ...item.parts.flatMap(idsIn)]
  return [item.id, ...item.cues.map(({ id }) => id)]
}

describe('the class as it comes, as a ride', () => {
  it('is the very ride of the plan where nothing was led otherwise', () => {
    const plan = planOf(demoRide('spark'))
    const led = ledClass(plan, logOf({ kind: 'hold', at: 10 }, { kind: 'go', at: 10.1 }))
    expect(led.ride).toBe(plan.ride)
    expect(led.report).toBe(plan.report)
  })

  it('keeps every total and every id its own, whatever is pressed in the demo ride', () => {
    const plan = planOf(demoRide('ridge'))
    fc.assert(
      fc.property(arbitraryEvents(2600), (events) => {
        const { ride, report, blocks } = ledClass(plan, logOf(...events))
        for (const [i, { planned }] of blocks.entries()) {
          expect(report.blocks[i]!.ledger.after).toEqual(plan.report.blocks[planned]!.ledger.after)
        }
        const ids = ride.sections.flatMap((section) => [section.id, ...section.blocks.flatMap((item) => idsIn(item))])
        expect(new Set(ids).size).toBe(ids.length)
      }),
      { numRuns: 40 },
    )
  })

  it('words a change anew so that it arrives at the planned total', () => {
    const add = (steps: number) => ({ resistance: { kind: 'change' as const, mode: 'exact' as const, steps } })
    const ride = leadRide()
    const sections = ride.sections.with(0, { ...ride.sections[0]!, blocks: [aBlock('a', add(2)), aBlock('b', add(3)), aBlock('c')] })
    const plan = planOf({ ...ride, sections })
    const led = ledClass(plan, logOf({ kind: 'next', at: 8 }, { kind: 'next', at: 8.1 }))
    const calls = led.report.blocks.map(({ ledger }) => ledger.call)
    expect(led.report.blocks.map(({ block }) => block.label).slice(0, 3)).toEqual(['a', 'c', 'push'])
    // “b” is gone: what it added is now called at “c”, which had nothing to say.
    expect(calls.slice(0, 3)).toEqual(['half a turn on', 'three quarters on', 'stay'])
  })

  it('says "at least" of no change that is turned round', () => {
    const call = (steps: number, mode: 'exact' | 'atLeast') => ({ resistance: { kind: 'change' as const, mode, steps } })
    const ride = leadRide()
    const blocks = [aBlock('a', call(2, 'exact')), aBlock('b', call(6, 'exact')), aBlock('c', call(-3, 'atLeast'))]
    const plan = planOf({ ...ride, sections: ride.sections.with(0, { ...ride.sections[0]!, blocks }) })
    const led = ledClass(plan, logOf({ kind: 'next', at: 8 }, { kind: 'next', at: 8.1 }))
    expect(led.report.blocks.slice(0, 2).map(({ ledger }) => ledger.call)).toEqual(['half a turn on', 'three quarters on'])
    expect(led.report.blocks[1]!.ledger.after.nominal).toBe(plan.report.blocks[2]!.ledger.after.nominal)
  })
})

describe('what is said in the class as it comes', () => {
  const cuesOf = ({ report }: LedClass): string[] => report.blocks.map(({ block }) => block.cues.map(({ text }) => text).join(' '))
  const say = (text: string): Pick<Block, 'cues'> => ({ cues: [{ id: `says ${text}`, moment: 'announce', lead: { counts: 4 }, text }] })
  const add = (steps: number, text: string): Partial<Block> => ({
    resistance: { kind: 'change' as const, mode: 'exact' as const, steps },
    ...say(text),
  })

  it('follows the ledger when a song is left out', () => {
    const plan = planOf(demoRide('ridge'))
    const song = plan.ride.sections.findIndex(({ song }) => song?.title === 'Glass Tram')
    const led = ledClass(plan, logOf({ kind: 'cut', cuts: [{ kind: 'song', section: song }], at: 5 }))
    const first = led.report.blocks[led.report.sections[song]!.blocks.from]!
    expect(first.ledger.call).toBe('one turn on')
    expect(first.block.cues.map(({ text }) => text)).toEqual(['One turn on. Find the floor of it.'])
    // All others hold as they stand.
    const others = cuesOf(led).toSpliced(first.index, 1)
    expect(cuesOf({ ...led, report: plan.report })).toEqual(expect.arrayContaining(others))
  })

  it('speaks no number of the knob that is not so, whatever is pressed', () => {
    const plan = planOf(demoRide('ridge'))
    expect(plan.report.cues.mismatches).toEqual([])
    fc.assert(
      fc.property(arbitraryEvents(2600), (events) => {
        const { mismatches } = ledClass(plan, logOf(...events)).report.cues
        expect(mismatches.filter(({ claim }) => ['change', 'stay', 'total'].includes(claim.meanings[0].about))).toEqual([])
      }),
      { numRuns: 40 },
    )
  })

  it('is put right in the one round that changes, and left alone where it never held', () => {
    const ride = leadRide()
    const waves = aSet('waves', [
      aBlock('push', { length: { counts: 32 }, resistance: { kind: 'total', from: 6, to: 6 }, ...say('One on. Go.') }),
      aBlock('ease', { length: { counts: 32 }, resistance: { kind: 'total', from: 2, to: 2 }, ...say('One off.') }),
    ])
    const one = [aBlock('a', add(4, 'Two on.')), aBlock('b', add(-2, 'Half turn off.')), aBlock('c')]
    const sections = ride.sections.with(0, { ...ride.sections[0]!, blocks: one }).with(1, { ...ride.sections[1]!, blocks: [waves] })
    const plan = planOf({ ...ride, sections })
    expect(plan.report.blocks.map(({ ledger }) => ledger.call).slice(3, 9)).toEqual([
      'one turn on',
      'one turn off',
      'one turn on',
      'one turn off',
      'one turn on',
      'one turn off',
    ])
    // The first song ends in “a”, half a turn higher than it was to.
    const led = ledClass(plan, logOf({ kind: 'skipSong', at: 16 }))
    expect(cuesOf(led).slice(0, 7)).toEqual([
      'Two on.',
      'Half a turn on. Go.',
      'One off.',
      'One on. Go.',
      'One off.',
      'One on. Go.',
      'One off.',
    ])
  })
})

describe('a log read back', () => {
  it('is the log that was written', () => {
    fc.assert(
      fc.property(arbitraryEvents(3000), (events) => {
        const log = { slotFrom: 1_750_000_000_000, startedAt: 1_750_000_240_000.25, events: structuredClone(events) }
        expect(parseLog(JSON.parse(JSON.stringify(log)))).toEqual(log)
      }),
    )
  })

  it('is none where anything in it makes no sense', () => {
    const good = logOf({ kind: 'one', at: 1 }, { kind: 'cut', at: 2, cuts: [{ kind: 'song', section: 0 }] })
    expect(parseLog(good)).toEqual(good)
    const bad = [
      ...[null, 7, [], {}, { ...good, startedAt: '0' }, { ...good, events: null }],
      ...[{ at: 1 }, { kind: 'jump', at: 1 }, { kind: 'one', at: Number.NaN }, { kind: 'cut', at: 1 }].map((event) => ({
        ...good,
        events: [event],
      })),
      ...[{ kind: 'song' }, { kind: 'song', section: 1.5 }, { kind: 'outro', section: 0, counts: -8 }].map((cut) => ({
        ...good,
        events: [{ kind: 'cut', at: 1, cuts: [cut] }],
      })),
      {
        ...good,
        events: [
          { kind: 'one', at: 2 },
          { kind: 'one', at: 1 },
        ],
      },
    ]
    for (const value of bad) expect(parseLog(value)).toBeNull()
  })
})
