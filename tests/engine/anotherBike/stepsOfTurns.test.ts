import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { exactSteps, sizeOfTurns, stepsOfTurns } from '#engine/anotherBike/stepsOfTurns.ts'
import { translateSetting } from '#engine/anotherBike/translateSetting.ts'
import { computeRide } from '#engine/computeRide.ts'
import { CONSTANTS } from '#engine/constants.ts'
import { calibrationOf, wattsAt } from '#engine/demand/calibration.ts'
import { setDatum } from '#plan/commands/setDatum.ts'
import { DEFAULT_BIKE } from '#plan/defaults.ts'
import type { Bike, Block, Ride } from '#plan/model.ts'
import { arbitraryCalibratedBike } from '#tests/support/arbitraryBike.ts'
import { LEVELS_BIKE } from '#tests/support/bikes.ts'
import { aBlock, aSection, inSeconds, smallRide } from '#tests/support/smallRide.ts'
import { told } from '#tests/support/told.ts'

const rpm = fc.integer({ min: 45, max: 120 })
/** What the rules say, and finer. */
const turns = fc.integer({ min: 1, max: 32 }).map((eighths) => eighths / 8)
const baseSteps = ({ base, stepsPerUnit }: Bike) => Math.round(base * stepsPerUnit)
const typicalWatts = (over: number, pace: number) => wattsAt(calibrationOf(DEFAULT_BIKE), DEFAULT_BIKE.base + over, pace)

describe('turns over base on another bike', () => {
  it('are the very turns on the typical knob, at any pace and past its points', () => {
    for (const pace of [45, 80, 111]) {
      for (let eighths = 0; eighths <= 160; eighths++) {
        const over = eighths / 8
        expect(stepsOfTurns(over, DEFAULT_BIKE, pace, 'atLeast')).toBe(Math.ceil(over * 4))
        expect(stepsOfTurns(over, structuredClone(DEFAULT_BIKE), pace, 'atMost')).toBe(Math.floor(over * 4))
      }
    }
  })

  it('are as many in finer steps of the same knob', () => {
    const fine = { ...DEFAULT_BIKE, stepsPerUnit: 8 }
    expect(['atLeast', 'atMost'].map((line) => stepsOfTurns(0.75, fine, 70, line as 'atMost'))).toEqual([6, 6])
    const coarse = { ...DEFAULT_BIKE, stepsPerUnit: 1 }
    expect(['atLeast', 'atMost'].map((line) => stepsOfTurns(0.75, coarse, 70, line as 'atMost'))).toEqual([1, 0])
    expect(sizeOfTurns(0.75, coarse, 70)).toBe(1)
  })

  it('are what weighs the same, to the safe side: brute force over every step of any bike', () => {
    fc.assert(
      fc.property(arbitraryCalibratedBike, turns, rpm, (bike, over, pace) => {
        const translated = translateSetting(DEFAULT_BIKE.base + over, DEFAULT_BIKE, bike, pace)
        fc.pre(translated.kind === 'reading')
        const { highest } = calibrationOf(bike)
        const wanted = typicalWatts(over, pace)
        const weighs = (steps: number) => wattsAt(calibrationOf(bike), (baseSteps(bike) + steps) / bike.stepsPerUnit, pace)
        const all = Array.from({ length: Math.floor(highest * bike.stepsPerUnit) - baseSteps(bike) + 1 }, (_, steps) => steps)
        const least = stepsOfTurns(over, bike, pace, 'atLeast')
        const most = stepsOfTurns(over, bike, pace, 'atMost')
        const near = 1e-6 * wanted
        expect(least).toBe(all.find((steps) => weighs(steps) >= wanted - near) ?? all.length)
        expect(most).toBe(Math.max(0, all.findLast((steps) => weighs(steps) <= wanted + near) ?? 0))
      }),
      { numRuns: 300 },
    )
  })

  it('rise with the turns, and with the pace only where the brakes differ', () => {
    fc.assert(
      fc.property(arbitraryCalibratedBike, turns, turns, rpm, rpm, (bike, one, two, slow, fast) => {
        const [less, more] = [Math.min(one, two), Math.max(one, two)]
        expect(exactSteps(less, bike, slow)).toBeLessThanOrEqual(exactSteps(more, bike, slow) + 1e-9)
        const [lower, higher] = [Math.min(slow, fast), Math.max(slow, fast)]
        const [at, later] = [exactSteps(one, bike, lower), exactSteps(one, bike, higher)]
        if (bike.brake === 'friction') expect(later).toBe(at)
        else expect(later).toBeLessThanOrEqual(at + 1e-9)
      }),
      { numRuns: 300 },
    )
  })

  it('go on along the bike’s last points where these do not reach, as far as the knob', () => {
    const weak: Bike = {
      ...LEVELS_BIKE,
      points: [
        [1, 6],
        [5, 48],
        [10, 98],
      ],
    }
    // Four turns over base are 290 W: 10 W a level past the last point, (290 − 98) / 10 = 19.2 levels past ten.
    expect(exactSteps(4, { ...weak, max: 60 }, 80)).toBeCloseTo(10 + 19.2 - 5, 6)
    expect(exactSteps(4, weak, 80)).toBe(24 - 5)
    const heavy: Bike = {
      ...LEVELS_BIKE,
      base: 1,
      points: [
        [1, 80],
        [24, 400],
      ],
    }
    expect(stepsOfTurns(0.25, heavy, 80, 'atLeast')).toBe(0)
    const level: Bike = {
      ...LEVELS_BIKE,
      points: [
        [1, 6],
        [5, 48],
        [6, 48],
      ],
    }
    expect(exactSteps(1, level, 80)).toBe(24 - 5)
  })
})

const block = (id: string, change: Partial<Block>): Block => aBlock(id, { ...inSeconds(60), cadence: { rpm: 80 }, ...change })
const rideOn = (bike: Bike, ...blocks: Block[]): Ride => ({
  ...smallRide(),
  bike,
  datum: 'base',
  slotMinutes: 4,
  sections: [aSection('s', { blocks })],
})
const at = (steps: number): Block['resistance'] => ({ kind: 'total', from: steps, to: steps })
/** A total that is too heavy for easy effort is told by its demand where that is told too. */
const quietOnDemand = (ride: Ride): Ride => ({ ...ride, houseRules: { intentGap: 5, intentGapSeconds: 120 } })
const found = (ride: Ride, rule: string) => computeRide(ride).findings.find((finding) => finding.rule === rule)

/** A studio's bikes: a magnetic one in levels, gears that pull hard, a knob as heavy again, and one that is loose for long. */
const GEARS: Bike = {
  ...LEVELS_BIKE,
  id: 'gears',
  name: 'gears',
  unit: 'gear',
  base: 2,
  points: [
    [1, 10],
    [24, 930],
  ],
}
const HEAVY: Bike = {
  ...DEFAULT_BIKE,
  id: 'heavy',
  name: 'heavy',
  base: 1,
  points: DEFAULT_BIKE.points.map(([setting, watts]) => [setting / 2, watts]),
}
const LOOSE: Bike = {
  ...DEFAULT_BIKE,
  id: 'loose',
  name: 'loose',
  base: 4,
  points: DEFAULT_BIKE.points.map(([setting, watts]) => [setting * 2, watts]),
}

describe('the rules of turns on another bike', () => {
  const standing = (bike: Bike, steps: number, pace = 80) =>
    rideOn(
      bike,
      block('a', { posture: 'standing', hands: 'wide', cadence: { rpm: pace }, resistance: at(steps), effort: { from: 6, to: 6 } }),
    )

  it.each([
    // One turn over base is 110 W at 80.
    ['levels', LEVELS_BIKE, 80, 4, '3 levels', '4 levels'],
    // At 60 the friction knob asks for ¾ of it, the magnetic brake gives nine sixteenths: 147 W at 80 are needed.
    ['levels, slowly', LEVELS_BIKE, 60, 6, '5 levels', '6 levels'],
    // 40 W a gear.
    ['gears', GEARS, 80, 2, '1 gear', '2 gears'],
    ['a heavy knob', HEAVY, 80, 2, '¼ turn', '½ turn'],
    ['a loose knob', LOOSE, 80, 8, '1¾ turns', '2 turns'],
  ])('ask for as much to stand on %s', (_, bike, pace, least, under, needed) => {
    expect(found(standing(bike, least, pace), 'lightStanding')).toBeUndefined()
    const light = found(standing(bike, least - 1, pace), 'lightStanding')!
    expect(told(light.text)).toBe(`“a” stands at ${under} over base; it takes at least ${needed} over base for riders to stay in control.`)
    const repaired = light.fixes[0]!.command.apply(standing(bike, least - 1, pace))
    expect(found(repaired, 'lightStanding')).toBeUndefined()
    const loose = setDatum('loose').apply(standing(bike, least - 1, pace))
    expect(told(found(loose, 'lightStanding')!.text)).toBe(told(light.text))
  })

  it.each([
    // Three quarters of a turn over base are 95 W: 3 levels, a gear, and so on, rounded down.
    ['levels', LEVELS_BIKE, 2, '3 levels over base; 2 levels over base is'],
    ['gears', GEARS, 1, '2 gears over base; 1 gear over base is'],
    ['a heavy knob', HEAVY, 1, '½ turn over base; ¼ turn over base is'],
    ['a loose knob', LOOSE, 6, '1¾ turns over base; 1½ turns over base is'],
  ])('allow as much for easy effort on %s', (_, bike, most, words) => {
    const easy = (steps: number) =>
      quietOnDemand(rideOn(bike, block('a', { resistance: at(steps), effort: { from: 2, to: 2 } }), block('b', { resistance: at(0) })))
    expect(found(easy(most), 'easyTotal')).toBeUndefined()
    expect(told(found(easy(most + 1), 'easyTotal')!.text)).toContain(words)
  })

  it('tell riders where one call adds too much, riders are apart and the class ends, in the bike’s own steps', () => {
    const added = (bike: Bike, steps: number) => rideOn(bike, block('a', { resistance: at(0) }), block('b', { resistance: at(steps) }))
    expect(found(added(LOOSE, 12), 'largestAdded')).toBeUndefined()
    expect(told(found(added(LOOSE, 13), 'largestAdded')!.text)).toContain('adds 3¼ turns in one call; 3 turns is the most')
    expect(found(added(GEARS, 2), 'largestAdded')).toBeUndefined()
    expect(told(found(added(GEARS, 3), 'largestAdded')!.text)).toContain('adds 3 gears in one call; 2 gears is the most')
    const apart = (bike: Bike, to: number) => rideOn(bike, block('a', { ...inSeconds(300), resistance: { kind: 'total', from: 0, to } }))
    expect(found(apart(LOOSE, 24), 'wideSpread')).toBeUndefined()
    expect(told(found(apart(LOOSE, 25), 'wideSpread')!.text)).toContain('6¼ turns apart')
    const ends = (bike: Bike, steps: number) => rideOn(bike, block('a', { ...inSeconds(240), resistance: at(steps) }))
    expect(found(ends(LOOSE, 4), 'endsHeavy')).toBeUndefined()
    expect(told(found(ends(LOOSE, 5), 'endsHeavy')!.text)).toContain('1 turn over base or less')
  })

  it('are base itself where that weighs as much', () => {
    // A wheel that is never lighter than 120 W.
    const wheel: Bike = {
      ...LEVELS_BIKE,
      base: 2,
      points: [
        [1, 110],
        [2, 120],
        [24, 450],
      ],
    }
    expect(found(standing(wheel, 0), 'lightStanding')).toBeUndefined()
    const easy = quietOnDemand(
      rideOn(wheel, block('a', { resistance: at(1), effort: { from: 2, to: 2 } }), block('b', { resistance: at(0) })),
    )
    expect(told(found(easy, 'easyTotal')!.text)).toContain('its resistance is 1 level over base; base is the most for that.')
  })

  it('are the rules of the house on its own bike', () => {
    const ride = { ...standing(LOOSE, 7), houseRules: { standingTotal: 0.75 } }
    expect(found(ride, 'lightStanding')).toBeUndefined()
    expect(CONSTANTS.standingTotal.default).toBe(1)
  })
})
