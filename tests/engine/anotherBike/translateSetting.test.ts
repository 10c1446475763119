import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readTotal, shownOn } from '#engine/anotherBike/readTotal.ts'
import { type Translated, translateSetting } from '#engine/anotherBike/translateSetting.ts'
import { calibrationOf, wattsAt } from '#engine/demand/calibration.ts'
import { DEFAULT_BIKE } from '#plan/defaults.ts'
import type { Bike } from '#plan/model.ts'
import { arbitraryCalibratedBike } from '#tests/support/arbitraryBike.ts'
import { LEVELS_BIKE } from '#tests/support/bikes.ts'

const cadence = fc.integer({ min: 45, max: 120 })
const reading = (found: Translated) => {
  if (found.kind === 'byFeel') throw new Error(`by feel, ${found.side} the ${found.beyond} bike's points`)
  return found
}

describe('a setting on another bike', () => {
  it('is the one of equal power where both were measured', () => {
    expect(translateSetting(2, DEFAULT_BIKE, LEVELS_BIKE, 80)).toMatchObject({ kind: 'reading', setting: 5 })
    const twin: Bike = { ...LEVELS_BIKE, points: DEFAULT_BIKE.points.map(([setting, watts]) => [setting * 3, watts]), brake: 'friction' }
    for (const [setting] of DEFAULT_BIKE.points) {
      expect(translateSetting(setting, DEFAULT_BIKE, twin, 63)).toMatchObject({ kind: 'reading', setting: Math.max(1, setting * 3) })
    }
  })

  it('depends on the cadence between a friction and a magnetic brake: twice the square against the double', () => {
    const at = (rpm: number) => reading(translateSetting(4, DEFAULT_BIKE, LEVELS_BIKE, rpm)).exact
    expect(wattsAt(calibrationOf(LEVELS_BIKE), at(60), 60)).toBeCloseTo((170 * 60) / 80, 6)
    expect(wattsAt(calibrationOf(LEVELS_BIKE), at(100), 100)).toBeCloseTo((170 * 100) / 80, 6)
    expect(at(60)).toBeGreaterThan(at(80))
    expect(at(80)).toBeGreaterThan(at(100))
  })

  it('gives the same power before rounding, and says what rounding does to it', () => {
    fc.assert(
      fc.property(
        arbitraryCalibratedBike,
        arbitraryCalibratedBike,
        cadence,
        fc.double({ min: 0, max: 1, noNaN: true }),
        (from, to, rpm, share) => {
          const { lowest, highest } = calibrationOf(from)
          const setting = lowest + share * (highest - lowest)
          const found = translateSetting(setting, from, to, rpm)
          const watts = wattsAt(calibrationOf(from), setting, rpm)
          if (found.kind === 'byFeel') {
            const target = calibrationOf(to)
            const edge = wattsAt(target, found.side === 'below' ? target.lowest : target.highest, rpm)
            expect(found.side === 'below' ? watts < edge : watts > edge).toBe(true)
            return
          }
          expect(wattsAt(calibrationOf(to), found.exact, rpm)).toBeCloseTo(watts, 6)
          expect(wattsAt(calibrationOf(to), found.setting, rpm) - watts).toBeCloseTo(found.wattsOff, 6)
          expect(Math.abs(found.setting - found.exact) * to.stepsPerUnit).toBeLessThanOrEqual(0.5 + 1e-9)
          expect((found.setting * to.stepsPerUnit) % 1).toBe(0)
        },
      ),
      { numRuns: 500 },
    )
  })

  it('never falls when the first one rises', () => {
    fc.assert(
      fc.property(arbitraryCalibratedBike, arbitraryCalibratedBike, cadence, (from, to, rpm) => {
        const { lowest, highest } = calibrationOf(from)
        const found = Array.from({ length: 40 }, (_, i) => translateSetting(lowest + (i / 39) * (highest - lowest), from, to, rpm))
        const settings = found.flatMap((one) => (one.kind === 'reading' ? [one.exact] : []))
        expect(settings).toEqual([...settings].sort((a, b) => a - b))
      }),
      { numRuns: 200 },
    )
  })

  it('goes by feel outside either bike’s points', () => {
    expect(translateSetting(6.25, DEFAULT_BIKE, LEVELS_BIKE, 80)).toEqual({ kind: 'byFeel', beyond: 'from', side: 'above' })
    expect(translateSetting(22, LEVELS_BIKE, DEFAULT_BIKE, 80)).toEqual({ kind: 'byFeel', beyond: 'to', side: 'above' })
    expect(
      translateSetting(
        0,
        {
          ...DEFAULT_BIKE,
          points: [
            [0, 2],
            [6, 300],
          ],
        },
        LEVELS_BIKE,
        80,
      ),
    ).toEqual({
      kind: 'byFeel',
      beyond: 'to',
      side: 'below',
    })
  })

  it('is itself on a bike of the same curve, on a level stretch too', () => {
    const flat: Bike = {
      ...DEFAULT_BIKE,
      points: [
        [0, 50],
        [4, 50],
        [6, 200],
      ],
    }
    for (const setting of [0, 1.25, 4])
      expect(translateSetting(setting, flat, structuredClone(flat), 70)).toMatchObject({ setting, wattsOff: 0 })
  })
})

describe('there and back', () => {
  /** There and back from every whole step that both bikes reach, with how many steps of the first the second's half step is. */
  const wayRound = (from: Bike, to: Bike, rpm: number, least = 0) => {
    const { lowest, highest } = calibrationOf(from)
    const off: { steps: number; half: number }[] = []
    for (let step = Math.ceil(Math.max(lowest, least) * from.stepsPerUnit); step <= highest * from.stepsPerUnit; step++) {
      const there = translateSetting(step / from.stepsPerUnit, from, to, rpm)
      const back = there.kind === 'reading' ? translateSetting(there.setting, to, from, rpm) : there
      if (back.kind === 'reading') {
        off.push({
          steps: Math.round(Math.abs(back.setting * from.stepsPerUnit - step)),
          half: Math.abs(back.exact * from.stepsPerUnit - step),
        })
      }
    }
    return off
  }

  it('stays within one step between the typical bikes from base up, whichever way and at any cadence', () => {
    for (let rpm = 50; rpm <= 115; rpm++) {
      const both = [
        ...wayRound(DEFAULT_BIKE, LEVELS_BIKE, rpm, DEFAULT_BIKE.base),
        ...wayRound(LEVELS_BIKE, DEFAULT_BIKE, rpm, LEVELS_BIKE.base),
      ]
      expect(both.length).toBeGreaterThan(20)
      expect(Math.max(...both.map(({ steps }) => steps))).toBeLessThanOrEqual(1)
    }
  })

  it('stays within one step of the coarser bike, between any two', () => {
    fc.assert(
      fc.property(arbitraryCalibratedBike, arbitraryCalibratedBike, cadence, (from, to, rpm) => {
        for (const { steps, half } of wayRound(from, to, rpm)) {
          // The other bike's rounding, as it looks on this one, and this one's own half step; nothing else may add to it.
          expect(steps).toBeLessThanOrEqual(half < 1.5 ? 1 : Math.round(half))
        }
      }),
      { numRuns: 300 },
    )
  })
})

describe('a total on another bike', () => {
  const ride = { bike: DEFAULT_BIKE, datum: 'base' as const }

  it('is read off a scale with figures and counted from base on a knob', () => {
    expect(shownOn(LEVELS_BIKE, ride).datum).toBe('loose')
    expect(shownOn(DEFAULT_BIKE, { bike: LEVELS_BIKE, datum: 'loose' }).datum).toBe('base')
    expect(readTotal(0, ride, shownOn(LEVELS_BIKE, ride), 80)).toMatchObject({ kind: 'reading', total: 5 })
    expect(
      readTotal(5, { bike: LEVELS_BIKE, datum: 'loose' }, shownOn(DEFAULT_BIKE, { bike: LEVELS_BIKE, datum: 'loose' }), 80),
    ).toMatchObject({
      kind: 'reading',
      total: 0,
    })
  })

  it('has the feel of the nearest anchor of the bike it is read on', () => {
    const anchored: Bike = {
      ...LEVELS_BIKE,
      feelAnchors: [
        { feel: 'road', setting: 6 },
        { feel: 'wall', setting: 12 },
      ],
    }
    expect(readTotal(0, ride, shownOn(anchored, ride), 80)).toMatchObject({ feel: 'road' })
    expect(readTotal(8, ride, shownOn(anchored, ride), 80)).toMatchObject({ total: 12, feel: 'wall' })
  })

  it('says its rounding in steps and watts', () => {
    // 110 W between level 8 (95 W) and 11 (150 W).
    const found = readTotal(4, ride, shownOn(LEVELS_BIKE, ride), 80)
    expect(found).toMatchObject({ kind: 'reading', total: 9 })
    if (found.kind !== 'reading') return
    expect(Math.abs(found.stepsOff)).toBeLessThanOrEqual(0.5)
    expect(Math.sign(found.wattsOff)).toBe(Math.sign(found.stepsOff))
  })
})
