// @vitest-environment happy-dom
import { act } from 'react'
import { afterEach, describe, expect, it } from 'vitest'
import { calibrationOf } from '#engine/demand/calibration.ts'
import { FEEL_LADDER, wattsForEffort } from '#engine/demand/feelLadder.ts'
import { settingForWatts } from '#engine/demand/settingForWatts.ts'
import { DEFAULT_BIKE, DEFAULT_RIDERS } from '#plan/defaults.ts'
import type { Bike } from '#plan/model.ts'
import type { Panel } from '#tests/features/drafting/panel/openPanel.tsx'
import { demoRide } from '#tests/support/demoRides.ts'
import { en } from '#words/en/index.ts'
import { openSetup } from './openSetup.tsx'

let page: Panel
afterEach(() => page.close())

const open = (change: Partial<Bike> = {}) => {
  const ride = demoRide('ridge')
  page = openSetup({ ...ride, bike: { ...ride.bike, ...change } }, 'bike')
}
const demand = (report: 'report' | 'shownReport') =>
  page.store
    .getState()
    [report]!.riders.find(({ reference }) => reference)!
    .demand.map((asked) => asked?.mean)

describe('calibrating by watts', () => {
  it('goes from base up, shows what it changes, and takes it as one step', () => {
    open()
    const before = demand('report')
    page.click('by the console’s watts')
    expect(page.text()).toContain('Set the knob to base, 2 turns. Ride at 80 rpm')
    page.type('watts shown at 2', '60')
    expect(page.text()).toContain('Set the knob to 3 turns.')
    expect(page.text()).toContain('Enter at least two settings')
    page.type('watts shown at 4', '220')
    expect(page.text()).toContain('For the regular rider it changes most in')
    expect(page.text()).toContain('Not tried, so scaled from the watts before: 0, 1, 5, 6.')
    expect(demand('report')).toEqual(before)
    expect(demand('shownReport')).not.toEqual(before)
    expect(page.steps()).toBe(0)

    page.click('use this calibration')
    expect(page.steps()).toBe(1)
    expect(page.ride().bike.points).toContainEqual([4, 220])
    expect(demand('report')).not.toEqual(before)
    act(() => void page.store.getState().undo())
    expect(demand('report')).toEqual(before)
  })

  it('asks for a reading again that falls, and drops everything when it is left', () => {
    open()
    const { ride } = page.store.getState()
    page.click('by the console’s watts')
    page.type('watts shown at 2', '60')
    page.type('watts shown at 3', '40')
    expect(page.text()).toContain('There are fewer watts at 3 than at 2: read one of the two again.')
    page.type('watts shown at 3', '100')
    expect(page.store.getState().previewing).not.toBeNull()
    page.click('cancel')
    expect(page.store.getState()).toMatchObject({ previewing: null, ride, shown: ride })
    expect(page.steps()).toBe(0)
  })

  it('skips, tries settings that are not on the list, and takes another cadence as the reference', () => {
    open()
    page.click('by the console’s watts')
    act(() => page.field('watts shown at 2').focus())
    page.click('skip this one')
    expect(page.text()).toContain('Set the knob to 3 turns.')
    page.type('one cadence for all', '75')
    page.type('try another setting', '2½')
    expect(page.text()).toContain('Set the knob to 2½ turns. Ride at 75 rpm')
    page.type('watts shown at 2½', '80')
    page.type('watts shown at 4', '200')
    page.click('use this calibration')
    expect(page.ride().bike).toMatchObject({ referenceRpm: 75 })
    expect(page.ride().bike.points.filter(([setting]) => setting > 2 && setting < 5)).toEqual([
      [2.5, 80],
      [4, 200],
    ])
  })
})

describe('a second cadence', () => {
  it('tells how the brake answers, which is kept with the bike, said in the form, and can be overridden', () => {
    open({ brake: 'friction' })
    page.click('by the console’s watts')
    expect(page.text()).not.toContain('then at another')
    for (const [setting, watts] of [
      ['2', '50'],
      ['3', '110'],
      ['4', '170'],
      ['5', '230'],
    ] as const)
      page.type(`watts shown at ${setting}`, watts)
    expect(page.text()).toContain('Set the knob to 6 turns. Ride at 80 rpm')
    act(() => page.field('watts shown at 0').focus())
    page.click('skip this one')
    expect(page.text()).toContain('Set the knob to base, 2 turns. Ride at 60 rpm')
    for (const setting of ['2', '3', '4', '5']) {
      const at80 = { '2': 50, '3': 110, '4': 170, '5': 230 }[setting]!
      page.type(`watts shown at ${setting} and 60 rpm`, String(Math.round(at80 * 0.75 * (0.6 + 0.4 * 0.75))))
    }
    expect(page.text()).toContain('Brake: between friction and magnetic, fitted from your answers.')
    page.click('use this calibration')
    const { brakeFit } = page.ride().bike
    expect(brakeFit!.exponent).toBeCloseTo(1.4, 1)
    expect(page.ride().bike).toMatchObject({ calibration: 'watts', brake: 'friction' })
    expect(page.text()).toContain('Between friction and magnetic, fitted from your readings. Twice the cadence, 2.8 times the watts.')
    expect(page.text()).toContain('read off its console')
    page.choose('brake', 'magnetic')
    expect(page.ride().bike).toMatchObject({ brake: 'magnetic' })
    expect(page.ride().bike).not.toHaveProperty('brakeFit')
    act(() => void page.store.getState().undo())
    expect(page.ride().bike.brakeFit).toEqual(brakeFit)
  })

  it('is another than the first', () => {
    open()
    page.click('by the console’s watts')
    page.type('watts shown at 2', '50')
    page.type('watts shown at 3', '110')
    page.type('then at another', '80')
    expect(page.under('then at another')).toBe('It takes two different cadences to tell the brakes apart.')
    page.type('one cadence for all', '60')
    expect((page.field('then at another') as HTMLInputElement).value).toBe('90')
  })
})

describe('calibrating by feel', () => {
  const real: Bike = { ...DEFAULT_BIKE, brake: 'magnetic' }
  const answer = (rpm: number) => {
    for (const { feel, effort } of FEEL_LADDER) {
      const setting = settingForWatts(calibrationOf(real), wattsForEffort(effort, DEFAULT_RIDERS[1]!, rpm), rpm)
      if (setting !== null) page.type(`${en.names.feel({ feel })} at ${rpm} rpm`, String(Math.round(setting * 4) / 4))
    }
  }

  it('tells the brake from two cadences, and says that it is rough', () => {
    open({ brake: 'friction' })
    page.click('by feel, without a console')
    expect(page.text()).toContain('Ride at 65 rpm and turn the knob until it is “base”')
    expect(page.text()).toContain('A rough estimate:')
    answer(65)
    expect(page.text()).toContain('The brake stays friction: it takes the same settings at two cadences to tell.')
    answer(90)
    expect(page.text()).toContain('Your answers fit a magnetic brake')
    page.click('use this calibration')
    expect(page.ride().bike.brake).toBe('magnetic')
    expect(page.ride().bike.feelAnchors!.map(({ feel }) => feel)).toEqual(FEEL_LADDER.map(({ feel }) => feel))
    expect(page.steps()).toBe(1)
  })

  it('scales with who is riding', () => {
    open()
    page.click('by feel, without a console')
    page.type('base at 65 rpm', '2')
    page.type('solid climb at 65 rpm', '4')
    page.choose('who is riding', 'strong')
    page.click('use this calibration')
    const watts = wattsForEffort(7, DEFAULT_RIDERS[2]!, 65) * (80 / 65)
    expect(page.ride().bike.points).toContainEqual([4, Math.round(watts)])
  })

  it('refuses one cadence twice, and answers the wrong way around', () => {
    open()
    page.click('by feel, without a console')
    page.type('then at', '65')
    expect(page.under('then at')).toBe('It takes two different cadences to tell the brakes apart.')
    page.type('heavy climb at 65 rpm', '2')
    page.type('base at 65 rpm', '4')
    expect(page.text()).toContain('the knob seems to have been read the wrong way around')
  })
})
