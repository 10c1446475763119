import { describe, expect, it } from 'vitest'
import { onAnotherBike } from '#engine/anotherBike/onAnotherBike.ts'
import { computeRide } from '#engine/computeRide.ts'
import { DEFAULT_BIKE } from '#plan/defaults.ts'
import type { Block, Ride } from '#plan/model.ts'
import { LEVELS_BIKE } from '#tests/support/bikes.ts'
import { demoRide } from '#tests/support/demoRides.ts'
import { aBlock, aSection, inSeconds, smallRide } from '#tests/support/smallRide.ts'
import { told } from '#tests/support/told.ts'

const change = (steps: number, more: Partial<Block> = {}): Partial<Block> => ({
  ...inSeconds(60),
  cadence: { rpm: 80 },
  resistance: { kind: 'change', mode: 'exact', steps },
  ...more,
})
const rideOf = (...blocks: Partial<Block>[]): Ride => ({
  ...smallRide(),
  bike: DEFAULT_BIKE,
  datum: 'base',
  sections: [aSection('clock', { blocks: blocks.map((block, i) => aBlock(`b${i}`, block)) })],
})
const shown = (ride: Ride, bike = LEVELS_BIKE) => onAnotherBike(ride, computeRide(ride), bike)
const said = (ride: Ride, bike = LEVELS_BIKE) =>
  shown(ride, bike).blocks.map(({ ledger }) => [ledger.total, ledger.change, ledger.call].join(' | '))

describe('a ride shown on another bike', () => {
  it('says every total as about a reading, with what it feels like', () => {
    expect(said(rideOf(change(0), change(4), change(4)))).toEqual([
      'about 5 | stay | stay',
      'about 9 | to ~9 | to about nine, brisk flat',
      'about 12 | to ~12 | to about twelve, light hill',
    ])
  })

  it('says in findings about the knob where it stands there, and in no others; sentence and repairs stay the ride’s own', () => {
    // Standing on half a turn is light anywhere.
    const ride = rideOf(change(2), change(0, { posture: 'standing', label: 'rise' }))
    const own = computeRide(ride)
    const { findings } = onAnotherBike(ride, own, LEVELS_BIKE)
    expect(findings.map(({ shownAs, ...rest }) => rest)).toEqual(own.findings)
    const light = findings.find(({ rule }) => rule === 'lightStanding')!
    expect(told(light.text)).toMatch(/turn/)
    expect(told(light.shownAs!)).toBe('On “levels 1 to 24”, “rise” is at about 7.')
    expect(findings.filter(({ rule, shownAs }) => rule === 'slotUnused' && shownAs)).toEqual([])
    expect(own.findings.every(({ shownAs }) => shownAs === undefined)).toBe(true)
  })

  it('every rule whose sentence gives steps of the knob is among them', () => {
    // Heavy, light and under base, in turns of a quarter; the words for an amount of the knob are “¾ turn”, “1½”, “+¼”.
    const heavy = rideOf(change(-1), change(40), change(-38, { posture: 'standing' }), change(30, { effort: { from: 2, to: 2 } }))
    for (const { rule, text, shownAs, blockId } of shown(heavy).findings) {
      if (blockId && /\d? ?[¼½¾]? turns?\b/.test(told(text))) expect(shownAs, `${rule}: ${told(text)}`).toBeDefined()
    }
  })

  it('moves the knob for a new pace alone, where the brakes differ', () => {
    const ride = rideOf(change(8), { ...change(0), resistance: { kind: 'keep' }, cadence: { rpm: 60 } })
    const report = shown(ride)
    expect(report.blocks.map(({ ledger }) => ledger.total)).toEqual(['about 12', 'about 15'])
    expect(report.blocks[1]!.ledger.call).toMatch(/^to about fifteen, /)
    expect(report.cues.changes.find(({ block }) => block === 1)!.kinds).toContain('resistance')
    const knob: typeof DEFAULT_BIKE = { ...DEFAULT_BIKE, id: 'twin' }
    expect(shown(ride, knob).blocks[1]!.ledger.call).toBe('stay')
  })

  it('stays where the other bike’s step is too coarse for a change, and says what that does', () => {
    // A hundred watts a level: a quarter turn more, 15 W, is far from the next one.
    const coarse = {
      ...LEVELS_BIKE,
      max: 4,
      base: 2,
      points: [
        [1, 10],
        [4, 310],
      ] satisfies typeof LEVELS_BIKE.points,
    }
    const report = shown(rideOf(change(4), change(1)), coarse)
    expect(report.blocks[1]!.ledger).toMatchObject({ call: 'stay', change: 'stay' })
    expect(told(report.blocks[1]!.ledger.reading!.rounding)).toMatch(/^\d+ W less by rounding$/)
    expect(report.cues.changes.find(({ block }) => block === 1)?.kinds ?? []).not.toContain('resistance')
  })

  it('gives both ends where riders may stand apart, and keeps what is open open', () => {
    const open = { ...change(0), resistance: { kind: 'change', mode: 'atLeast', steps: 4 } } as const
    const asked = { ...change(0), resistance: { kind: 'change', mode: 'ifYouHaveIt', steps: 4 } } as const
    expect(said(rideOf(change(4), open))[1]).toBe('about 12 or more | to ~12+ | to at least about twelve, light hill')
    expect(said(rideOf(change(4), asked))[1]).toBe('about 9–12 | to ~9–12 | to about nine to twelve if you have it, light hill')
  })

  it('keeps what riders were told to take off at least, and a total or a checkpoint that is open', () => {
    const call = (resistance: Block['resistance']) => ({ ...change(0), resistance })
    const less = call({ kind: 'change', mode: 'atLeast', steps: -4 })
    const more = call({ kind: 'change', mode: 'atLeast', steps: 4 })
    expect(said(rideOf(change(8), less))[1]).toBe('about 9 or less | to ~9 max | to at most about nine, brisk flat')
    expect(said(rideOf(change(8), less, more))[2]).toBe('about 12 | to ~12 | to about twelve, light hill')
    const open = { kind: 'total', from: 4, to: 4, orMore: true, checkpoint: { from: 4, to: 4, orMore: true } } as const
    const report = shown(rideOf(change(8), call(open)))
    expect(report.blocks[1]!.ledger).toMatchObject({ total: 'about 9 or more', reading: { checkpoint: 'about 9 or more' } })
  })

  it('goes by feel beyond the points, with the way it went', () => {
    expect(said(rideOf(change(20), change(4), change(0)))).toEqual([
      'by feel | by feel | by feel, heavier: heavy hill',
      'by feel | by feel | by feel, heavier: heavy hill',
      'by feel | stay | stay',
    ])
  })

  it('takes everything off on any bike', () => {
    const off = { ...change(0), cadence: 'legsStill', resistance: { kind: 'allOff' } } as const
    expect(said(rideOf(change(4), off))[1]).toBe('all off | all off | all off')
  })

  it('reads a checkpoint and what sections enter and leave at', () => {
    const checked = { ...change(0), resistance: { kind: 'change', mode: 'exact', steps: 4, checkpoint: { from: 4, to: 8 } } } as const
    const report = shown(rideOf(change(4), checked))
    expect(report.blocks[1]!.ledger.reading!.checkpoint).toBe('about 9–12')
    expect(report.sections[0]).toMatchObject({ entersAt: 'about 5', leavesAt: 'about 12' })
  })

  it('leaves every number, finding and line as the ride’s own', () => {
    for (const name of ['spark', 'ridge'] as const) {
      const ride = demoRide(name)
      const own = computeRide(ride)
      const { blocks, sections, cues, shownOn, ...rest } = onAnotherBike(ride, own, LEVELS_BIKE)
      const { blocks: ownBlocks, sections: ownSections, cues: ownCues, shownOn: ownOn, ...ownRest } = own
      expect(rest).toEqual(ownRest)
      expect([shownOn?.bike, ownOn]).toEqual([LEVELS_BIKE, undefined])
      expect(blocks.map(({ ledger }) => ledger.after)).toEqual(ownBlocks.map(({ ledger }) => ledger.after))
      expect(sections.map(({ from, to }) => [from, to])).toEqual(ownSections.map(({ from, to }) => [from, to]))
      expect(cues.lines).toBe(ownCues.lines)
      expect(blocks.filter(({ ledger }) => ledger.total === 'by feel').length).toBeLessThan(blocks.length / 4)
    }
  })
})
