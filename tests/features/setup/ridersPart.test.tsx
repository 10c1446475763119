// @vitest-environment happy-dom
import { act } from 'react'
import { afterEach, describe, expect, it } from 'vitest'
import { DEFAULT_RIDERS } from '#plan/defaults.ts'
import { encodeLink } from '#plan/link/encodeLink.ts'
import type { Panel } from '#tests/features/drafting/panel/openPanel.tsx'
import { demoRide } from '#tests/support/demoRides.ts'
import { smallRide } from '#tests/support/smallRide.ts'
import { memoryProfiles, openSetup } from './openSetup.tsx'

let page: Panel
afterEach(() => page.close())

describe('the riders of the ride', () => {
  it.each([
    ['weight of the regular rider', 'light', 'Weight must be a number, such as 154.'],
    ['weight of the regular rider', '600', 'Weight must be between 67 and 440 lb.'],
    ['weight of the regular rider', '300 kg', 'Weight must be between 67 and 440 lb.'],
    ['age of the new rider', '35.5', 'Age must be a whole number.'],
    ['VO2 max of the strong rider', '5', 'VO2 max must be between 12 and 90 mL/kg/min.'],
    ['reserve of the new rider', '0', 'The reserve must be between 1 and 60 kJ.'],
    ['max heart rate of the regular rider', '60', 'Max heart rate must be between 90 and 230 bpm.'],
    ['own base of the new rider', '0.3', 'This bike has no such step: the nearest are ¼ and ½.'],
    ['own base of the new rider', '30', 'A rider’s base must be on the bike’s scale, at most 20 turns from the bike’s base.'],
    ['name of rider 1', ' ', 'A rider needs a name.'],
  ])('%s refuses “%s”', (label, text, sentence) => {
    page = openSetup(smallRide(), 'riders')
    page.type(label, text)
    expect(page.under(label)).toBe(sentence)
    expect(page.steps()).toBe(0)
  })

  it('refuses hearts that cross', () => {
    page = openSetup(smallRide(), 'riders')
    page.type('max heart rate of the regular rider', '100')
    page.type('resting heart rate of the regular rider', '110')
    expect(page.under('resting heart rate of the regular rider')).toBe('Max heart rate must be above resting heart rate.')
  })

  it('become the ride’s own with the first change, change the demand, and go back to the defaults', () => {
    page = openSetup(demoRide('ridge'), 'riders')
    expect(page.text()).toContain('Three typical riders.')
    const mean = () => page.store.getState().report!.riders[1]!.demand[3]!.mean
    const before = mean()
    page.type('VO2 max of the regular rider', '32')
    expect(page.ride().riders).toHaveLength(3)
    expect(mean()).toBeGreaterThan(before)
    page.click('back to the three typical riders')
    expect(page.ride()).not.toHaveProperty('riders')
    expect(mean()).toBe(before)
  })

  it('are none of the ride’s own again where every number is as it was', () => {
    page = openSetup(smallRide(), 'riders')
    page.type('age of the new rider', '40')
    page.type('age of the new rider', '35')
    expect(page.ride()).not.toHaveProperty('riders')
  })

  it('have their highest heart rate from their age until it is given', () => {
    page = openSetup(smallRide(), 'riders')
    const label = 'max heart rate of the regular rider'
    expect((page.field(label) as HTMLInputElement).placeholder).toBe('182')
    page.type(label, '175')
    expect(page.ride().riders![1]).toMatchObject({ maxHr: 175 })
    page.type(label, '')
    expect(page.ride().riders?.[1] ?? {}).not.toHaveProperty('maxHr')
  })

  it('are one to six', () => {
    page = openSetup(smallRide(), 'riders')
    for (let i = 0; i < 3; i++) page.click('add a rider')
    expect(
      page
        .ride()
        .riders!.map(({ name }) => name)
        .slice(3),
    ).toEqual(['rider 4', 'rider 5', 'rider 6'])
    expect(page.text()).not.toContain('add a rider')
    for (const name of ['new rider', 'regular rider', 'strong rider', 'rider 4', 'rider 5'])
      page.click(`remove ${name.startsWith('rider') ? name : `the ${name}`}`)
    expect(page.ride().riders!.map(({ name }) => name)).toEqual(['rider 6'])
    expect(page.host.querySelector('.riders-remove')).toBeNull()
  })

  it('never go into a link, and the page says so', () => {
    page = openSetup(demoRide('ridge'), 'riders')
    const link = encodeLink(page.ride())
    page.type('name of rider 2', 'Wilhelmina of Tuesdays')
    expect(encodeLink(page.ride())).toBe(link)
    expect(page.text()).toContain('Riders never go into a link')
  })

  it('are doubted together, and taken all the same', () => {
    page = openSetup(smallRide(), 'riders')
    page.type('critical power of the regular rider', '230')
    expect(page.text()).toContain(
      '214 watts use all the oxygen the regular rider can take up; a critical power of 230 is very close to that or over it.',
    )
    expect(page.ride().riders![1]).toMatchObject({ criticalPower: 230 })
  })

  it('are kept on this machine under a name, and used again', async () => {
    const shelf = memoryProfiles()
    page = openSetup(smallRide(), 'riders', shelf)
    page.type('age of the new rider', '60')
    const own = page.ride().riders
    act(() => {
      const name = page.field('name to save them under') as HTMLInputElement
      Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')!.set!.call(name, 'Tuesday mornings')
      name.dispatchEvent(new Event('input', { bubbles: true }))
    })
    page.click('save these riders')
    await act(() => new Promise<void>((resolve) => setTimeout(resolve, 0)))
    expect([...shelf.kept.values()]).toMatchObject([{ kind: 'riders', name: 'Tuesday mornings', riders: own }])
    page.click('back to the three typical riders')
    page.click('use Tuesday mornings for this ride')
    expect(page.ride().riders).toEqual(own)
    expect(DEFAULT_RIDERS[0]!.age).toBe(35)
  })
})
