import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { reserveAt } from '#engine/reserve/reserveCurve.ts'
import { strainAt } from '#engine/shape/strainCurve.ts'
import type { Ride } from '#plan/model.ts'
import { demoRide } from '#tests/support/demoRides.ts'
import { heartShareAt } from '#tests/support/heartShareAt.ts'
import { aBlock, aSection, aSong, inSeconds, smallRide } from '#tests/support/smallRide.ts'

const hard = aBlock('hard', {
  ...inSeconds(120),
  effort: { from: 9, to: 9 },
  cadence: { rpm: 85 },
  resistance: { kind: 'total', from: 14, to: 14 },
})
const easy = aBlock('easy', { ...inSeconds(60), effort: { from: 3, to: 3 }, resistance: { kind: 'total', from: 1, to: 1 } })
const open = aSection('open', { song: aSong('nothing yet') })
const rideOf = (...sections: Ride['sections']): Ride => ({ ...smallRide(), sections })
const [first, last] = [aSection('first', { blocks: [hard] }), aSection('last', { blocks: [easy] })]

describe('where nothing is planned', () => {
  const without = computeRide(rideOf(first, last))
  const half = computeRide(rideOf(first, open, last))

  it('no rider is taken to go on with the block before: no figure counts an open song', () => {
    expect(half.overall).toMatchObject({ total: 420, unplanned: 240 })
    expect(without.overall.unplanned).toBe(0)
    for (const [i, rider] of half.riders.entries()) {
      const other = without.riders[i]!
      expect(rider.energy).toEqual(other.energy)
      expect(rider.load).toBe(other.load)
      expect(rider.response.maximum).toEqual(other.response.maximum)
      expect(rider.response.mean).toBeCloseTo(other.response.mean, 12)
      expect(rider.reserve.minimum).toEqual(other.reserve.minimum)
      for (const [name, seconds] of Object.entries(rider.response.secondsByClass)) {
        expect(seconds).toBeCloseTo(other.response.secondsByClass[name as keyof typeof other.response.secondsByClass], 9)
      }
    }
  })

  it('lines stop, and go on from how the last block left the rider', () => {
    const { response, reserve } = half.riders[2]!
    for (const pieces of [response.pieces, reserve.pieces]) expect(pieces.every(({ from, to }) => to <= 120 || from >= 360)).toBe(true)
    expect(heartShareAt(response, 200)).toBeCloseTo(heartShareAt(response, 119.999999), 6)
    expect(heartShareAt(response, 360)).toBeCloseTo(heartShareAt(without.riders[2]!.response, 120), 9)
    expect(reserveAt(reserve, 360)).toBeCloseTo(reserveAt(without.riders[2]!.reserve, 120), 9)
  })

  it('strain is held, so that nobody is short of breath for an effort nobody asked for', () => {
    const { strain } = half.curves
    const before = strainAt(strain, 120)
    expect(strainAt(strain, 240)).toBe(before)
    expect(strainAt(strain, 360)).toBeCloseTo(before, 9)
    expect(strain.maximum).toEqual(without.curves.strain.maximum)
    expect(strainAt(strain, 400)).toBeCloseTo(strainAt(without.curves.strain, 160), 9)
    expect(strain.pieces.filter(({ held }) => held).map(({ from, to }) => [from, to])).toEqual([[120, 360]])
    const ended = computeRide(rideOf(first, open)).curves.strain
    expect(ended.pieces.at(-1)).toMatchObject({ from: 120, to: 360, held: true })
  })

  it('nobody runs out of reserve in a song that has no block yet', () => {
    const tired = rideOf(first, open, open, open)
    expect(computeRide(rideOf(first)).findings.some(({ rule }) => rule.startsWith('reserveRunsOut'))).toBe(
      computeRide(tired).findings.some(({ rule }) => rule.startsWith('reserveRunsOut')),
    )
    for (const { reserve } of computeRide(tired).riders) expect(reserve.runsOut?.at ?? 0).toBeLessThanOrEqual(120)
  })

  it('the open end of a song counts as little, and the lead-in after it neither', () => {
    const song = aSong('half', { lengthSeconds: 240 })
    const counted = aSection('first', { song, blocks: [{ ...hard, length: { counts: 240 } }] })
    const tail = computeRide(rideOf(counted, { ...last, leadInSeconds: 5 }))
    expect(tail.overall.unplanned).toBe(125)
    expect(tail.riders[1]!.energy).toEqual(without.riders[1]!.energy)
  })

  it('a lead-in after a block still carries it on, and the demo rides plan all of their time', () => {
    const led = computeRide(rideOf(first, { ...last, leadInSeconds: 10 }))
    expect(led.overall.unplanned).toBe(0)
    expect(led.riders[1]!.energy.kcal).toBeGreaterThan(without.riders[1]!.energy.kcal)
    for (const name of ['spark', 'ridge'] as const) expect(computeRide(demoRide(name)).overall.unplanned).toBe(0)
  })
})
