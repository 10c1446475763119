// @vitest-environment happy-dom
import { act } from 'react'
import { afterEach, describe, expect, it } from 'vitest'
import { encodeLink } from '#plan/link/encodeLink.ts'
import type { Panel } from '#tests/features/drafting/panel/openPanel.tsx'
import { demoRide } from '#tests/support/demoRides.ts'
import { smallRide } from '#tests/support/smallRide.ts'
import { openSetup } from './openSetup.tsx'

let page: Panel
afterEach(() => page.close())

const add = (length: string, watts: string) => {
  page.type('length of a new trial', length)
  page.type('watts of a new trial', watts)
}
const regular = () => page.ride().riders![1]!

describe('a rider from trials', () => {
  it('keeps every trial, says what they come to and what is missing, and uses them as one step', () => {
    page = openSetup(demoRide('ridge'), 'riders')
    const reserve = () => page.store.getState().report!.riders[1]!.reserve.minimum.share
    const before = reserve()
    expect(page.text()).toContain('Enter at least two trials of different lengths.')
    expect(page.text()).toContain('not for first-timers')
    add('3:00', '283')
    add('12', '213')
    expect(page.under('length of a new trial')).toContain('A trial lasts from 0:30 to 1:00:00')
    add('12:00', '213')
    expect(regular().trials).toEqual([
      { seconds: 180, watts: 283 },
      { seconds: 720, watts: 213 },
    ])
    // (213 · 720 − 283 · 180) ÷ 540 = 189.67 W, and 180 · (283 − 189.67) = 16.8 kJ.
    expect(page.text()).toContain('Critical power 190 watts; reserve 16.8 kJ.')
    expect(page.text()).toContain('A third of another length tells how sure this is.')
    expect(regular().basis).toBeUndefined()
    const steps = page.steps()
    page.click('use these for the regular rider')
    expect(page.steps()).toBe(steps + 1)
    expect(regular()).toMatchObject({ criticalPower: 190, wPrime: 16_800, basis: 'tested' })
    expect(page.text()).toContain('used for the regular rider')
    expect(reserve()).toBeGreaterThan(before)
    act(() => void page.store.getState().undo())
    expect(regular()).toMatchObject({ criticalPower: 165, wPrime: 14_000 })
    expect(regular().trials).toHaveLength(2)
  })

  it('takes a third, says how sure it is, and that trials do not agree', () => {
    page = openSetup(smallRide(), 'riders')
    add('3:00', '283')
    add('12:00', '213')
    add('6:00', '236')
    expect(page.text()).toContain('give or take')
    expect(page.text()).not.toContain('do not agree')
    page.type('watts of trial 3', '262')
    expect(page.text()).toContain('These trials don’t agree: critical power comes to')
    page.click('remove trial 3')
    expect(regular().trials).toHaveLength(2)
    page.type('watts of trial 2', '283')
    expect(page.text()).toContain('These trials don’t fall the way all-out trials do')
    page.click('remove trial 2')
    page.click('remove trial 1')
    expect(page.ride()).not.toHaveProperty('riders')
  })

  it('is assumed again when a number is typed over, and tested when one says so', () => {
    page = openSetup(smallRide(), 'riders')
    page.choose('where critical power and reserve of the regular rider come from', 'tested')
    expect(regular().basis).toBe('tested')
    page.type('age of the regular rider', '40')
    expect(regular().basis).toBe('tested')
    page.type('critical power of the regular rider', '171')
    expect(regular().basis).toBeUndefined()
  })

  it('is not what another rider is added with, and in no link', () => {
    page = openSetup(demoRide('ridge'), 'riders')
    const link = encodeLink(page.ride())
    add('3:00', '283')
    add('12:00', '213')
    page.click('use these for the regular rider')
    page.click('add a rider')
    const added = page.ride().riders!.at(-1)!
    expect(added).toMatchObject({ criticalPower: 190 })
    expect(added).not.toHaveProperty('trials')
    expect(added).not.toHaveProperty('basis')
    expect(encodeLink(page.ride())).toBe(link)
  })

  it('is whose one says', () => {
    page = openSetup(smallRide(), 'riders')
    page.choose('whose test', 'strong')
    add('3:00', '340')
    expect(page.ride().riders![2]!.trials).toEqual([{ seconds: 180, watts: 340 }])
    page.choose('whose test', 'new')
    expect(page.text()).toContain('Enter at least two trials of different lengths.')
  })
})

describe('three minutes all out', () => {
  it('come to a rider from the mean and the end, are doubted, and can be taken away', () => {
    page = openSetup(smallRide(), 'riders')
    page.click('three minutes all out')
    page.type('average watts', '285')
    expect(page.ride()).not.toHaveProperty('riders')
    page.type('average of the last 30 s', '205')
    expect(page.text()).toContain('Critical power 205 watts, give or take 15; reserve 14.4 kJ, give or take 2.9.')
    page.type('second of the peak', '40')
    expect(page.text()).toContain('Power peaked at 40 s')
    page.choose('average watts are for', '150')
    expect(regular().threeMinuteTest).toEqual({ over: 150, watts: 285, endWatts: 205, peakSecond: 40 })
    expect(page.text()).toContain('reserve 12 kJ')
    page.type('second of the peak', '')
    expect(regular().threeMinuteTest).toEqual({ over: 150, watts: 285, endWatts: 205 })
    page.type('average watts', '')
    expect(page.under('average watts')).toBe('The test needs it; remove the test to leave it out.')
    page.type('average watts', '200')
    expect(page.text()).toContain('The last 30 seconds are no lower than the average')
    page.click('remove this test')
    expect(page.ride()).not.toHaveProperty('riders')
  })

  it('are used', () => {
    page = openSetup(smallRide(), 'riders')
    page.click('three minutes all out')
    page.type('average watts', '285')
    page.type('average of the last 30 s', '205')
    page.click('use these for the regular rider')
    expect(regular()).toMatchObject({ criticalPower: 205, wPrime: 14_400, basis: 'tested' })
  })
})

describe('thresholds', () => {
  it.each([
    ['first threshold of the regular rider', '62', 'The first threshold must be above resting heart rate.'],
    ['second threshold of the regular rider', '182.2', 'The second threshold must be a whole number.'],
    [
      'second threshold of the regular rider',
      '183',
      'At 37, max heart rate is estimated at 182 bpm; lower the second threshold or enter the max.',
    ],
  ])('%s refuses “%s”', (label, text, sentence) => {
    page = openSetup(smallRide(), 'riders')
    page.type(label, text)
    expect(page.under(label)).toBe(sentence)
    expect(page.steps()).toBe(0)
  })

  it('stand in order, and can be emptied again', () => {
    page = openSetup(smallRide(), 'riders')
    page.type('first threshold of the regular rider', '130')
    page.type('second threshold of the regular rider', '130')
    expect(page.under('second threshold of the regular rider')).toBe('The second threshold must be above the first.')
    page.type('second threshold of the regular rider', '160')
    expect(regular()).toMatchObject({ firstThresholdHr: 130, secondThresholdHr: 160 })
    page.type('max heart rate of the regular rider', '155')
    expect(page.under('max heart rate of the regular rider')).toBe('The second threshold must be below max heart rate.')
    page.type('first threshold of the regular rider', '')
    page.type('second threshold of the regular rider', '')
    expect(page.ride()).not.toHaveProperty('riders')
  })
})
